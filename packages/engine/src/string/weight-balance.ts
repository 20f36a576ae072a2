import { requireFinite, requireNotNegative, requirePositive } from "../quantity/index.ts";

/** What rests on the bit besides the rig's push or pull. */
export interface RestingLoads {
  /** Weight of collars and pipe in fluid [N]. */
  readonly hangingWeight: number;
  /** Weight of top head or kelly that rests on the string; 0 where not given [N]. */
  readonly topHeadWeight?: number;
  /** Drag of the hole wall against going down; 0 where not given [N]. */
  readonly drag?: number;
}

/** What `weightOnBit` needs. */
export interface WeightOnBitInput extends RestingLoads {
  /** Force with which the rig pushes; 0 when it holds back [N]. */
  readonly pullDown: number;
  /** Force with which the rig holds back; 0 when it pushes [N]. */
  readonly holdBack: number;
}

/**
 * Weight on bit, pipe weight included.
 *
 * W = pull-down - hold-back + BF (W_collars + W_pipe) + top head - drag; vertical hole. Below zero the bit is off bottom.
 *
 * @returns weight on bit [N]
 * @throws RangeError when a force is negative
 * @source (d) balance of forces along the string
 * @example
 * weightOnBit({ pullDown: 4000, holdBack: 0, hangingWeight: 23200, topHeadWeight: 1000, drag: 500 }) // → 27700
 */
export function weightOnBit(input: WeightOnBitInput): number {
  const { pullDown, holdBack, hangingWeight, topHeadWeight = 0, drag = 0 } = input;
  requireNotNegative({ pullDown, holdBack, hangingWeight, topHeadWeight, drag });
  return pullDown - holdBack + hangingWeight + topHeadWeight - drag;
}

/** What `feedForce` needs. */
export interface FeedForceInput extends RestingLoads {
  /** Weight wanted on the bit [N]. */
  readonly targetWeight: number;
}

/**
 * Force that the rig's feed has to add for a wanted weight on bit.
 *
 * F = W - BF (W_collars + W_pipe) - top head + drag; above zero pull-down, below zero hold-back.
 *
 * @returns feed force, pull-down positive, hold-back negative [N]
 * @throws RangeError when a force is negative
 * @source (d) balance of forces along the string
 * @example
 * feedForce({ targetWeight: 27245, hangingWeight: 23184 }) // → 4061
 */
export function feedForce({ targetWeight, hangingWeight, topHeadWeight = 0, drag = 0 }: FeedForceInput): number {
  requireNotNegative({ targetWeight, hangingWeight, topHeadWeight, drag });
  return targetWeight - hangingWeight - topHeadWeight + drag;
}

/** The rig's feed gauge, on which the driller sets the weight. */
export interface FeedGauge {
  /** Feed force for each unit of gauge pressure when pulling down [N/Pa]. */
  readonly gaugeForceFactor: number;
  /** The same when holding back, where the gauge works on another area [N/Pa]. */
  readonly holdBackGaugeForceFactor?: number;
  /** Reading that only just moves the empty feed and pushes nothing; 0 where not given [Pa]. */
  readonly zeroReading?: number;
}

/** What `feedGaugeReading` needs. */
export interface FeedGaugeReadingInput extends FeedGauge {
  /** Feed force, pull-down positive, hold-back negative [N]. */
  readonly feedForce: number;
}

/**
 * Reading of the rig's feed gauge for a feed force.
 *
 * p = p₀ + |F|/k, k the factor of the side in use and p₀ the reading that just moves the empty feed. Check both by
 * weighing the string.
 *
 * @returns gauge pressure [Pa]
 * @throws RangeError when a factor is not positive or the zero reading is negative
 * @source (d) force over the gauge's area
 * @example
 * feedGaugeReading({ feedForce: 4061, gaugeForceFactor: 0.0032 }) // → 1269062
 * feedGaugeReading({ feedForce: 4061, gaugeForceFactor: 0.0032, zeroReading: 8e5 }) // → 2069062
 */
export function feedGaugeReading(input: FeedGaugeReadingInput): number {
  const { gaugeForceFactor, holdBackGaugeForceFactor = gaugeForceFactor, zeroReading = 0 } = input;
  requireNotNegative({ zeroReading });
  requireFinite({ feedForce: input.feedForce });
  requirePositive({ gaugeForceFactor, holdBackGaugeForceFactor });
  return zeroReading + Math.abs(input.feedForce) / (input.feedForce < 0 ? holdBackGaugeForceFactor : gaugeForceFactor);
}
