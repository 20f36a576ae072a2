/** What there is to choose from, in stages: the first decides most and is looked at whole. */
export interface StagedChoiceInput {
  /** How many options each stage has. */
  readonly counts: readonly number[];
  /** The option of each stage that stands until the stage is looked at: that of the rules of thumb. */
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
  const gains = counts.map(() => 0);
  const allowance = (stage: number) => GAIN_ALLOWANCE * Math.max(gains[stage], LEAST_GAIN);
  /** By stage: what may be opened there, and what has been. */
  const open: Point[][] = counts.map(() => []);
  const costOf = (point: Point) => costs.get(String(point)) ?? Number.POSITIVE_INFINITY;
  const cheapest = (points: readonly Point[]) =>
    points.reduce<Point | undefined>((best, one) => (best && costOf(best) <= costOf(one) ? best : one), undefined);
  function* opened(from: Point, stage: number): Generator<Point, Point[], number | undefined> {
    const points = Array.from({ length: counts[stage] }, (_, k) =>
      from.map((option, at) => (at === stage ? k : option)),
    );
    for (const point of points) {
      if (!costs.has(String(point))) costs.set(String(point), (yield point) ?? Number.POSITIVE_INFINITY);
    }
    open[stage] = open[stage].filter((one) => one !== from);
    if (stage + 1 < counts.length) open[stage + 1].push(...points);
    const least = costOf(cheapest(points) ?? from);
    if (Number.isFinite(costOf(from))) gains[stage] = Math.max(gains[stage], 1 - least / costOf(from));
    return points;
  }
  /** The least cost that a point may come to once the stages from this one on are looked at. */
  const reach = (point: Point, stage: number) =>
    counts.reduce((cost, _, at) => (at < stage ? cost : cost * (1 - allowance(at))), costOf(point));
  let way = yield* opened(start, 0);
  gains[0] = 0;
  for (let stage = 1; stage < counts.length; stage++) {
    const best = cheapest(way);
    if (!best || !Number.isFinite(costOf(best))) break;
    way = yield* opened(best, stage);
  }
  for (;;) {
    const least = Math.min(...costs.values());
    const waiting = open
      .flatMap((points, stage) => points.map((point) => ({ point, stage, reach: reach(point, stage) })))
      .filter((one) => one.reach < least);
    const [next] = waiting.sort((a, b) => a.reach - b.reach);
    if (!next) break;
    yield* opened(next.point, next.stage);
  }
  return {
    looked: costs.size,
    of: counts.reduce((product, count) => product * count, 1),
    gains: gains.slice(1),
    allowances: counts.slice(1).map((_, at) => allowance(at + 1)),
  };
}
