import { requireBetween, requirePositive } from "../quantity/index.ts";

/** Straight wings of even thickness on a round core. */
export interface WingedCore {
  /** Number of wings [-]. */
  readonly wings: number;
  /** Thickness of a wing along travel [m]. */
  readonly wingThickness: number;
  /** Radius of the solid middle [m]. */
  readonly coreRadius: number;
}

/**
 * Largest port as a share of the core radius, so that the core still holds its bore [-].
 *
 * @source (c) no source: half, our choice
 */
export const PORT_SHARE_OF_CORE = 0.5;

/** Radius at which wings side by side no longer touch: t/(2 sin(π/n)) [m]. */
function partingRadius({ wings, wingThickness }: WingedCore): number {
  return wings > 1 ? wingThickness / (2 * Math.sin(Math.PI / wings)) : wingThickness / 2;
}

/** Half of a strip of width t across a disc: ∫ √(ρ² - y²) dy over the strip [m²]. */
export function halfStrip(thickness: number, radius: number): number {
  const half = Math.min(thickness / 2, radius);
  return half * Math.sqrt(radius ** 2 - half ** 2) + radius ** 2 * Math.asin(half / radius);
}

/**
 * Open area of all slots across the hole: the ring outside the core less the wings in it.
 *
 * A = π (R² - r_c²) - n (S(R) - S(r_c)), S(ρ) = (t/2) √(ρ² - t²/4) + ρ² asin(t/2ρ): exact for straight wings, and for
 * swept ones of the same thickness along travel near enough. Where wings touch beyond the core, slots start where they part.
 *
 * @returns area [m²]
 * @throws RangeError when a size is not positive or the core is larger than the hole
 * @source (d) geometry of strips across a ring
 * @example
 * slotArea({ holeDiameter: 0.2, wings: 4, wingThickness: 0.02, coreRadius: 0.05 }) // → 0.01954847
 */
export function slotArea({
  holeDiameter,
  ...core
}: WingedCore & {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
}): number {
  const { wings, wingThickness, coreRadius } = core;
  requirePositive({ holeDiameter, wings, wingThickness, coreRadius });
  const holeRadius = holeDiameter / 2;
  requireBetween("coreRadius", coreRadius, 0, holeRadius);
  const foot = Math.min(holeRadius, Math.max(coreRadius, partingRadius(core)));
  const wing = halfStrip(wingThickness, holeRadius) - halfStrip(wingThickness, foot);
  return Math.max(0, Math.PI * (holeRadius ** 2 - foot ** 2) - wings * wing);
}

/**
 * Largest round port that fits in the foot of a slot: between two wings where they leave the core, less the wall kept on
 * either side, and no more than the core allows beside its bore.
 *
 * d = min(2 r_c sin(π/n) - t - 2 w, r_c/2).
 *
 * @returns diameter, 0 where none fits [m]
 * @throws RangeError when a size is not positive
 * @source (d) geometry of straight wings on a round core; the share of the core is our choice
 * @example
 * portRoom({ wings: 6, wingThickness: 0.016, coreRadius: 0.04, wall: 0.003 }) // → 0.018
 */
export function portRoom({
  wall,
  ...core
}: WingedCore & {
  /** Wall kept between a port and the wing beside it [m]. */
  readonly wall: number;
}): number {
  const { wings, wingThickness, coreRadius } = core;
  requirePositive({ wings, wingThickness, coreRadius });
  const between = wings > 1 ? 2 * coreRadius * Math.sin(Math.PI / wings) - wingThickness : 2 * coreRadius;
  return Math.max(0, Math.min(between - 2 * wall, PORT_SHARE_OF_CORE * coreRadius));
}
