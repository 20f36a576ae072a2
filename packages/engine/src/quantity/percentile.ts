import { requireBetween, requirePositive } from "./require.ts";

/**
 * A percentile of a sample, straight between the two values that stand next to it.
 *
 * x = x_k + (g) (x_(k+1) - x_k) with k + g = (n - 1) p counted from 0: the usual one of spreadsheets, type 7 of the source.
 *
 * @returns the value below which a share `share` of the sample lies [unit of the values]
 * @throws RangeError when there is no value, one is not finite, or the share is outside 0 to 1
 * @source (b) Hyndman & Fan 1996, The American Statistician 50:361-365, definition 7, recalled
 * @example
 * percentile([15, 20, 35, 40, 50], 0.4) // → 29
 */
export function percentile(values: readonly number[], share: number): number {
  requirePositive({ "number of values": values.length });
  requireBetween("share", share, 0, 1);
  const ascending = Float64Array.from(values).sort();
  const place = (ascending.length - 1) * share;
  const below = Math.floor(place);
  const low = ascending[below];
  const high = ascending[Math.min(below + 1, ascending.length - 1)];
  if (!(Number.isFinite(ascending[0]) && Number.isFinite(ascending[ascending.length - 1]))) {
    throw new RangeError("a percentile needs finite values only");
  }
  return low + (place - below) * (high - low);
}
