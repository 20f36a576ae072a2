import type { RockResponse } from "../ground/index.ts";
import { bracketedRoot, requireNotNegative, requirePositive } from "../quantity/index.ts";
import { type BitLoads, bitLoads } from "./bit-loads.ts";
import { type CuttingKernel, plainKernel } from "./cutting-kernel.ts";
import { type EdgeLoads, emptyEdgeLoads } from "./edge-loads.ts";
import type { EdgeTrace } from "./edge-trace.ts";
import { type Engagement, emptyEngagement } from "./engage.ts";

/** A bit in one rock. */
export interface BitInRock {
  readonly trace: EdgeTrace;
  readonly response: RockResponse;
  /** What runs the loops; the plain kernel where none is named. No figure depends on it. */
  readonly kernel?: CuttingKernel | undefined;
}

/** The bit at one advance per revolution. */
export interface DrilledState {
  /** Advance per revolution [m]. */
  readonly advance: number;
  readonly engagement: Engagement;
  readonly loads: EdgeLoads;
  readonly bit: BitLoads;
}

/** A figure of the state that grows with advance, for a search. */
export type StateMeasure = (state: DrilledState) => number;

// A solved figure is met to this share of itself; the sums themselves round at about 1e-13.
const RESIDUAL_SHARE = 1e-9;
const SMALLEST_ADVANCE = 1e-12;
// No bit goes forward by a metre in one turn: a figure that is not reached by then is not reached at all.
const LARGEST_ADVANCE = 1;
const FIRST_ADVANCE = 5e-4;
const WIDENING = 2;

/**
 * Forces on bit and cutters at a given advance per revolution. At no advance nothing touches and all is zero.
 *
 * @throws RangeError when the advance is negative or a constant of the rock is not sound
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled, summed over the traced edges
 */
export function drillAtAdvance({ trace, response, kernel = plainKernel }: BitInRock, advance: number): DrilledState {
  const engagement = kernel.engage(trace, advance);
  const loads = kernel.edgeLoads(trace, engagement, response);
  return { advance, engagement, loads, bit: bitLoads(loads) };
}

/**
 * The state in which a weight is carried, cutters, chamfers and flats together.
 *
 * @throws RangeError when the weight is negative, or no advance carries it
 * @source (d) root of weight(advance), which rises
 */
export function drillAtWeight(bitInRock: BitInRock, weight: number): DrilledState {
  requireNotNegative({ weight });
  return stateWhere(bitInRock, "weight", ({ bit }) => bit.weight, weight);
}

/**
 * The state in which the bit takes a torque; its weight is the weight that reaches that torque.
 *
 * @throws RangeError when the torque is negative, or no advance takes it
 * @source (d) root of torque(advance), which rises
 */
export function drillAtTorque(bitInRock: BitInRock, torque: number): DrilledState {
  requireNotNegative({ torque });
  return stateWhere(bitInRock, "torque", ({ bit }) => bit.torque, torque);
}

/**
 * The state in which the bit takes a rotary power, T ω.
 *
 * @throws RangeError when the power is negative, the rotary speed not positive, or no advance takes it
 * @source (d) root of T ω (advance), which rises
 */
export function drillAtPower(
  bitInRock: BitInRock,
  {
    power,
    rotarySpeed,
  }: {
    /** Rotary power at the bit [W]. */
    readonly power: number;
    /** Rotary speed of the bit [rad/s]. */
    readonly rotarySpeed: number;
  },
): DrilledState {
  requirePositive({ rotarySpeed });
  return drillAtTorque(bitInRock, power / rotarySpeed);
}

function stateWhere(bitInRock: BitInRock, name: string, measure: StateMeasure, target: number): DrilledState {
  const advance = advanceWhere(bitInRock, measure, target);
  if (advance === undefined) throw new RangeError(`no advance reaches a ${name} of ${target}`);
  return drillAtAdvance(bitInRock, advance);
}

/**
 * The advance at which a rising figure of the state meets its target; undefined where no advance reaches it.
 *
 * The bracket is widened outward from a guess and closed by Brent's method down to a residual, never by
 * a set number of steps.
 *
 * @throws RangeError when the figure jumps past its target
 * @source (d) root search
 */
export function advanceWhere(bitInRock: BitInRock, measure: StateMeasure, target: number): number | undefined {
  if (!(target > 0)) return 0;
  const { trace, response, kernel = plainKernel } = bitInRock;
  const engagement = emptyEngagement(trace);
  const loads = emptyEdgeLoads(trace);
  const known = new Map<number, number>();
  const excess = (advance: number) => {
    const before = known.get(advance);
    if (before !== undefined) return before;
    kernel.edgeLoads(trace, kernel.engage(trace, advance, engagement), response, loads);
    const value = measure({ advance, engagement, loads, bit: bitLoads(loads) }) - target;
    known.set(advance, value);
    return value;
  };
  // Most figures run nearly in step with advance, so one look at a small advance tells about where the answer lies.
  const first = excess(FIRST_ADVANCE) + target;
  const guess = first > 0 ? (FIRST_ADVANCE * target) / first : FIRST_ADVANCE;
  let low = Math.min(LARGEST_ADVANCE / WIDENING, Math.max(SMALLEST_ADVANCE, guess));
  let high = low;
  if (excess(low) < 0) {
    do {
      low = high;
      high *= WIDENING;
      if (high > LARGEST_ADVANCE) return undefined;
    } while (excess(high) < 0);
  } else {
    do {
      high = low;
      low /= WIDENING;
      // A figure that stands above its target before the bit has moved has no advance that meets it.
      if (low < SMALLEST_ADVANCE) return 0;
    } while (excess(low) > 0);
  }
  return bracketedRoot({ f: excess, low, high, residual: RESIDUAL_SHARE * target, width: 1e-15 * high });
}
