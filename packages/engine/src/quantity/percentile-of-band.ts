import type { Band } from "./band.ts";
import { normalPercentile } from "./percentile-of-normal.ts";
import { requireBetween } from "./require.ts";

/**
 * How a quantity is taken to lie within its band. `log-normal` for what is known by a factor and cannot be negative (strength,
 * ratios, friction); `normal` for what is known by a difference (an angle, a temperature, a depth).
 */
export type BandLaw = "log-normal" | "normal";

/**
 * Share of a distribution beyond which a band says nothing: draws are held between this percentile and its mirror [-].
 *
 * @source (c) common practice, no source: a low, middle and high figure do not carry a tail of one in a hundred
 */
export const FARTHEST_SHARE = 0.01;

/**
 * A percentile of a quantity of which only a band is known.
 *
 * Two-piece law with its median at the middle of the band: on each side the value (`normal`) or its logarithm
 * (`log-normal`) runs straight with the standard normal deviate z, through the middle at z = 0 and through the low and the high side
 * at the 10th and 90th percentile. So the three figures of the band are met exactly, whatever its skew. Percentiles below
 * the first and above the ninety-ninth are held there.
 *
 * @returns the value below which the quantity lies with chance `share` [unit of the band]
 * @throws RangeError when the share is outside 0 to 1, or a side of a log-normal band is not positive
 * @source (d) the normal law stretched on each side to the band's own 10th and 90th percentile
 * @example
 * bandPercentile({ band: { low: 5e6, mid: 30e6, high: 100e6 }, law: "log-normal", share: 0.9 }) // → 100e6
 */
export function bandPercentile({
  band,
  law,
  share,
}: {
  /** What is known of the quantity [unit of the quantity]. */
  readonly band: Band;
  readonly law: BandLaw;
  /** Chance of a smaller value [-]. */
  readonly share: number;
}): number {
  requireBetween("share", share, 0, 1);
  const deviate = normalPercentile(Math.min(Math.max(share, FARTHEST_SHARE), 1 - FARTHEST_SHARE)) / TENTH_OFF;
  const { low, mid, high } = band;
  if (law === "normal") return mid + deviate * (deviate < 0 ? mid - low : high - mid);
  if (!(low > 0)) throw new RangeError(`a log-normal band must be positive, got ${low} to ${high}`);
  return mid * (deviate < 0 ? mid / low : high / mid) ** deviate;
}

/** How far off the median the 90th percentile of a normal law lies, in standard deviations. */
const TENTH_OFF = normalPercentile(0.9);
