import type { Cylinder } from "../geometry/index.ts";
import { requireBetween } from "../quantity/index.ts";
import { type BitSpec, ORDINARY_GAUGE_ANGLE, ORDINARY_OVERLAP } from "./bit-spec.ts";
import { cuttingTip, faceAcrossAxis, faceAtGauge, faceWithTipAt } from "./face-on-profile.ts";
import type { CutterPose } from "./placed-cutter.ts";
import { cutterCylinder, LEAST_POCKET_WALL, POCKET_CLEARANCE, pocketWall } from "./pocket-wall.ts";
import { type BitProfile, bitProfile } from "./profile.ts";
import { profileAtArc, profileAtRadius } from "./profile-place.ts";
import type { ProfileZone } from "./profile-zone.ts";
import { CENTRE_SIDE_RAKE, rakesAt } from "./rake-schedule.ts";
import { ORDINARY_SWEEP, sweptAzimuth, type WingPlan, wingAngles } from "./wing-plan.ts";

/** What a cutter is there for: it reaches the bit axis, cuts the face, or cuts the hole wall to diameter. */
export type CutterRole = "centre" | "face" | "gauge";

/** A cutter in its place, before it has a number. */
export interface Slot {
  /** Wing that carries it, from 0 [-]. */
  readonly wing: number;
  readonly role: CutterRole;
  readonly zone: ProfileZone;
  readonly pose: CutterPose;
  /** Length along the profile of the tip [m]. */
  readonly arc: number;
  /** The space the cutter fills. */
  readonly cylinder: Cylinder;
}

/** Room kept over the least wall, so that rounding never undercuts it [m]. */
const WALL_MARGIN = 2e-6;

/** A specification made ready: defaults filled in, and each kind of place as a function of where it is wanted. */
export interface LayoutSetting {
  readonly profile: BitProfile;
  readonly plan: WingPlan;
  /** Wall asked for [m]. */
  readonly wall: number;
  /** By how much a pocket is wider than its cutter [m]. */
  readonly clearance: number;
  /** Widest gap between stations that keeps the overlap asked for [m]. */
  readonly widestGap: number;
  /** Azimuths of the wings at the bit axis [rad]. */
  readonly angles: readonly number[];
  readonly centre: (wing: number) => Slot;
  readonly onFace: (wing: number, arc: number) => Slot;
  readonly atGauge: (wing: number) => Slot;
  /** Azimuth of a place on a wing [rad]. */
  readonly azimuth: (wing: number, radius: number) => number;
  /** Wall between two places [m]; beyond the wall asked for only that it is more. */
  readonly wallBetween: (a: Slot, b: Slot) => number;
}

/**
 * Makes a specification ready for laying out.
 *
 * @throws RangeError when a size is none, or the plan of the wings does not agree with itself
 * @source (d) geometry of the pose; defaults are common practice
 */
