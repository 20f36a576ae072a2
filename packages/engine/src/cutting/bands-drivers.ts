import { requirePositive } from "../quantity/index.ts";

/** How far one input drives the spread of a figure. */
export interface BandDriver<Name extends string = string> {
  readonly input: Name;
  /** Standardised coefficient of the input: positive where more of the one goes with more of the other [-]. */
  readonly effect: number;
  /** Its squared effect as a part of those of all inputs [-]. */
  readonly share: number;
}

/**
 * Rank correlation of two rows of figures: 1 where one always rises with the other, -1 where it always falls, 0 where
 * either is level. Equal figures share the mean of their ranks.
 *
 * ρ = Σ (r - r̄)(s - s̄) / √(Σ (r - r̄)² Σ (s - s̄)²), r and s the ranks.
 *
 * @returns ρ [-]
 * @throws RangeError when the rows are empty or not equally long
 * @source (b) Spearman 1904, American Journal of Psychology 15:72-101, recalled
 * @example
 * rankCorrelation([1, 2, 3, 4], [10, 30, 20, 90]) // → 0.8
 */
export function rankCorrelation(one: ArrayLike<number>, other: ArrayLike<number>): number {
  requirePositive({ "number of figures": one.length });
  if (one.length !== other.length) throw new RangeError(`two rows of ${one.length} and ${other.length} do not pair`);
  const [r, s] = [ranks(one), ranks(other)];
  const middle = (one.length - 1) / 2;
  let [together, ofOne, ofOther] = [0, 0, 0];
  for (let k = 0; k < r.length; k++) {
    together += (r[k] - middle) * (s[k] - middle);
    ofOne += (r[k] - middle) ** 2;
    ofOther += (s[k] - middle) ** 2;
  }
  return ofOne > 0 && ofOther > 0 ? together / Math.sqrt(ofOne * ofOther) : 0;
}

/**
 * The inputs of a study in the order in which they drive one figure.
 *
 * The ranks of the figure are fitted as a straight sum of the ranks of all inputs at once; an input's effect is its
 * standardised coefficient β, its share β² over the sum of all β². Fitted together, an input that does nothing is not
 * credited with its chance likeness to one that does; for inputs drawn apart from each other β² is the squared rank correlation.
 * Sound where the figure rises or falls with each input over all of its band, as those of the cutting law do; an input that
 * works both ways would be missed.
 *
 * @throws RangeError when a row of draws is not as long as the figures
 * @source (b) Saltelli, Chan & Scott 2000, Sensitivity Analysis, ch. 2, standardised rank regression, recalled
 */
export function bandDrivers<Name extends string>(
  draws: Readonly<Record<Name, ArrayLike<number>>>,
  figures: ArrayLike<number>,
): BandDriver<Name>[] {
  const names = Object.keys(draws) as Name[];
  const withFigure = names.map((name) => rankCorrelation(draws[name], figures));
  const among = names.map((one, k) =>
    names.map((other, j) => (j === k ? 1 : rankCorrelation(draws[one], draws[other]))),
  );
  // Too few samples to tell the inputs apart: each is then taken by itself.
  const effects = solved(among, withFigure) ?? withFigure;
  const whole = effects.reduce((sum, effect) => sum + effect ** 2, 0);
  return names
    .map((input, k) => ({ input, effect: effects[k], share: whole > 0 ? effects[k] ** 2 / whole : 0 }))
    .sort((a, b) => b.share - a.share);
}

const LEAST_PIVOT = 1e-6;

/** Solution of a symmetric system by elimination; absent where it is near to having none. */
function solved(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | undefined {
  const rows = matrix.map((row, k) => [...row, right[k]]);
  const size = rows.length;
  for (let k = 0; k < size; k++) {
    // A correlation matrix keeps its pivots positive without rows changing places.
    const pivot = rows[k][k];
    if (!(pivot > LEAST_PIVOT)) return undefined;
    for (let below = k + 1; below < size; below++) {
      const factor = rows[below][k] / pivot;
      for (let c = k; c <= size; c++) rows[below][c] -= factor * rows[k][c];
    }
  }
  const solution = new Array<number>(size).fill(0);
  for (let k = size - 1; k >= 0; k--) {
    const known = solution.reduce((sum, value, c) => (c > k ? sum + rows[k][c] * value : sum), 0);
    solution[k] = (rows[k][size] - known) / rows[k][k];
  }
  return solution;
}

/** Ranks from 0; figures that are equal share the mean of theirs. */
function ranks(figures: ArrayLike<number>): Float64Array {
  const order = Uint32Array.from({ length: figures.length }, (_, k) => k).sort((a, b) => figures[a] - figures[b]);
  const ranked = new Float64Array(figures.length);
  for (let from = 0; from < order.length; ) {
    let to = from;
    while (to + 1 < order.length && figures[order[to + 1]] === figures[order[from]]) to++;
    for (let k = from; k <= to; k++) ranked[order[k]] = (from + to) / 2;
    from = to + 1;
  }
  return ranked;
}
