import { type Band, band, requireNotNegative } from "../quantity/index.ts";

/**
 * Product of two quantities, neither negative, that are each known within a band and do not depend on each other.
 *
 * The middle is the product of the middles; each side lies off it by the root of the summed squares of the two sides'
 * logarithms, so that ends which stand near the tenth and ninetieth percentile stay there. A side that reaches 0 makes
 * the product reach 0.
 *
 * @throws RangeError when a low side is negative
 * @source (d) variance of a sum of independent logarithms
 * @example
 * bandProduct({ low: 1, mid: 2, high: 4 }, { low: 3, mid: 3, high: 3 }).high // → 12
 */
export function bandProduct(one: Band, other: Band): Band {
  requireNotNegative({ "low side": Math.min(one.low, other.low) });
  const mid = one.mid * other.mid;
  if (mid === 0) return band(0, 0, one.high * other.high);
  const down = Math.hypot(Math.log(one.mid / one.low), Math.log(other.mid / other.low));
  const up = Math.hypot(Math.log(one.high / one.mid), Math.log(other.high / other.mid));
  return band(mid * Math.exp(-down), mid, mid * Math.exp(up));
}
