import type { PagePoint } from "./path-data.ts";

/** The points of a line that matter: those left out lie within `slack` of the line that remains (Douglas-Peucker). */
export function thinned(points: readonly PagePoint[], slack: number): PagePoint[] {
  const last = points.length - 1;
  if (last < 2) return [...points];
  const keep = new Set([0, last]);
  const open: [number, number][] = [[0, last]];
  for (let span = open.pop(); span; span = open.pop()) {
    const [from, to] = span;
    let farthest = slack;
    let at = -1;
    for (let k = from + 1; k < to; k++) {
      const off = distanceToSegment(points[k], points[from], points[to]);
      if (off > farthest) {
        farthest = off;
        at = k;
      }
    }
    if (at < 0) continue;
    keep.add(at);
    open.push([from, at], [at, to]);
  }
  return points.filter((_, k) => keep.has(k));
}

function distanceToSegment(point: PagePoint, from: PagePoint, to: PagePoint): number {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const along = dx * dx + dy * dy;
  const share =
    along > 0 ? Math.min(1, Math.max(0, ((point[0] - from[0]) * dx + (point[1] - from[1]) * dy) / along)) : 0;
  return Math.hypot(point[0] - from[0] - share * dx, point[1] - from[1] - share * dy);
}
