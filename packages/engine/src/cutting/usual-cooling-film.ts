import { type Band, requirePositive } from "../quantity/index.ts";
import type { CoolingFilm } from "./flat-temperature.ts";

/**
 * Film coefficients met between a cutter and what washes it, 0.1 to 10 W/(cm²·K): still air to jets of water [W/(m²·K)]. The
 * middle stands where the flow at that wing is not worked out.
 *
 * @source (b) Glowka & Stone 1985, SPE Journal, weak memory
 */
export const FILM_COEFFICIENT_RANGE: Band = { low: 1e3, mid: 1e4, high: 1e5 };

/**
 * Cooling of a cutter whose face and as much again of its side is washed by the fluid.
 *
 * @throws RangeError when the diameter is not positive
 * @source (b) Glowka & Stone 1985, SPE Journal, weak memory; the washed surface is our estimate
 * @example
 * usualCoolingFilm(0.01344).area // → 2.8374e-4
 */
export function usualCoolingFilm(faceDiameter: number): CoolingFilm {
  requirePositive({ faceDiameter });
  return { coefficient: FILM_COEFFICIENT_RANGE.mid, area: (Math.PI / 2) * faceDiameter ** 2 };
}
