import { svgNumber } from "./svg-number.ts";

/** A point on the page: x to the right, y down [mm]. */
export type PagePoint = readonly [x: number, y: number];

/** Two numbers of path data. */
export const pair = ([x, y]: PagePoint): string => `${svgNumber(x)} ${svgNumber(y)}`;

/** Path data of straight lines through the points; `closed` joins the last to the first. */
export function linePath(points: readonly PagePoint[], closed = false): string {
  if (points.length === 0) return "";
  return `M${points.map(pair).join("L")}${closed ? "Z" : ""}`;
}

/** Path data of a soft curve through the points (Catmull-Rom, the end tangents along the end pieces). */
export function softPath(points: readonly PagePoint[]): string {
  if (points.length < 3) return linePath(points);
  const pieces = points.slice(1).map((to, k) => {
    const from = points[k];
    const before = points[k - 1] ?? from;
    const after = points[k + 2] ?? to;
    const leave: PagePoint = [from[0] + (to[0] - before[0]) / 6, from[1] + (to[1] - before[1]) / 6];
    const arrive: PagePoint = [to[0] - (after[0] - from[0]) / 6, to[1] - (after[1] - from[1]) / 6];
    return `C${pair(leave)} ${pair(arrive)} ${pair(to)}`;
  });
  return `M${pair(points[0])}${pieces.join("")}`;
}
