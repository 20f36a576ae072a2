/** How far apart the values of the cutters are. */
export interface EvenSpread {
  /** Standard deviation over the mean, 0 where all are alike [-]. */
  readonly deviation: number;
  /** Mean over those that count, 0 where nothing is taken [unit of the measure]. */
  readonly mean: number;
  /** The largest over the mean [-]. */
  readonly peak: number;
}

/**
 * How unevenly a measure is spread over the cutters that count.
 *
 * u = √(Σ (x/x̄ - 1)²/n); peak = max x/x̄. Where nothing is taken at all they are 0.
 *
 * @source (d) coefficient of variation
 */
export function evenSpread(values: ArrayLike<number>, counts: (at: number) => boolean): EvenSpread {
  let sum = 0;
  let number = 0;
  let largest = 0;
  for (let at = 0; at < values.length; at++) {
    if (!counts(at)) continue;
    sum += values[at];
    number++;
    if (values[at] > largest) largest = values[at];
  }
  if (!(sum > 0)) return { deviation: 0, mean: 0, peak: 0 };
  const mean = sum / number;
  let squares = 0;
  for (let at = 0; at < values.length; at++) if (counts(at)) squares += (values[at] / mean - 1) ** 2;
  return { deviation: Math.sqrt(squares / number), mean, peak: largest / mean };
}
