import { requireNotNegative } from "../quantity/index.ts";
import { buoyancyFactor } from "./buoyancy-factor.ts";
import type { HangingWeightInput } from "./string-make-up.ts";

/** What `hoistingWork` needs. */
export interface HoistingWorkInput extends HangingWeightInput {
  /** Weight of top head or kelly that goes up with the string; 0 where not given [N]. */
  readonly topHeadWeight?: number;
  /** Drag of the hole wall; 0 where not given [N]. */
  readonly drag?: number;
}

/**
 * Work of pulling a string out of its hole, joint by joint.
 *
 * E = BF (w_c L_c²/2 + w_c L_c L_p + w_p L_p²/2) + (W_h + D) (L_c + L_p): the hanging weight and what goes with it, over the
 * way out. Letting a string down takes no power but a brake.
 *
 * @returns work [J]
 * @throws RangeError when a length or weight is out of range
 * @source (d) work of the hanging weight over its way
 * @example
 * hoistingWork({ makeUp: { pipe: { jointLength: 6.096, linearWeight: 194.1 } }, fluidDensity: 0, length: 100 }) // → 970500
 */
export function hoistingWork(input: HoistingWorkInput): number {
  const { makeUp, fluidDensity, length, topHeadWeight = 0, drag = 0 } = input;
  requireNotNegative({ length, topHeadWeight, drag });
  const { linearWeight = 0, length: collars = 0 } = makeUp.collars ?? {};
  const collarLength = Math.min(length, collars);
  const pipeLength = length - collarLength;
  const inAir =
    linearWeight * collarLength * (collarLength / 2 + pipeLength) + (makeUp.pipe.linearWeight * pipeLength ** 2) / 2;
  return buoyancyFactor(fluidDensity) * inAir + (topHeadWeight + drag) * length;
}
