import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import { type Conduit, conduitSpeed, hydraulicDiameter } from "./conduit.ts";
import { blasiusFriction } from "./friction-factor.ts";
import { frictionPressureDrop } from "./friction-pressure-drop.ts";

/** Diameter of the pipe that stands for an annulus in laminar slot flow, over D - d: √(2/3) [-]. */
const SLOT_EQUIVALENT = Math.sqrt(2 / 3);

/** What `smoothPressureDrop` needs. */
export interface SmoothPressureDropInput {
  /** Density of the fluid ρ [kg/m³]. */
  readonly density: number;
  /** Dynamic viscosity, or plastic viscosity for a mud in turbulent flow, μ [Pa s]. */
  readonly viscosity: number;
  readonly conduit: Conduit;
  /** Flow [m³/s]. */
  readonly flow: number;
  /** Length of the stretch L [m]. */
  readonly length: number;
}

/**
 * Pressure lost in turbulent flow along a smooth wall, the short form used for muds.
 *
 * Δp = 2 f ρ v² L/d with f = 0.0791/Re^¼; in an annulus d is the equivalent diameter √(2/3) (D - d), in the Reynolds
 * number as well. Turbulent flow only; a rough pipe loses more.
 *
 * @returns pressure drop [Pa]
 * @throws RangeError when an input is not positive (length may be zero)
 * @source (a) Guo & Liu 2011, Applied Drilling Circulation Systems
 * @example
 * smoothPressureDrop({ density: 999.1, viscosity: 0.0011, conduit: { shape: "pipe", bore: 0.07 }, flow: 0.0095, length: 100 }) // → 69128
 */
export function smoothPressureDrop({ density, viscosity, conduit, flow, length }: SmoothPressureDropInput): number {
  requirePositive({ density, viscosity });
  requireNotNegative({ length });
  const speed = conduitSpeed({ flow, conduit });
  const diameter = equivalentDiameter(conduit);
  const friction = blasiusFriction((density * speed * diameter) / viscosity);
  return frictionPressureDrop({ friction, density, speed, length, hydraulicDiameter: diameter });
}

/**
 * Diameter of the pipe in which a Newtonian fluid at the same speed feels the same laminar loss.
 *
 * d for a pipe, √(2/3) (D - d) for an annulus taken as a slot.
 *
 * @returns diameter [m]
 * @throws RangeError when a diameter is not positive or the pipe does not fit the hole
 * @source (b) Bourgoyne et al. 1986, Applied Drilling Engineering ch. 4, recalled
 * @example
 * equivalentDiameter({ shape: "annulus", holeDiameter: 0.155575, pipeDiameter: 0.0889 }) // → 0.05444
 */
export function equivalentDiameter(conduit: Conduit): number {
  return conduit.shape === "pipe" ? hydraulicDiameter(conduit) : SLOT_EQUIVALENT * hydraulicDiameter(conduit);
}
