import { dot } from "../geometry/index.ts";
import { bracketedRoot, requirePositive } from "../quantity/index.ts";
import { cutterFrame, edgePoint } from "./cutter-frame.ts";
import type { CutterPose } from "./placed-cutter.ts";
import type { BitProfile } from "./profile.ts";
import type { ProfilePlace } from "./profile-piece.ts";
import { profileAtRadius } from "./profile-place.ts";
import { sweptInterval } from "./swept-interval.ts";

/** How a face is turned, and its size: a pose without its place. */
export type FaceTilt = Pick<CutterPose, "profileAngle" | "backRake" | "sideRake" | "faceDiameter">;

/** What the tip of a face reaches from its centre: outward, ahead and down-hole, in the frame of the face. */
function tipReach(tilt: FaceTilt): { readonly out: number; readonly ahead: number; readonly down: number } {
  const { outward, travel, faceDown } = cutterFrame({ ...tilt, radius: 0, azimuth: 0, height: 0 });
  const reach = tilt.faceDiameter / 2;
  return { out: reach * dot(faceDown, outward), ahead: reach * dot(faceDown, travel), down: reach * faceDown[2] };
}

/**
 * The cutting tip of a face, where it reaches farthest along the profile normal, as radius and height.
 *
 * @source (d) geometry of the pose
 */
export function cuttingTip(pose: CutterPose): Pick<ProfilePlace, "radius" | "height"> {
  const [x, y, z] = edgePoint(cutterFrame(pose), pose.faceDiameter, Math.PI / 2);
  return { radius: Math.hypot(x, y), height: z };
}

/**
 * The face whose cutting tip lies at a place: its centre half a diameter behind the tip, along the face.
 *
 * The tip passes ahead of or behind the plane of the centre, so the centre stands at r = √(ρ² - a²) - o, with ρ the
 * radius of the tip, a and o what it reaches ahead and outward; height z = ζ - what it reaches down. A tip nearer the axis
 * than it reaches ahead cannot be had: the centre is then put where the tip comes nearest.
 *
 * @throws RangeError when the face has no size
 * @source (d) geometry of the pose
 */
export function faceWithTipAt({
  tip,
  azimuth,
  tilt,
}: {
  readonly tip: Pick<ProfilePlace, "radius" | "height">;
  /** Azimuth of the face centre [rad]. */
  readonly azimuth: number;
  readonly tilt: FaceTilt;
}): CutterPose {
  requirePositive({ faceDiameter: tilt.faceDiameter });
  const { out, ahead, down } = tipReach(tilt);
  const radius = Math.max(0, Math.sqrt(Math.max(0, tip.radius ** 2 - ahead ** 2)) - out);
  return { ...tilt, radius, azimuth, height: tip.height - down };
}

/**
 * The face whose edge crosses the bit axis, its tip on the profile: the centre cutter, which leaves no core.
 *
 * An edge crosses the axis at the φ where its reach ahead is nil, tan φ = -u_t/v_t; the centre then stands at
 * r = -(D/2)(cos φ u_r + sin φ v_r). With more side rake the crossing lies lower on the face, down to the tip itself;
 * without any it lies level with the centre. Side rake turned inward would put it above the centre.
 *
 * @throws RangeError when the face has no size
 * @source (d) geometry of the pose
 */
export function faceAcrossAxis({
  profile,
  azimuth,
  tilt,
}: {
  readonly profile: BitProfile;
  /** Azimuth of the face centre [rad]. */
  readonly azimuth: number;
  readonly tilt: Omit<FaceTilt, "profileAngle">;
}): CutterPose {
  requirePositive({ faceDiameter: tilt.faceDiameter });
  let place = profileAtRadius(profile, 0);
  let pose = onAxis();
  // The profile angle at the tip and the radius of the centre depend on each other; in a straight cone at once settled.
  for (let n = 0; n < 20; n++) {
    const next = profileAtRadius(profile, cuttingTip(pose).radius);
    const settled = Math.abs(next.angle - place.angle) < 1e-12;
    place = next;
    pose = onAxis();
    if (settled) break;
  }
  return pose;

  function onAxis(): CutterPose {
    const turned = { ...tilt, profileAngle: place.angle };
    const { outward, travel, faceAcross, faceDown } = cutterFrame({ ...turned, radius: 0, azimuth: 0, height: 0 });
    const phi = Math.atan2(-dot(faceAcross, travel), dot(faceDown, travel));
    const reach = Math.cos(phi) * dot(faceAcross, outward) + Math.sin(phi) * dot(faceDown, outward);
    // φ and φ + π cross on either side; the centre stands where the radius comes out positive.
    const radius = (tilt.faceDiameter / 2) * Math.abs(reach);
    return { ...turned, radius, azimuth, height: place.height - tipReach(turned).down };
  }
}

/**
 * The face whose outermost edge sweeps exactly the hole radius, its tip on the profile: a gauge cutter. The reach is
 * taken in space, so tilt and turn are allowed for; found to 1e-9 m.
 *
 * @throws RangeError when the face has no size or is wider than the hole
 * @source (d) geometry of the pose
 */
export function faceAtGauge({
  profile,
  azimuth,
  tilt,
}: {
  readonly profile: BitProfile;
  /** Azimuth of the face centre [rad]. */
  readonly azimuth: number;
  readonly tilt: FaceTilt;
}): CutterPose {
  const { faceDiameter } = tilt;
  requirePositive({ faceDiameter });
  const { holeRadius } = profile;
  const radius = bracketedRoot({
    f: (at) => sweptInterval({ ...tilt, radius: at, azimuth: 0, height: 0 }).to - holeRadius,
    low: Math.max(0, holeRadius - faceDiameter),
    high: holeRadius,
    residual: 1e-10,
  });
  const bare = { ...tilt, radius, azimuth, height: 0 };
  const place = profileAtRadius(profile, Math.min(holeRadius, cuttingTip(bare).radius));
  return { ...bare, height: place.height - tipReach(tilt).down };
}
