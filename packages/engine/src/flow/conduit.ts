import { requirePositive } from "../quantity/index.ts";

/** The bore of a pipe or collar, as the fluid sees it. */
export interface PipeBore {
  readonly shape: "pipe";
  /** Bore [m]. */
  readonly bore: number;
}

/** The ring between the hole or casing and the pipe in it. */
export interface Annulus {
  readonly shape: "annulus";
  /** Diameter of the hole, or bore of the casing [m]. */
  readonly holeDiameter: number;
  /** Outer diameter of the pipe or collar in it [m]. */
  readonly pipeDiameter: number;
}

/** A way the fluid takes at one size. */
export type Conduit = PipeBore | Annulus;

/**
 * Area of a conduit across the flow; for an annulus also its volume for each length of hole.
 *
 * π d²/4, or π (D² - d²)/4.
 *
 * @returns area [m²]
 * @throws RangeError when a diameter is not positive or the pipe does not fit the hole
 * @source (d) area of a circle and a ring
 * @example
 * conduitArea({ shape: "annulus", holeDiameter: 0.155575, pipeDiameter: 0.0889 }) // → 0.0128027
 */
export function conduitArea(conduit: Conduit): number {
  if (conduit.shape === "pipe") {
    requirePositive({ bore: conduit.bore });
    return (Math.PI / 4) * conduit.bore ** 2;
  }
  const { holeDiameter, pipeDiameter } = conduit;
  requirePositive({ holeDiameter, pipeDiameter, "room between hole and pipe": holeDiameter - pipeDiameter });
  return (Math.PI / 4) * (holeDiameter ** 2 - pipeDiameter ** 2);
}

/**
 * Hydraulic diameter of a conduit: four times area over wetted edge.
 *
 * d, or D - d for an annulus.
 *
 * @returns hydraulic diameter [m]
 * @throws RangeError when a diameter is not positive or the pipe does not fit the hole
 * @source (d) definition
 * @example
 * hydraulicDiameter({ shape: "annulus", holeDiameter: 0.155575, pipeDiameter: 0.0889 }) // → 0.066675
 */
export function hydraulicDiameter(conduit: Conduit): number {
  conduitArea(conduit);
  return conduit.shape === "pipe" ? conduit.bore : conduit.holeDiameter - conduit.pipeDiameter;
}

/** What `conduitSpeed` needs. */
export interface ConduitSpeedInput {
  /** Flow Q [m³/s]. */
  readonly flow: number;
  readonly conduit: Conduit;
}

/**
 * Mean speed in a pipe, or the uphole speed in an annulus.
 *
 * v = Q/A.
 *
 * @returns speed [m/s]
 * @throws RangeError when the flow is not positive or the conduit has no room
 * @source (d) continuity
 * @example
 * conduitSpeed({ flow: 0.0095, conduit: { shape: "annulus", holeDiameter: 0.155575, pipeDiameter: 0.0889 } }) // → 0.74203
 */
export function conduitSpeed({ flow, conduit }: ConduitSpeedInput): number {
  requirePositive({ flow });
  return flow / conduitArea(conduit);
}

/** What `flowForUpholeSpeed` needs. */
export interface FlowForUpholeSpeedInput {
  /** Uphole speed wanted V [m/s]. */
  readonly upholeSpeed: number;
  readonly annulus: Annulus;
}

/**
 * Pump flow that gives a wanted uphole speed; with air, the flow counted at the pressure and temperature of that place.
 *
 * Q = V π (D² - d²)/4.
 *
 * @returns flow [m³/s]
 * @throws RangeError when the speed is not positive or the pipe does not fit the hole
 * @source (d) continuity
 * @example
 * flowForUpholeSpeed({ upholeSpeed: 0.6096, annulus: { shape: "annulus", holeDiameter: 0.155575, pipeDiameter: 0.0889 } }) // → 0.0078045
 */
export function flowForUpholeSpeed({ upholeSpeed, annulus }: FlowForUpholeSpeedInput): number {
  requirePositive({ upholeSpeed });
  return upholeSpeed * conduitArea(annulus);
}
