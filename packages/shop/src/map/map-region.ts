import type { LimitLine, RateLimitName, RunningMap } from "@bitwright/engine";

/** A point of the map: speed and weight, each in SI. */
export interface MapPoint {
  /** Rotary speed [rad/s]. */
  readonly speed: number;
  /** Weight on bit [N]. */
  readonly weight: number;
}

/** A stretch of the upper edge of the region along which one limit binds. */
interface BindingStretch {
  readonly limit: RateLimitName;
  readonly points: readonly MapPoint[];
}

/** The region inside all limits: the speeds it spans and its upper edge, limit by limit. */
export interface InsideRegion {
  /** Slowest speed [rad/s]. */
  readonly from: number;
  /** Fastest speed [rad/s]. */
  readonly to: number;
  readonly edge: readonly BindingStretch[];
}

/** The regions inside all limits, one for each run of speeds that the rotary turns and none has to keep out of. */
export function insideRegions(map: RunningMap): InsideRegion[] {
  return allowedSpans(map).map(({ from, to }) => ({ from, to, edge: edgeOver(map, from, to) }));
}

/** Speeds that the rotary turns outside of those to keep out of. */
function allowedSpans({ rotary, avoid, rotarySpeeds }: RunningMap): { from: number; to: number }[] {
  const first = Math.max(rotary.slowest, rotarySpeeds[0]);
  const last = Math.min(rotary.fastest, rotarySpeeds[rotarySpeeds.length - 1]);
  let spans = [{ from: first, to: last }];
  for (const window of avoid) {
    spans = spans.flatMap(({ from, to }) => [
      { from, to: Math.min(to, window.from) },
      { from: Math.max(from, window.to), to },
    ]);
  }
  return spans.filter(({ from, to }) => to > from);
}

function edgeOver(map: RunningMap, from: number, to: number): BindingStretch[] {
  const between = map.rotarySpeeds.filter((speed) => speed > from && speed < to);
  const speeds = [from, ...between, to].flatMap((speed, k, all) =>
    k === 0 ? [speed] : [...crossings(map.lines, all[k - 1], speed), speed],
  );
  const stretches: { limit: RateLimitName; points: MapPoint[] }[] = [];
  for (let k = 1; k < speeds.length; k++) {
    const middle = (speeds[k - 1] + speeds[k]) / 2;
    const line = lowest(map.lines, middle);
    if (!line) continue;
    const [start, end] = [speeds[k - 1], speeds[k]].map((speed) => ({
      speed,
      weight: weightOn(line, speed) ?? map.mostWeight,
    }));
    const last = stretches.at(-1);
    if (last?.limit === line.limit) last.points.push(end);
    else stretches.push({ limit: line.limit, points: [start, end] });
  }
  return stretches;
}

function lowest(lines: readonly LimitLine[], speed: number): LimitLine | undefined {
  let least = Number.POSITIVE_INFINITY;
  let found: LimitLine | undefined;
  for (const line of lines) {
    const weight = weightOn(line, speed);
    if (weight !== undefined && weight < least) {
      least = weight;
      found = line;
    }
  }
  return found;
}

/** The weight of a line at a speed, straight between its points; absent outside of them. */
export function weightOn({ points }: Pick<LimitLine, "points">, speed: number): number | undefined {
  const after = points.findIndex((point) => point.rotarySpeed >= speed);
  if (after < 0) return undefined;
  if (points[after].rotarySpeed === speed) return points[after].weight;
  if (after === 0) return undefined;
  const [a, b] = [points[after - 1], points[after]];
  return a.weight + ((speed - a.rotarySpeed) / (b.rotarySpeed - a.rotarySpeed)) * (b.weight - a.weight);
}

/** Speeds strictly between two where two lines cross. */
function crossings(lines: readonly LimitLine[], from: number, to: number): number[] {
  const found: number[] = [];
  lines.forEach((one, k) => {
    for (const other of lines.slice(k + 1)) {
      const [a, b, c, d] = [weightOn(one, from), weightOn(one, to), weightOn(other, from), weightOn(other, to)];
      if (a === undefined || b === undefined || c === undefined || d === undefined) continue;
      const [before, after] = [a - c, b - d];
      if (before * after < 0) found.push(from + (before / (before - after)) * (to - from));
    }
  });
  return found.sort((a, b) => a - b);
}
