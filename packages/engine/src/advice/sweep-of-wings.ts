import { commonPractice } from "../quantity/index.ts";
import type { Choice } from "./reason.ts";

/**
 * How far the outermost cutter of a wing trails its innermost [rad].
 *
 * @source (c) common practice, no source: wings are swept; the angle is our choice, 20 degrees
 */
export const USUAL_SWEEP = Math.PI / 9;

/**
 * Sweep of the wings, so that the outermost cutters, which do the most, meet the rock after the inner ones.
 *
 * @source (c) common practice, no source
 */
export function sweepOfWings(): Choice<number> {
  return {
    value: USUAL_SWEEP,
    reasons: [
      {
        sentence: "Wings swept back from the centre ease the outermost cutters, which travel furthest and do the most.",
        rule: "sweep of the wings",
        value: USUAL_SWEEP,
        unit: "rad",
        source: commonPractice(),
      },
    ],
    alternatives: [{ what: "straight wings", why: "easier to mill; every bump strikes the outer cutters first" }],
  };
}
