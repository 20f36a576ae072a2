import type { PagePoint } from "../svg/index.ts";
import type { SeenCutter } from "./seen-cutter.ts";

/** The point of a cutter a leader should end on: the middle of its face, or what shows of it past nearer cutters. */
export function visibleAnchor(
  cutter: SeenCutter,
  nearer: readonly SeenCutter[],
  hole: { readonly middle: PagePoint; readonly radius: number },
): PagePoint {
  const { at, points } = cutter;
  const away = (point: PagePoint) => Math.hypot(point[0] - at[0], point[1] - at[1]);
  const shows = ([x, y]: PagePoint) =>
    Math.hypot(x - hole.middle[0], y - hole.middle[1]) < hole.radius - 0.6 &&
    nearer.every(({ outline }) => !holds(outline, [x, y]));
  return [at, ...[...points].sort((a, b) => away(a) - away(b))].find(shows) ?? at;
}

/** Whether a closed outline holds a point (a ray to the right crosses it an odd number of times). */
function holds(outline: readonly PagePoint[], [x, y]: PagePoint): boolean {
  let inside = false;
  outline.forEach(([x1, y1], k) => {
    const [x0, y0] = outline[(k + outline.length - 1) % outline.length];
    if (y1 > y !== y0 > y && x < x1 + ((y - y1) / (y0 - y1)) * (x0 - x1)) inside = !inside;
  });
  return inside;
}
