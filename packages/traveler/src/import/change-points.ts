import { requirePositive } from "@bitwright/engine";

/**
 * Spread below which a run counts as even, levels being natural logarithms [-].
 *
 * @source (c) common practice, no source: no field recorder repeats a reading better than two in a hundred
 */
const LEAST_SPREAD = 0.02;

/** A run of readings by depth whose level may change. */
export interface ChangePointInput {
  /** Natural logarithms of the readings by even depth bins, NaN where a bin holds none [-]. */
  readonly levels: Float64Array;
  /** Fewest bins that a piece may hold [-]. */
  readonly leastBins: number;
  /** Most pieces that may be made [-]. */
  readonly mostPieces: number;
  /** Bins at which a piece must begin, ascending; the first of all is one without saying [-]. */
  readonly forced: readonly number[];
}

export interface ChangePoints {
  /** First bin of each piece, ascending, the first 0 [-]. */
  readonly starts: readonly number[];
  /** By how much a further piece had to lower the sum of squares to be made [square of the levels]. */
  readonly penalty: number;
  /** Spread of a single bin about the level of its piece, standard deviation [unit of the levels]. */
  readonly spread: number;
}

/**
 * Pieces of even level: of all ways to part the run into so many pieces the one with the least sum of squares about the
 * pieces' means, by dynamic programming; the number of pieces is that with the least sum of squares plus penalty.
 *
 * Penalty for one more piece: 2 m s² ln(n/m), m bins to the least piece, n bins, s the spread of a bin. It is the
 * criterion of Schwarz for a level and a place, with neighbouring bins of one least piece counted as one reading, because
 * readings along a hole resemble their neighbours. s comes from the median difference of bins m apart, 0.02 at
 * least. The same input gives the same pieces.
 *
 * @throws RangeError when the least piece or the most pieces is not positive
 * @source (b) Jackson et al. 2005, IEEE Signal Process. Lett. 12:105-108, optimal partition; Schwarz 1978, Ann. Stat.
 * 6:461-464, both recalled; (d) the count of independent readings
 */
export function changePoints(input: ChangePointInput): ChangePoints {
  const { levels, leastBins, mostPieces, forced } = input;
  requirePositive({ leastBins, mostPieces });
  const bins = levels.length;
  const spread = Math.max(LEAST_SPREAD, spreadAtDistance(levels, leastBins));
  const penalty = 2 * leastBins * spread ** 2 * Math.log(Math.max(bins / leastBins, 2));
  const borders = [0, ...forced.filter((bin) => bin > 0 && bin < bins), bins];
  const stretches = borders.slice(1).map((end, at) => {
    const start = borders[at] ?? 0;
    return partitions({ levels: levels.subarray(start, end), start, leastBins, most: mostPieces });
  });
  const best = joined(stretches, mostPieces, penalty);
  return { starts: best, penalty, spread };
}

/** The best way to part one stretch into 1, 2, 3 … pieces. */
interface Partition {
  readonly cost: number;
  readonly starts: readonly number[];
}

function partitions(parts: { levels: Float64Array; start: number; leastBins: number; most: number }): Partition[] {
  const { levels, start, leastBins, most } = parts;
  const bins = levels.length;
  const cost = costOfPieces(levels);
  const pieces = Math.max(1, Math.min(most, Math.floor(bins / leastBins)));
  // Where only one piece fits, it may be thinner than the least: a border that the user set is not argued with.
  const least = pieces === 1 ? 1 : leastBins;
  let before = new Float64Array(bins + 1).fill(Number.POSITIVE_INFINITY);
  for (let end = least; end <= bins; end++) before[end] = cost(0, end);
  const cameFrom: Int32Array[] = [];
  const found: Partition[] = [{ cost: before[bins] ?? 0, starts: [start] }];
  for (let piece = 2; piece <= pieces; piece++) {
    const now = new Float64Array(bins + 1).fill(Number.POSITIVE_INFINITY);
    const from = new Int32Array(bins + 1);
    for (let end = piece * least; end <= bins; end++) {
      let lowest = Number.POSITIVE_INFINITY;
      for (let cut = (piece - 1) * least; cut <= end - least; cut++) {
        const total = (before[cut] ?? 0) + cost(cut, end);
        if (total < lowest) {
          lowest = total;
          from[end] = cut;
        }
      }
      now[end] = lowest;
    }
    cameFrom.push(from);
    before = now;
    const starts: number[] = [];
    let end = bins;
    for (let back = cameFrom.length - 1; back >= 0; back--) {
      end = cameFrom[back]?.[end] ?? 0;
      starts.unshift(start + end);
    }
    found.push({ cost: now[bins] ?? 0, starts: [start, ...starts] });
  }
  return found;
}

/** Sum of squares of a piece about its mean, from running sums; bins without a reading do not count. */
function costOfPieces(levels: Float64Array): (from: number, to: number) => number {
  const counts = new Float64Array(levels.length + 1);
  const sums = new Float64Array(levels.length + 1);
  const squares = new Float64Array(levels.length + 1);
  levels.forEach((level, at) => {
    const held = Number.isNaN(level) ? 0 : 1;
    const value = Number.isNaN(level) ? 0 : level;
    counts[at + 1] = (counts[at] ?? 0) + held;
    sums[at + 1] = (sums[at] ?? 0) + value;
    squares[at + 1] = (squares[at] ?? 0) + value ** 2;
  });
  return (from, to) => {
    const count = (counts[to] ?? 0) - (counts[from] ?? 0);
    if (count === 0) return 0;
    const sum = (sums[to] ?? 0) - (sums[from] ?? 0);
    return Math.max(0, (squares[to] ?? 0) - (squares[from] ?? 0) - sum ** 2 / count);
  };
}

/** Shares the pieces out among the stretches between forced borders, and stops where one more does not pay. */
function joined(stretches: readonly Partition[][], mostPieces: number, penalty: number): number[] {
  const most = Math.max(mostPieces, stretches.length);
  let best: (Partition | undefined)[] = [{ cost: 0, starts: [] }];
  for (const stretch of stretches) {
    const next: (Partition | undefined)[] = [];
    best.forEach((soFar, used) => {
      if (!soFar) return;
      stretch.forEach((partition, at) => {
        const total = used + at + 1;
        if (total > most) return;
        const cost = soFar.cost + partition.cost;
        const known = next[total];
        if (!known || cost < known.cost) next[total] = { cost, starts: [...soFar.starts, ...partition.starts] };
      });
    });
    best = next;
  }
  let chosen: { score: number; starts: readonly number[] } | undefined;
  best.forEach((partition, pieces) => {
    if (!partition) return;
    const score = partition.cost + penalty * pieces;
    if (!chosen || score < chosen.score) chosen = { score, starts: partition.starts };
  });
  return [...(chosen?.starts ?? [0])];
}

/** Median absolute deviation of a normal spread, as a share of its standard deviation [-]. */
const MEDIAN_DEVIATION = 0.6745;

/** Spread of a bin about its level, from the median difference of bins so far apart: a few true steps do not move it. */
function spreadAtDistance(levels: Float64Array, distance: number): number {
  const differences: number[] = [];
  for (let at = distance; at < levels.length; at++) {
    const difference = Math.abs((levels[at] ?? Number.NaN) - (levels[at - distance] ?? Number.NaN));
    if (!Number.isNaN(difference)) differences.push(difference);
  }
  differences.sort((a, b) => a - b);
  const middle = differences[Math.floor(differences.length / 2)] ?? 0;
  return middle / (MEDIAN_DEVIATION * Math.SQRT2);
}
