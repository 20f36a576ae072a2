import { requirePositive } from "../quantity/index.ts";
import type { CoolingFilm } from "./flat-temperature.ts";

/**
 * Film coefficient between a cutter and a liquid that washes the face, where the flow at that wing is not worked out
 * [W/(m²·K)]: 1 W/(cm²·K), the middle of a range of 0.1 to 10.
 *
 * @source (b) range of Glowka & Stone 1985, SPE Journal, weak memory
 */
export const USUAL_FILM_COEFFICIENT = 1e4;

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
  return { coefficient: USUAL_FILM_COEFFICIENT, area: (Math.PI / 2) * faceDiameter ** 2 };
}
