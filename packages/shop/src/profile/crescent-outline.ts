import { type PagePoint, thinned } from "../svg/index.ts";
import type { Crescent } from "./passing-plane.ts";

/** Points left out of a crescent's rim lie within this of the line that is drawn [mm on paper]. */
const SLACK = 0.002;

/**
 * The closed outline of a crescent. It reaches half a cell past its first and last radius, so that its area on paper is
 * that of the cut: the sum of depth times cell width.
 */
export function crescentOutline(
  { radius, lower, upper }: Crescent,
  cellWidth: number,
  toPage: (radius: number, height: number) => PagePoint,
): PagePoint[] {
  const rim = (heights: readonly number[]): PagePoint[] => {
    const last = radius.length - 1;
    const points = radius.map((at, k) => toPage(at, heights[k]));
    const first = toPage(radius[0] - cellWidth / 2, heights[0]);
    return thinned([first, ...points, toPage(radius[last] + cellWidth / 2, heights[last])], SLACK);
  };
  return [...rim(lower), ...rim(upper).reverse()];
}
