import { requireNotNegative } from "../quantity/index.ts";
import { type HangingString, lengthThatWeighs } from "./string-make-up.ts";

/** What `balanceDepth` needs. */
export interface BalanceDepthInput extends HangingString {
  /** Weight wanted on the bit [N]. */
  readonly targetWeight: number;
  /** Weight of top head or kelly that rests on the string; 0 where not given [N]. */
  readonly topHeadWeight?: number;
  /** Drag of the hole wall against going down; 0 where not given [N]. */
  readonly drag?: number;
}

/**
 * Depth at which the string by itself gives the wanted weight: above it the rig pushes, below it it holds back.
 *
 * Solves BF (w_c L_c + w_p L_p) + top head - drag = W for the length; 0 where the top head alone is too heavy.
 *
 * @returns depth [m]
 * @throws RangeError when a length or weight is out of range
 * @source (d) balance of forces along the string
 * @example
 * balanceDepth({ makeUp: { pipe: { jointLength: 6.096, linearWeight: 194.1 } }, fluidDensity: 1030.5, targetWeight: 27245 }) // → 161.58
 */
export function balanceDepth(input: BalanceDepthInput): number {
  const { makeUp, fluidDensity, targetWeight, topHeadWeight = 0, drag = 0 } = input;
  requireNotNegative({ targetWeight, topHeadWeight, drag });
  return lengthThatWeighs({ makeUp, fluidDensity, weight: Math.max(0, targetWeight + drag - topHeadWeight) });
}
