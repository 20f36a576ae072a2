import { type Band, mapBand, requireNotNegative, requirePositive, STANDARD_GRAVITY } from "../quantity/index.ts";

/**
 * Density of the steel of pipe and collars, 65.5 lb/gal [kg/m³].
 *
 * @source (a) Lyons, Carter & Lapeyrouse 2012, p. 24, the divisor of the buoyancy factor
 */
export const STEEL_DENSITY = 7849;

/** What `plainEndWeight` needs. */
export interface PlainEndWeightInput {
  /** Outer diameter D [m]. */
  readonly outerDiameter: number;
  /** Bore d [m]. */
  readonly bore: number;
}

/**
 * Weight in air of each length of pipe without joints, or of a collar.
 *
 * w = ρ g π (D² - d²)/4 with the density of steel.
 *
 * @returns weight for each length [N/m]
 * @throws RangeError when the diameter is not positive, the bore is negative, or there is no wall
 * @source (d) volume of a ring and the density of steel
 * @example
 * plainEndWeight({ outerDiameter: 0.0889, bore: 0.0702056 }) // → 179.81
 */
export function plainEndWeight({ outerDiameter, bore }: PlainEndWeightInput): number {
  requirePositive({ outerDiameter, wall: outerDiameter - bore });
  requireNotNegative({ bore });
  return STEEL_DENSITY * STANDARD_GRAVITY * (Math.PI / 4) * (outerDiameter ** 2 - bore ** 2);
}

/**
 * Weight of drill pipe with its joints over the plain-end weight [-].
 *
 * @source (c) common practice, no source: joints add 5 to 12 %
 */
export const JOINTED_OVER_PLAIN: Band = { low: 1.05, mid: 1.085, high: 1.12 };

/**
 * Weight in air of each length of drill pipe with its joints, where the maker's figure is not known.
 *
 * 1.05 to 1.12 times the plain-end weight.
 *
 * @returns weight for each length [N/m]
 * @throws RangeError when the diameter is not positive, the bore is negative, or there is no wall
 * @source (c) common practice, no source
 * @example
 * jointedPipeWeight({ outerDiameter: 0.0889, bore: 0.0702056 }).mid // → 195.1
 */
export function jointedPipeWeight(size: PlainEndWeightInput): Band {
  const plain = plainEndWeight(size);
  return mapBand(JOINTED_OVER_PLAIN, (ratio) => ratio * plain);
}
