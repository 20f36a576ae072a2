import type { BitSpec } from "./bit-spec.ts";
import { bitOfSlots, type GeneratedBit, layoutOfSlots } from "./generated-bit.ts";
import { bestSlots } from "./layout-search.ts";
import { layoutSetting } from "./layout-setting.ts";
import type { BitLayout } from "./placed-cutter.ts";

/** Rates a layout, the less the better: what is judged is for the caller to say, as the bit room knows no forces. */
export type LayoutJudge = (layout: BitLayout) => number;

/**
 * Lays out a bit: the same specification always gives the same bit.
 *
 * One cutter reaches across the bit axis; one on each wing cuts the hole wall, its outermost edge at the hole radius; the
 * others stand in between, closer together outward, the wings taking turns, so that each covers the gaps of another. Where
 * the outermost face cutters cannot reach over to the gauge cutters without thinning the wall between pockets, one wing
 * carries a cutter over that gap in place of its gauge cutter. Of the orders in which wings can take turns, the steadiest
 * that keeps every wall is taken; with a judge, the one it rates best. All tips lie on the profile; wings trail outward by
 * their sweep.
 *
 * @throws RangeError when a size is none, or the plan of the wings does not agree with itself
 * @source (d) geometry; choices of the trade are common practice
 */
export function generateLayout(spec: BitSpec, judge?: LayoutJudge): GeneratedBit {
  const setting = layoutSetting(spec);
  const slots = bestSlots(setting, judge && ((of) => judge(layoutOfSlots(spec, of))));
  return bitOfSlots(spec, { slots, profile: setting.profile, wingAngles: setting.angles });
}
