import type { Finding } from "../quantity/index.ts";
import type { BitSpec } from "./bit-spec.ts";
import { cuttingTip } from "./face-on-profile.ts";
import { layoutRemarks } from "./layout-remarks.ts";
import { bestSlots } from "./layout-search.ts";
import { type CutterRole, layoutSetting, type Slot } from "./layout-setting.ts";
import { placedCutter } from "./new-cutter-on-bit.ts";
import type { BitLayout } from "./placed-cutter.ts";
import type { BitProfile } from "./profile.ts";
import type { ProfileZone } from "./profile-zone.ts";

/** Where a cutter stands, in the words of the shop. */
export interface CutterPlace {
  /** Number of the cutter, from 1 at the centre outward; the place in the layout plus one [-]. */
  readonly number: number;
  /** Number of the wing, from 1 [-]. */
  readonly wing: number;
  readonly role: CutterRole;
  readonly zone: ProfileZone;
  /** Radius of the cutting tip [m]. */
  readonly tipRadius: number;
  /** Height of the cutting tip, 0 at the nose of the profile, positive down-hole [m]. */
  readonly tipHeight: number;
}

/** Rates a layout, the less the better: what is judged is for the caller to say, as the bit room knows no forces. */
export type LayoutJudge = (layout: BitLayout) => number;

/** A bit laid out from a specification. */
export interface GeneratedBit {
  readonly layout: BitLayout;
  /** One for each cutter, in the order of the layout. */
  readonly places: readonly CutterPlace[];
  readonly profile: BitProfile;
  /** Azimuths of the wings at the bit axis, wing 1 first [rad]. */
  readonly wingAngles: readonly number[];
  readonly findings: readonly Finding[];
}

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
  const slots = bestSlots(setting, judge && ((of) => judge(layoutOf(spec, of))));
  const numbered = slots
    .map((slot) => ({ slot, tip: cuttingTip(slot.pose) }))
    .sort((a, b) => order(a.tip.radius, b.tip.radius) || a.slot.wing - b.slot.wing);
  return {
    layout: layoutOf(
      spec,
      numbered.map(({ slot }) => slot),
    ),
    places: numbered.map(({ slot, tip }, at) => ({
      number: at + 1,
      wing: slot.wing + 1,
      role: slot.role,
      zone: slot.zone,
      tipRadius: tip.radius,
      tipHeight: tip.height,
    })),
    profile: setting.profile,
    wingAngles: setting.angles,
    findings: [...setting.profile.findings, ...layoutRemarks(spec, slots)],
  };
}

function layoutOf({ holeDiameter, cutter }: BitSpec, slots: readonly Slot[]): BitLayout {
  return { holeDiameter, cutters: slots.map(({ pose, wing }) => placedCutter({ cutter, pose, wing: wing + 1 })) };
}

/** Radii nearer than a nanometre are one radius: rounding must not number the gauge cutters. */
function order(a: number, b: number): number {
  return Math.abs(a - b) < 1e-9 ? 0 : a - b;
}
