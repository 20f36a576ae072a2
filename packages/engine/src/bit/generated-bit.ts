import type { Finding } from "../quantity/index.ts";
import type { BitSpec } from "./bit-spec.ts";
import { cuttingTip } from "./face-on-profile.ts";
import { layoutRemarks } from "./layout-remarks.ts";
import type { CutterRole, Slot } from "./layout-setting.ts";
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

/** Radii nearer than this are one radius: rounding must not number the gauge cutters [m]. */
const ONE_RADIUS = 1e-9;

/**
 * A bit from the places of its cutters: numbered from the centre outward, at one radius wing by wing.
 *
 * @source (d) bookkeeping
 */
export function bitOfSlots(
  spec: BitSpec,
  { slots, profile, wingAngles }: Pick<GeneratedBit, "profile" | "wingAngles"> & { readonly slots: readonly Slot[] },
): GeneratedBit {
  const numbered = slots
    .map((slot) => ({ slot, tip: cuttingTip(slot.pose) }))
    .sort((a, b) => outward(a.tip.radius, b.tip.radius) || a.slot.wing - b.slot.wing);
  return {
    layout: layoutOfSlots(
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
    profile,
    wingAngles,
    findings: [...profile.findings, ...layoutRemarks(spec, slots)],
  };
}

/**
 * The cutters of slots as a layout, in the order given.
 *
 * @source (d) bookkeeping
 */
export function layoutOfSlots({ holeDiameter, cutter }: BitSpec, slots: readonly Slot[]): BitLayout {
  return { holeDiameter, cutters: slots.map(({ pose, wing }) => placedCutter({ cutter, pose, wing: wing + 1 })) };
}

function outward(a: number, b: number): number {
  return Math.abs(a - b) < ONE_RADIUS ? 0 : a - b;
}
