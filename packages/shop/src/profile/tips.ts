import type { PlacedCutter } from "@bitwright/engine";
import type { PagePoint } from "../svg/index.ts";
import type { Tip } from "./number-places.ts";
import type { PassingPlane, PlaneLine } from "./passing-plane.ts";

/** Each cutter's farthest point out of the bit, from the axis outward and then up the gauge. */
export function tipsOf(
  cutters: readonly PlacedCutter[],
  plane: PassingPlane,
  toPage: (radius: number, height: number) => PagePoint,
): Tip[] {
  return cutters
    .map((cutter, k) => {
      const { radius, height } = tipOf(cutter, plane.outlines[k]);
      const out: PagePoint = [Math.sin(cutter.profileAngle), Math.cos(cutter.profileAngle)];
      return { cutter: k, at: toPage(radius, height), out };
    })
    .sort((a, b) => (Math.abs(a.at[0] - b.at[0]) > 0.1 ? a.at[0] - b.at[0] : b.at[1] - a.at[1]));
}

function tipOf({ profileAngle }: PlacedCutter, { radius, height }: PlaneLine): { radius: number; height: number } {
  let best = 0;
  const reach = (k: number) => radius[k] * Math.sin(profileAngle) + height[k] * Math.cos(profileAngle);
  radius.forEach((_, k) => {
    if (reach(k) > reach(best)) best = k;
  });
  return { radius: radius[best], height: height[best] };
}

/** The line through the tips. */
export function tipLine(cutters: readonly PlacedCutter[], plane: PassingPlane, tips: readonly Tip[]): PlaneLine {
  const points = tips.map(({ cutter }) => tipOf(cutters[cutter], plane.outlines[cutter]));
  return { radius: points.map(({ radius }) => radius), height: points.map(({ height }) => height) };
}
