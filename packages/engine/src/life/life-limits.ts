import { COBALT_TABLE_LIMIT } from "../cutting/index.ts";
import type { LifeInput, LifeLimits } from "./life-input.ts";

/**
 * Mean wear grade of inner or outer cutters at which a bit is done where nobody says otherwise: half of every face gone
 * [-]. Past it a worn cutter cannot be turned in its pocket for a fresh half, and its tip is down to the wing.
 *
 * @source (c) common practice, no source
 */
export const USUAL_END_GRADE = 4;

/**
 * Loss of diameter at which a bit is done where nobody says otherwise [m]: 1/16 in, the first count of the dull grade.
 * It is coarser than the tolerance a new bit is ground to.
 *
 * @source (a) IADC dull grading 1992 (SPE/IADC 23939), abstract and charts: undergauge is counted in sixteenths; (c) that a
 *   bit is pulled for it: common practice, no source
 */
export const USUAL_END_UNDERGAUGE = 1.5875e-3;

/**
 * Rate under which drilling on is not worth it where nobody says otherwise [m/s]: 5 ft/h.
 *
 * @source (c) common practice, no source: the slow end of the poorest ground
 */
export const LEAST_WORTHWHILE_RATE = (5 * 0.3048) / 3600;

/**
 * Most height that a point of an edge may lose before the edges are traced anew where nobody says otherwise [m].
 *
 * @source (d) from the convergence of the footage, see docs/guide/checks.md
 */
export const USUAL_LARGEST_CHANGE = 1e-4;

/**
 * What ends the life of a bit: what was asked for, the rest as usual; heat at what the diamond tables bear.
 *
 * @source (c) common practice, no source; the temperature: (b) Glowka & Stone 1986, SPE Drilling Engineering, recalled
 */
export function lifeLimitsOf({
  ends = {},
  tableLimit = COBALT_TABLE_LIMIT,
}: Pick<LifeInput, "ends" | "tableLimit">): LifeLimits {
  return {
    grade: USUAL_END_GRADE,
    undergauge: USUAL_END_UNDERGAUGE,
    rate: LEAST_WORTHWHILE_RATE,
    temperature: tableLimit,
    ...ends,
  };
}
