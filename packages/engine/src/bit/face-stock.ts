import type { Cylinder, Interval } from "../geometry/index.ts";
import type { BitSpec } from "./bit-spec.ts";
import { cuttingTip } from "./face-on-profile.ts";
import { type CutterRole, type LayoutSetting, layoutSetting, type Slot } from "./layout-setting.ts";
import type { CutterPose } from "./placed-cutter.ts";
import type { BitProfile } from "./profile.ts";
import { profileAtArc } from "./profile-place.ts";
import type { ProfileZone } from "./profile-zone.ts";
import { shiftedRakes } from "./rake-shifts.ts";
import { sweptInterval } from "./swept-interval.ts";

/** A face on its station, carried by a wing without sweep at azimuth zero: whatever turning the wing leaves as it is. */
export interface StationedFace {
  readonly role: CutterRole;
  readonly zone: ProfileZone;
  readonly pose: CutterPose;
  /** Length along the profile of the tip [m]. */
  readonly arc: number;
  /** Radius of the cutting tip [m]. */
  readonly tipRadius: number;
  /** The space the cutter fills. */
  readonly cylinder: Cylinder;
  /** Radii the face sweeps. */
  readonly swept: Interval;
}

/** Faces of one specification by station: each is worked out once, however many layouts it stands in. */
export interface FaceStock {
  readonly profile: BitProfile;
  /** Wall asked for between two pockets, with a hair of margin [m]. */
  readonly wall: number;
  /** By how much a pocket is wider than its cutter [m]. */
  readonly clearance: number;
  /** Zone of the profile at a length along it. */
  readonly zoneAt: (arc: number) => ProfileZone;
  /** A face cutter with its tip at a length along the profile, its back rake shifted. */
  readonly onFace: (arc: number, rakeShift: number) => StationedFace;
  /** The cutter that reaches the bit axis, its rakes as scheduled. */
  readonly atCentre: () => StationedFace;
  /** The cutter that holds the diameter, its back rake shifted. */
  readonly atGauge: (rakeShift: number) => StationedFace;
}

/** Length along the profile that stands for the centre and the gauge cutter, whose places follow from the rest. */
const CENTRE = -1;
const GAUGE = -2;

/**
 * The faces of a specification, worked out as they are asked for and kept.
 *
 * @throws RangeError when a size of the specification is none
 * @source (d) geometry of the pose; a wing turns its faces about the bit axis and changes nothing else of them
 */
export function faceStock(spec: BitSpec): FaceStock {
  const settings = new Map<number, LayoutSetting>();
  const kept = new Map<number, Map<number, StationedFace>>();
  const zones = new Map<number, ProfileZone>();
  const settingOf = (shift: number): LayoutSetting => {
    const known = settings.get(shift);
    if (known) return known;
    const wings = { wings: 1, angles: [0], sweep: 0 };
    const made = layoutSetting({ ...spec, wings, rakes: shiftedRakes(spec.rakes, shift) });
    settings.set(shift, made);
    return made;
  };
  const keptAt = (key: number, shift: number, slot: (setting: LayoutSetting) => Slot): StationedFace => {
    let row = kept.get(shift);
    if (!row) {
      row = new Map();
      kept.set(shift, row);
    }
    const known = row.get(key);
    if (known) return known;
    const made = stationed(slot(settingOf(shift)));
    row.set(key, made);
    return made;
  };
  const { profile, wall, clearance } = settingOf(0);
  return {
    profile,
    wall,
    clearance,
    zoneAt: (arc) => {
      const known = zones.get(arc) ?? profileAtArc(profile, arc).zone;
      zones.set(arc, known);
      return known;
    },
    onFace: (arc, rakeShift) => keptAt(arc, rakeShift, (setting) => setting.onFace(0, arc)),
    atCentre: () => keptAt(CENTRE, 0, (setting) => setting.centre(0)),
    atGauge: (rakeShift) => keptAt(GAUGE, rakeShift, (setting) => setting.atGauge(0)),
  };
}

function stationed({ role, zone, pose, arc, cylinder }: Slot): StationedFace {
  return { role, zone, pose, arc, cylinder, tipRadius: cuttingTip(pose).radius, swept: sweptInterval(pose) };
}
