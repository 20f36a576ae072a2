import { type Band, band, commonPractice, requirePositive, type Source } from "../quantity/index.ts";

const TURN_PER_MINUTE = (2 * Math.PI) / 60;

/**
 * Length over which a new bit is let cut its own bottom [m].
 *
 * @source (c) common practice, no source: the first foot or so
 */
export const BREAK_IN_LENGTH = 0.3048;

/**
 * Least share of the full weight while a new bit cuts its bottom [-].
 *
 * @source (c) common practice, no source: a third to a half
 */
export const BREAK_IN_WEIGHT_SHARE_LOW = 1 / 3;

/**
 * Largest share of the full weight while a new bit cuts its bottom [-].
 *
 * @source (c) common practice, no source: a third to a half
 */
export const BREAK_IN_WEIGHT_SHARE_HIGH = 1 / 2;

/**
 * Slowest rotary speed while a new bit cuts its bottom [rad/s].
 *
 * @source (c) common practice, no source: 40 rpm
 */
export const BREAK_IN_SPEED_LOW = 40 * TURN_PER_MINUTE;

/**
 * Fastest rotary speed while a new bit cuts its bottom [rad/s].
 *
 * @source (c) common practice, no source: 60 rpm
 */
export const BREAK_IN_SPEED_HIGH = 60 * TURN_PER_MINUTE;

/** How a new or rebuilt bit is started. */
export interface BreakIn {
  /** Length to drill gently [m]. */
  readonly length: number;
  /** Weight while it lasts [N]. */
  readonly weight: Band;
  /** Rotary speed while it lasts [rad/s]. */
  readonly rotarySpeed: Band;
  /** What to do, in order. */
  readonly steps: readonly string[];
  readonly source: Source;
}

/** The figures that a break-in is measured by. */
export interface BreakInInput {
  /** Weight after the break-in [N]. */
  readonly fullWeight: number;
  /** Rotary speed after the break-in [rad/s]. */
  readonly fullSpeed: number;
}

/**
 * How to start a new or rebuilt bit: about a foot at a third to a half of the weight, slow, with all the flow. The speed
 * is never above that of the drilling that follows.
 *
 * @throws RangeError when the weight or the speed is not positive
 * @source (c) common practice, no source
 */
export function breakInFor({ fullWeight, fullSpeed }: BreakInInput): BreakIn {
  requirePositive({ fullWeight, fullSpeed });
  const low = BREAK_IN_WEIGHT_SHARE_LOW * fullWeight;
  const high = BREAK_IN_WEIGHT_SHARE_HIGH * fullWeight;
  const fastest = Math.min(BREAK_IN_SPEED_HIGH, fullSpeed);
  const slowest = Math.min(BREAK_IN_SPEED_LOW, fastest);
  return {
    length: BREAK_IN_LENGTH,
    weight: band(low, (low + high) / 2, high),
    rotarySpeed: band(slowest, (slowest + fastest) / 2, fastest),
    steps: [
      "Full flow and returns at the surface before the bit touches bottom.",
      "Turn slowly, then feed down until the bit just takes weight.",
      "Hold the light weight and the slow speed until the bit has cut its own bottom.",
      "Bring the weight up in steps, then the speed.",
    ],
    source: commonPractice(),
  };
}
