/** Readings gathered into even depth bins. */
export interface DepthBins {
  /** Top of the first bin [m]. */
  readonly top: number;
  /** Height of a bin [m]. */
  readonly height: number;
  /** Median of the readings in each bin, NaN where it holds none [unit of the readings]. */
  readonly medians: Float64Array;
}

/** Most bins that a hole is parted into [-]; the work of finding beds grows with its square. */
const MOST_BINS = 2000;

/** Medians by even depth bins, at most `MOST_BINS`, and no finer than one bin to a reading. */
export function depthBins(depths: readonly number[], readings: readonly number[]): DepthBins {
  const top = depths.reduce((least, depth) => Math.min(least, depth), Number.POSITIVE_INFINITY);
  const bottom = depths.reduce((most, depth) => Math.max(most, depth), Number.NEGATIVE_INFINITY);
  const count = Math.max(1, Math.min(MOST_BINS, depths.length));
  const height = (bottom - top) / count;
  const gathered: number[][] = Array.from({ length: count }, () => []);
  depths.forEach((depth, at) => {
    const bin = height > 0 ? Math.min(count - 1, Math.floor((depth - top) / height)) : 0;
    gathered[bin]?.push(readings[at] ?? Number.NaN);
  });
  return { top, height, medians: Float64Array.from(gathered, (values) => shareOf(values, 0.5)) };
}

/**
 * The reading below which a share of the readings lies, between neighbours by their distance.
 *
 * @returns reading [unit of the readings], NaN of none
 */
export function shareOf(readings: readonly number[], share: number): number {
  const sorted = [...readings].sort((a, b) => a - b);
  const place = (sorted.length - 1) * share;
  const [under, over] = [sorted[Math.floor(place)] ?? Number.NaN, sorted[Math.ceil(place)] ?? Number.NaN];
  return under + (over - under) * (place - Math.floor(place));
}
