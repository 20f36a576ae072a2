import { requireBetween, requirePositive } from "../quantity/index.ts";

/**
 * Radii of equal area: each of N cutters on a flat face cuts the same volume.
 *
 * r_i = R √((i - 1/2)/N), i from 1 to N.
 *
 * @throws RangeError when the radius is not positive or the count is not a whole number of at least 1
 * @source (d) equal rings of a disc
 */
export function equalAreaRadii({
  radius,
  cutters,
}: {
  /** Radius of the hole [m]. */
  readonly radius: number;
  /** Number of cutters [-]. */
  readonly cutters: number;
}): number[] {
  requirePositive({ radius, cutters });
  if (!Number.isInteger(cutters)) throw new RangeError(`cutters must be a whole number, got ${cutters}`);
  return Array.from({ length: cutters }, (_, at) => radius * Math.sqrt((at + 0.5) / cutters));
}

/** How far apart stations are set along the profile. */
export interface StationSpread {
  /** Length along the profile of the first station [m]. */
  readonly first: number;
  /** Length along the profile of the last station [m]. */
  readonly last: number;
  /** Number of stations, both ends included [-]. */
  readonly stations: number;
  /** Exponent of the spread: 1 spaces evenly, less crowds them outward, 1/2 like rings of equal area [-]. */
  readonly exponent: number;
}

/**
 * Lengths along the profile of stations that lie closer together outward.
 *
 * s_i = s_1 + (s_N - s_1) ((i - 1)/(N - 1))^p.
 *
 * @throws RangeError when the count is less than 1, the ends are out of order or the exponent leaves 0.5 to 1
 * @source (d) power law between equal spacing and equal area; our choice
 */
export function spreadStations({ first, last, stations, exponent }: StationSpread): number[] {
  requirePositive({ stations });
  requireBetween("exponent", exponent, 0.5, 1);
  requireBetween("last station", last, first, Number.MAX_VALUE);
  if (stations === 1) return [first];
  return Array.from({ length: stations }, (_, at) => first + (last - first) * (at / (stations - 1)) ** exponent);
}

/**
 * The exponent nearest to equal area whose widest gap, the innermost, stays within what a face covers.
 *
 * (1/(N - 1))^p (s_N - s_1) ≤ g, held between 1/2 and 1.
 *
 * @returns exponent of the spread [-]
 * @throws RangeError when the gap is not positive
 * @source (d) from `spreadStations`
 * @example
 * spreadExponent({ first: 0, last: 0.08, stations: 11, widestGap: 0.01 }) // → 0.90309
 */
export function spreadExponent({
  first,
  last,
  stations,
  widestGap,
}: Omit<StationSpread, "exponent"> & {
  /** Widest gap between two stations that a face still covers [m]. */
  readonly widestGap: number;
}): number {
  requirePositive({ widestGap });
  if (stations <= 2 || last - first <= widestGap) return 0.5;
  return Math.min(1, Math.max(0.5, Math.log((last - first) / widestGap) / Math.log(stations - 1)));
}
