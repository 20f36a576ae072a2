/** A layout as the two aims see it. */
export interface TwoAims {
  /** Deviation of the measure over its mean [-]. */
  readonly evenness: number;
  /** Side force as a share of the weight [-]. */
  readonly imbalance: number;
}

/** Differences under this are none [-]: (d) our choice; a shop cannot set a bit to them. */
const ALIKE: TwoAims = { evenness: 0.003, imbalance: 1e-3 };

/**
 * Those that no other betters in both aims, the most even first.
 *
 * @source (d) definition of a Pareto list
 */
export function paretoList<T extends TwoAims>(all: readonly T[]): T[] {
  const rising = [...all].sort((a, b) => a.evenness - b.evenness || a.imbalance - b.imbalance);
  const kept: T[] = [];
  let steadiest = Number.POSITIVE_INFINITY;
  for (const one of rising) {
    if (one.imbalance >= steadiest) continue;
    steadiest = one.imbalance;
    kept.push(one);
  }
  return kept;
}

/**
 * Those of a list that are worth choosing between, at most so many.
 *
 * Where several are as even as one another, to what a shop can set, only the steadiest of them counts; where several are as
 * steady, only the most even. Of what is still too many, one of the nearest two goes, never an end.
 *
 * @source (d) our choice
 */
export function thinnedList<T extends TwoAims>(
  list: readonly T[],
  /** Most that are kept, at least 2 [-]. */
  most: number,
): T[] {
  const steadiestOfEven = bestOfAlike(paretoList(list), "evenness");
  const kept = bestOfAlike(steadiestOfEven.reverse(), "imbalance").reverse();
  const [scaleE, scaleI] = [span(kept, "evenness"), span(kept, "imbalance")];
  while (kept.length > Math.max(most, 2)) {
    let nearest = { at: 1, apart: Number.POSITIVE_INFINITY };
    for (let at = 1; at < kept.length; at++) {
      const [before, here] = [kept[at - 1], kept[at]];
      const apart = (here.evenness - before.evenness) / scaleE + (before.imbalance - here.imbalance) / scaleI;
      // The outer end stays; its neighbour goes in its stead.
      if (apart < nearest.apart) nearest = { at: Math.min(at, kept.length - 2), apart };
    }
    kept.splice(nearest.at, 1);
  }
  return kept;
}

/** Of each run of a list that is alike in one aim, counted from the first of the run, the last: it is best in the other. */
function bestOfAlike<T extends TwoAims>(list: readonly T[], aim: keyof TwoAims): T[] {
  const kept: T[] = [];
  let first: T | undefined;
  for (const one of list) {
    if (first && one[aim] < first[aim] + ALIKE[aim]) kept[kept.length - 1] = one;
    else {
      first = one;
      kept.push(one);
    }
  }
  return kept;
}

function span<T extends TwoAims>(list: readonly T[], aim: keyof TwoAims): number {
  const values = list.map((one) => one[aim]);
  return Math.max(Math.max(...values) - Math.min(...values), ALIKE[aim]);
}

/**
 * The best compromise of a list: the one nearest to no unevenness and no side force at all, each measured against what a
 * bit to be bettered has.
 *
 * least √((u/u₀)² + (f/f₀)²).
 *
 * @source (d) our choice
 */
export function bestCompromise<T extends TwoAims>(list: readonly T[], bettered: TwoAims): T | undefined {
  const far = ({ evenness, imbalance }: T) =>
    Math.hypot(
      evenness / Math.max(bettered.evenness, ALIKE.evenness),
      imbalance / Math.max(bettered.imbalance, ALIKE.imbalance),
    );
  return list.reduce<T | undefined>((best, one) => (!best || far(one) < far(best) ? one : best), undefined);
}
