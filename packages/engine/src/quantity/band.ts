import { requireFinite } from "./require.ts";

/** A quantity that is known only within bounds. All three in the same SI unit, `low <= mid <= high`. */
export interface Band {
  /** Low side, near the tenth percentile [unit of the quantity]. */
  readonly low: number;
  /** Best single value [unit of the quantity]. */
  readonly mid: number;
  /** High side, near the ninetieth percentile [unit of the quantity]. */
  readonly high: number;
}

/**
 * A checked band.
 *
 * @throws RangeError when the three values are not finite and in ascending order
 */
export function band(low: number, mid: number, high: number): Band {
  requireFinite({ low, mid, high });
  if (!(low <= mid && mid <= high)) {
    throw new RangeError(`a band must ascend, got low ${low}, mid ${mid}, high ${high}`);
  }
  return { low, mid, high };
}

/** A band whose sides both equal `value`: a quantity taken as known. */
export function exactBand(value: number): Band {
  return band(value, value, value);
}

/** The band with each value passed through a rising or falling map; the sides are put back in ascending order. */
export function mapBand(of: Band, map: (value: number) => number): Band {
  const [a, b, c] = [map(of.low), map(of.mid), map(of.high)];
  return band(Math.min(a, c), b, Math.max(a, c));
}
