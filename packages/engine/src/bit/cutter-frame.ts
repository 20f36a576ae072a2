import { cross, dot, minus, plus, times, unit, type Vector } from "../geometry/index.ts";
import type { CutterPose } from "./placed-cutter.ts";

/** The directions of one cutter in the bit frame; all of length one but `centre`. */
export interface CutterFrame {
  /** Face centre [m]. */
  readonly centre: Vector;
  /** Outward from the bit axis. */
  readonly outward: Vector;
  /** Direction of travel. */
  readonly travel: Vector;
  /** Profile normal, into the rock (e_n). */
  readonly profileNormal: Vector;
  /** Along the profile, outward (e_p). */
  readonly alongProfile: Vector;
  /** Normal of the diamond face, pointing ahead of the cutter (n). */
  readonly faceNormal: Vector;
  /** In the face, toward the rock (v). */
  readonly faceDown: Vector;
  /** In the face, across (u = v × n). */
  readonly faceAcross: Vector;
}

/**
 * The frame of a cutter from its pose.
 *
 * With e_n = sin α e_r + cos α e_z and e_p = cos α e_r - sin α e_z, the face normal is
 * n = cos β (cos σ e_t + sin σ e_p) + sin β e_n; v is e_n without its part along n, normalised; u = v × n.
 *
 * @source (d) geometry of the pose as fixed in docs/nomenclature.md
 */
export function cutterFrame(pose: CutterPose): CutterFrame {
  const { radius, azimuth, height, profileAngle, backRake, sideRake } = pose;
  const outward: Vector = [Math.cos(azimuth), Math.sin(azimuth), 0];
  const travel: Vector = [-Math.sin(azimuth), Math.cos(azimuth), 0];
  const down: Vector = [0, 0, 1];
  const profileNormal = plus(times(Math.sin(profileAngle), outward), times(Math.cos(profileAngle), down));
  const alongProfile = minus(times(Math.cos(profileAngle), outward), times(Math.sin(profileAngle), down));
  const level = plus(times(Math.cos(sideRake), travel), times(Math.sin(sideRake), alongProfile));
  const faceNormal = plus(times(Math.cos(backRake), level), times(Math.sin(backRake), profileNormal));
  const faceDown = unit(minus(profileNormal, times(dot(profileNormal, faceNormal), faceNormal)));
  return {
    centre: plus(times(radius, outward), times(height, down)),
    outward,
    travel,
    profileNormal,
    alongProfile,
    faceNormal,
    faceDown,
    faceAcross: cross(faceDown, faceNormal),
  };
}

/**
 * The point of a face's edge at angle `phi` [rad]: c + (D/2)(cos φ u + sin φ v), in the bit frame [m].
 *
 * @source (d) geometry of a disc
 */
export function edgePoint(frame: CutterFrame, faceDiameter: number, phi: number): Vector {
  const reach = plus(times(Math.cos(phi), frame.faceAcross), times(Math.sin(phi), frame.faceDown));
  return plus(frame.centre, times(faceDiameter / 2, reach));
}