export function layoutSetting(spec: BitSpec): LayoutSetting {
  const { holeDiameter, cutter, rakes, wings, material } = spec;
  const { faceDiameter } = cutter;
  const overlap = spec.overlap ?? ORDINARY_OVERLAP;
  const gaugeAngle = spec.gaugeAngle ?? ORDINARY_GAUGE_ANGLE;
  if (!(faceDiameter > 0 && faceDiameter <= holeDiameter / 2)) {
    throw new RangeError(`faceDiameter must be at most the hole radius ${holeDiameter / 2}, got ${faceDiameter}`);
  }
  requireBetween("overlap", overlap, 0, 0.9);
  requireBetween("gaugeAngle", gaugeAngle, 0, Math.PI / 2);
  const profile = bitProfile({ ...spec.profile, holeDiameter, leastCorner: faceDiameter / 2 });
  const holeRadius = holeDiameter / 2;
  const angles = wingAngles(wings);
  const sweep = wings.sweep ?? ORDINARY_SWEEP;
  const clearance = spec.clearance ?? POCKET_CLEARANCE;
  const wall = (spec.leastWall ?? LEAST_POCKET_WALL[material]) + WALL_MARGIN;
  const azimuth = (wing: number, radius: number) =>
    sweptAzimuth({ wingAngle: angles[wing] ?? 0, sweep, radiusShare: radius / holeRadius });
  const arcOf = (pose: CutterPose) =>
    profileAtRadius(profile, Math.min(cuttingTip(pose).radius, profile.holeRadius)).arc;
  const slot = (wing: number, role: CutterRole, zone: ProfileZone, unturned: CutterPose, arc: number): Slot => {
    const pose = { ...unturned, azimuth: azimuth(wing, unturned.radius) };
    return { wing, role, zone, pose, arc, cylinder: cutterCylinder({ ...pose, length: cutter.length }) };
  };
  const centreRakes = rakesAt(rakes, { zone: "centre", radiusShare: 0 });
  // Places differ from wing to wing by their azimuth alone: each is found once.
  const centrePose = faceAcrossAxis({
    profile,
    azimuth: 0,
    tilt: { ...centreRakes, sideRake: Math.max(centreRakes.sideRake, CENTRE_SIDE_RAKE), faceDiameter },
  });
  const centreZone = profileAtRadius(profile, cuttingTip(centrePose).radius).zone;
  const gaugePose = faceAtGauge({
    profile,
    azimuth: 0,
    tilt: { ...rakesAt(rakes, { zone: "gauge", radiusShare: 1 }), profileAngle: gaugeAngle, faceDiameter },
  });
  const facePose = (arc: number) => {
    const { radius, height, angle, zone } = profileAtArc(profile, arc);
    const tilt = { ...rakesAt(rakes, { zone, radiusShare: radius / holeRadius }), profileAngle: angle, faceDiameter };
    return { zone, pose: faceWithTipAt({ tip: { radius, height }, azimuth: 0, tilt }) };
  };
  return {
    profile,
    plan: wings,
    wall,
    clearance,
    widestGap: (1 - overlap) * faceDiameter,
    angles,
    azimuth,
    centre: (wing) => slot(wing, "centre", centreZone, centrePose, arcOf(centrePose)),
    atGauge: (wing) => slot(wing, "gauge", "gauge", gaugePose, arcOf(gaugePose)),
    onFace: (wing, arc) => {
      const { zone, pose } = facePose(arc);
      return slot(wing, "face", zone, pose, arc);
    },
    wallBetween: (a, b) => pocketWall({ first: a.cylinder, second: b.cylinder, clearance, enough: wall }),
  };
}

/** The first and last station of the face: the centre cutter, and the one that still keeps its wall to the gauge cutter. */
export function faceEnds(setting: LayoutSetting): { readonly first: number; readonly last: number } {
  const first = setting.centre(0).arc;
  const gauge = setting.atGauge(0);
  const limit = gauge.arc;
  const spare = (arc: number) =>
    Math.min(setting.wall, setting.wallBetween(setting.onFace(0, arc), gauge)) - setting.wall;
  if (spare(first) < 0 || limit <= first) return { first, last: first };
  // The wall falls steadily as the station nears the gauge cutter; at the limit the two stand in one place.
  let [low, high] = [first, limit];
  while (high - low > 1e-7) {
    const middle = (low + high) / 2;
    if (spare(middle) < 0) high = middle;
    else low = middle;
  }
  return { first, last: low };
}

/** Length along the profile of the station whose face centre stands at a radius [m]. */
export function arcOfCentre(setting: LayoutSetting, radius: number): number {
  // The radius grows along the profile, with a jump where the rakes change from zone to zone: halve without a residual.
  let [low, high] = [0, setting.profile.gaugeStart];
  while (high - low > 1e-8) {
    const arc = (low + high) / 2;
    if (setting.onFace(0, arc).pose.radius < radius) low = arc;
    else high = arc;
  }
  return (low + high) / 2;
}
