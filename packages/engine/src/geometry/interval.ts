/** A stretch of a line, `from <= to`. */
export interface Interval {
  /** Lower end [m]. */
  readonly from: number;
  /** Upper end [m]. */
  readonly to: number;
}

/** A stretch of a line and how many given stretches lie over it. */
export interface CountedInterval extends Interval {
  /** Stretches that cover it [-]. */
  readonly count: number;
}

/**
 * How many of the given stretches cover each part of `span`, as steps in ascending order that join without a gap.
 * Equal counts that touch are one step.
 */
export function coverCounts(intervals: readonly Interval[], span: Interval): CountedInterval[] {
  const inside = intervals
    .map(({ from, to }) => ({ from: Math.max(from, span.from), to: Math.min(to, span.to) }))
    .filter(({ from, to }) => to > from);
  const marks = [span.from, span.to, ...inside.flatMap(({ from, to }) => [from, to])].sort((a, b) => a - b);
  const steps: CountedInterval[] = [];
  for (let at = 0; at + 1 < marks.length; at++) {
    const from = marks[at] ?? span.from;
    const to = marks[at + 1] ?? span.to;
    if (!(to > from)) continue;
    const count = inside.filter((interval) => interval.from <= from && interval.to >= to).length;
    const last = steps.at(-1);
    if (last && last.count === count) steps[steps.length - 1] = { ...last, to };
    else steps.push({ from, to, count });
  }
  return steps;
}

/** The parts of `span` that none of the stretches covers and that are wider than `narrowest` [m], ascending. */
export function gapsBetween(intervals: readonly Interval[], span: Interval, narrowest = 0): Interval[] {
  return coverCounts(intervals, span)
    .filter(({ from, to, count }) => count === 0 && to - from > narrowest)
    .map(({ from, to }) => ({ from, to }));
}
