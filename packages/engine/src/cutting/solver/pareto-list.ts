/** A layout as the two aims see it. */
export interface TwoAims {
  /** Deviation of the measure over its mean [-]. */
  readonly evenness: number;
  /** Side force as a share of the weight [-]. */
  readonly imbalance: number;
}

/** Differences under this are none [-]: (d) our choice; a shop cannot set a bit to them. */
const ALIKE: TwoAims = { evenness: 0.002, imbalance: 5e-4 };

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
 * A Pareto list thinned to so many: of neighbours too alike to matter, and then of the nearest two, one is left out, never
 * an end of the list.
 *
 * @source (d) our choice
 */
export function thinnedList<T extends TwoAims>(
  list: readonly T[],
  /** Most that are kept, at least 2 [-]. */
  most: number,
): T[] {
  const kept = paretoList(list);
  const [scaleE, scaleI] = [span(kept, "evenness"), span(kept, "imbalance")];
  for (;;) {
    let nearest: { readonly at: number; readonly apart: number; readonly alike: boolean } | undefined;
    for (let at = 1; at < kept.length; at++) {
      const [before, here] = [kept[at - 1], kept[at]];
      const dE = here.evenness - before.evenness;
      const dI = before.imbalance - here.imbalance;
      const alike = dE < ALIKE.evenness && dI < ALIKE.imbalance;
      const apart = dE / scaleE + dI / scaleI;
      // The outer end stays; its neighbour goes in its stead.
      const drop = at === kept.length - 1 ? Math.max(1, at - 1) : at;
      if (!nearest || apart < nearest.apart) nearest = { at: drop, apart, alike };
    }
    if (!nearest || kept.length <= 2 || (kept.length <= most && !nearest.alike)) return kept;
    kept.splice(nearest.at, 1);
  }
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
