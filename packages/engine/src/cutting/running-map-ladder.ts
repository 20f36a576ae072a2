import { requirePositive } from "../quantity/index.ts";
import { type BitInRock, drillAtAdvance, drillAtWeight } from "./drilled-state.ts";

/** The bit at one advance, as far as a map needs it. Speed takes no part in it. */
export interface AdvanceRung {
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Weight on bit [N]. */
  readonly weight: number;
  /** Torque at the bit [N·m]. */
  readonly torque: number;
}

const RUNGS = 48;
// Closer steps near no advance, where bevels and flats come into contact and the lines bend most.
const CROWDING = 1.6;

/**
 * Weight and torque by advance from nothing up to a weight: the whole of what a bit does in a rock, since in the cutting law
 * both follow from the advance alone and every speed shares them.
 *
 * @throws RangeError when the weight is not positive or no advance carries it
 * @source (d) states of `drillAtAdvance` in steps
 */
export function advanceLadder(bitInRock: BitInRock, mostWeight: number): AdvanceRung[] {
  requirePositive({ mostWeight });
  const { advance: most } = drillAtWeight(bitInRock, mostWeight);
  return Array.from({ length: RUNGS + 1 }, (_, k) => {
    const advance = most * (k / RUNGS) ** CROWDING;
    const { weight, torque } = drillAtAdvance(bitInRock, advance).bit;
    return { advance, weight, torque };
  });
}

/**
 * The weight that makes an advance, straight between the rungs of a ladder.
 *
 * @returns weight on bit [N]; undefined beyond the top of the ladder
 * @throws RangeError when the advance is negative
 * @source (d) straight line between exact states
 * @example
 * ladderWeight([{ advance: 0, weight: 0, torque: 0 }, { advance: 1e-3, weight: 8e3, torque: 300 }], 0.5e-3) // → 4000
 */
export function ladderWeight(ladder: readonly AdvanceRung[], advance: number): number | undefined {
  if (!(advance >= 0)) throw new RangeError(`advance must not be negative, got ${advance}`);
  const above = ladder.findIndex((rung) => rung.advance >= advance);
  if (above < 0) return undefined;
  if (above === 0) return ladder[0].weight;
  const [low, high] = [ladder[above - 1], ladder[above]];
  return low.weight + ((advance - low.advance) / (high.advance - low.advance)) * (high.weight - low.weight);
}
