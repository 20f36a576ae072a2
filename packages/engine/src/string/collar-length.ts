import { type Band, requireBetween, requirePositive } from "../quantity/index.ts";
import { buoyancyFactor } from "./buoyancy-factor.ts";

/**
 * Share of the collars' weight in fluid that may be set on the bit [-].
 *
 * @source (a) Lyons, Carter & Lapeyrouse 2012: 0.5 to 0.9, 0.85 for a vertical hole
 */
export const USABLE_COLLAR_SHARE: Band = { low: 0.5, mid: 0.85, high: 0.9 };

/** What `collarLengthNeeded` needs. */
export interface CollarLengthNeededInput {
  /** Weight on bit W [N]. */
  readonly weight: number;
  /** Weight of the collars in air for each length w [N/m]. */
  readonly linearWeight: number;
  /** Density of the fluid [kg/m³]. */
  readonly fluidDensity: number;
  /** Share of the collars' weight that may be used f [-]. */
  readonly usableShare: number;
}

/**
 * Length of collars that gives a weight on bit and keeps the neutral point in the collars.
 *
 * L = W/(BF w f); vertical hole.
 *
 * @returns length [m]
 * @throws RangeError when weight is not positive or the share lies outside 0 to 1
 * @source (a) Lyons, Carter & Lapeyrouse 2012
 * @example
 * collarLengthNeeded({ weight: 27245, linearWeight: 683, fluidDensity: 1030.5, usableShare: 0.85 }) // → 54.02
 */
export function collarLengthNeeded(input: CollarLengthNeededInput): number {
  const { weight, linearWeight, fluidDensity, usableShare } = input;
  requirePositive({ weight, linearWeight, usableShare });
  requireBetween("usableShare", usableShare, 0, 1);
  return weight / (buoyancyFactor(fluidDensity) * linearWeight * usableShare);
}
