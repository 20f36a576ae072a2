/** What there is to choose from, in stages: the first decides most and is looked at whole. */
export interface StagedChoiceInput {
  /** How many options each stage has [-]. */
  readonly counts: readonly number[];
  /** The option of each stage that stands until the stage is looked at: that of the rules of thumb, counted from 0 [-]. */
  readonly start: readonly number[];
}

/** How a staged search went. */
export interface StagedChoice {
  /** Combinations looked at [-]. */
  readonly looked: number;
  /** Combinations that there are [-]. */
  readonly of: number;
  /** Most that each stage after the first has taken off a cost, as a share of it [-]. */
  readonly gains: readonly number[];
  /** What it was held that the choices left open could take off another cost at most, as a share of it [-]. */
  readonly allowances: readonly number[];
}

/**
 * How much more a choice may take off the cost of one bit than the most that it took off another, before it is left out
 * unseen [-].
 *
 * @source (c) no source: half as much again, our choice
 */
export const GAIN_ALLOWANCE = 1.5;

/**
 * What a choice may take off a cost even where it was never seen to [-].
 *
 * @source (c) no source: one part in a hundred, our choice
 */
export const LEAST_GAIN = 0.01;

/** One option of each stage, by number. */
type Point = readonly number[];

/**
 * A search for the cheapest combination that need not look at all of them. It gives one combination after another and is told
 * the cost of each, undefined for one that will not do.
 *
 * The first stage is looked at whole. Each next stage is tried on the cheapest first, and what it takes off there is measured.
 * A combination is then left as it is only where half as much again as the most that each open choice was seen to take off
 * would not bring it under the best. So the search ends with the cheapest of all, unless an open choice does on a bit that was
 * left out more than one and a half times what it did on every bit that was tried.
 *
 * @source (d) branch and bound; the bound is measured, with an allowance of our choice
 */
export function* stagedChoice({
  counts,
  start,
}: StagedChoiceInput): Generator<Point, StagedChoice, number | undefined> {
  const costs = new Map<string, number>();
  /** Most that each stage was seen to take off; not known before it was tried on a bit that will do. */
  const gains: (number | undefined)[] = counts.map(() => undefined);
  const allowance = (stage: number) => {
    const gain = gains[stage];
    return gain === undefined ? 1 : Math.min(1, GAIN_ALLOWANCE * Math.max(gain, LEAST_GAIN));
  };
  /** By stage: what may be opened there, and what has been. */
  const open: Point[][] = counts.map(() => []);
  const costOf = (point: Point) => costs.get(String(point)) ?? Number.POSITIVE_INFINITY;
  function* opened(from: Point, stage: number): Generator<Point, void, number | undefined> {
    const points = Array.from({ length: counts[stage] }, (_, k) =>
      from.map((option, at) => (at === stage ? k : option)),
    );
    for (const point of points) {
      if (!costs.has(String(point))) costs.set(String(point), (yield point) ?? Number.POSITIVE_INFINITY);
    }
    open[stage] = open[stage].filter((one) => one !== from);
    if (stage + 1 < counts.length) open[stage + 1].push(...points);
    const least = Math.min(...points.map(costOf));
    if (Number.isFinite(costOf(from))) gains[stage] = Math.max(gains[stage] ?? 0, 1 - least / costOf(from));
  }
  /** The least cost that a point may come to once the stages from this one on are looked at. */
  const reach = (point: Point, stage: number) => {
    const cost = costOf(point);
    const share = counts.reduce((product, _, at) => (at < stage ? product : product * (1 - allowance(at))), 1);
    return Number.isFinite(cost) ? cost * share : cost;
  };
  yield* opened(start, 0);
  for (;;) {
    const least = Math.min(...costs.values());
    // Where nothing will do so far, another rake or body of the same bit may: then all are looked at.
    const waiting = open
      .flatMap((points, stage) =>
        points.map((point) => ({ point, stage, cost: costOf(point), reach: reach(point, stage) })),
      )
      .filter((one) => one.reach < least || least === Number.POSITIVE_INFINITY);
    const [next] = waiting.sort((a, b) => inOrder(a.reach, b.reach) || inOrder(a.cost, b.cost) || b.stage - a.stage);
    if (!next) break;
    yield* opened(next.point, next.stage);
  }
  return {
    looked: costs.size,
    of: counts.reduce((product, count) => product * count, 1),
    gains: gains.slice(1).map((gain) => gain ?? 0),
    allowances: counts.slice(1).map((_, at) => allowance(at + 1)),
  };
}

/** Two of them may be without end, and their difference no number. */
const inOrder = (a: number, b: number) => (a === b ? 0 : a < b ? -1 : 1);
