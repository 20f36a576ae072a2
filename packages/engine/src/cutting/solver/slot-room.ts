import { PORT_WALL, portRoom } from "../../bit/index.ts";

/** Wings and core between which a port stands. */
export interface SlotSides {
  /** Thickness of a wing along travel [m]. */
  readonly wingThickness: number;
  /** Radius of the solid middle [m]. */
  readonly coreRadius: number;
}

/**
 * Largest port in the foot of a slot between two wings that stand a gap apart.
 *
 * d = min(2 r_c sin(γ/2) - t - 2 w, r_c/2), as `portRoom` with γ for the even gap.
 *
 * @returns diameter, 0 where none fits [m]
 * @throws RangeError when a size is not positive
 * @source (d) geometry of straight wings on a round core
 * @example
 * slotRoom({ gap: Math.PI / 3, wingThickness: 0.016, coreRadius: 0.04 }) // → 0.018
 */
export function slotRoom({
  gap,
  wingThickness,
  coreRadius,
}: SlotSides & {
  /** Angle from one wing to the next [rad]. */
  readonly gap: number;
}): number {
  return portRoom({ wings: (2 * Math.PI) / gap, wingThickness, coreRadius, wall: PORT_WALL });
}

/**
 * Narrowest gap between two wings that leaves room for a port; half a turn where no gap does.
 *
 * γ = 2 asin((d + t + 2 w)/(2 r_c)).
 *
 * @returns angle from one wing to the next [rad]
 * @source (d) `slotRoom` turned about
 * @example
 * leastGapForPort({ portDiameter: 0.018, wingThickness: 0.016, coreRadius: 0.04 }) // → 1.047198
 */
export function leastGapForPort({
  portDiameter,
  wingThickness,
  coreRadius,
}: SlotSides & {
  /** Diameter of the port [m]. */
  readonly portDiameter: number;
}): number {
  return 2 * Math.asin(Math.min(1, (portDiameter + wingThickness + 2 * PORT_WALL) / (2 * coreRadius)));
}
