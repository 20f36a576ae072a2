import { requireBetween } from "../quantity/index.ts";
import type { BitProfile } from "./profile.ts";
import { alongPiece, type ProfilePiece, type ProfilePlace } from "./profile-piece.ts";
import { type ProfileZone, profileZone } from "./profile-zone.ts";

/** A place on the profile, how far along it lies and the zone it belongs to. */
export interface ProfilePoint extends ProfilePlace {
  /** Length along the profile from the bit axis [m]. */
  readonly arc: number;
  readonly zone: ProfileZone;
}

function pointOn(profile: BitProfile, piece: ProfilePiece, start: number, run: number): ProfilePoint {
  const place = alongPiece(piece, run);
  const straight = piece.startAngle === piece.endAngle;
  const arc = start + run;
  return { ...place, arc, zone: profileZone({ angle: place.angle, straight, atWall: arc >= profile.gaugeStart }) };
}

/**
 * The place at a length along the profile, from the bit axis outward and up the gauge.
 *
 * @throws RangeError when the length lies beyond the profile
 * @source (d) geometry of straight lines and arcs
 */
export function profileAtArc(profile: BitProfile, arc: number): ProfilePoint {
  const whole = profile.pieces.reduce((sum, piece) => sum + piece.length, 0);
  requireBetween("arc", arc, 0, whole * (1 + 1e-12));
  let start = 0;
  for (const [at, piece] of profile.pieces.entries()) {
    if (arc <= start + piece.length || at === profile.pieces.length - 1) {
      return pointOn(profile, piece, start, Math.min(arc - start, piece.length));
    }
    start += piece.length;
  }
  throw new RangeError("a profile needs a piece, got none");
}

/**
 * The place at a distance from the bit axis; at the hole radius, where the gauge starts.
 *
 * @throws RangeError when the radius lies outside 0 to the hole radius
 * @source (d) geometry of straight lines and arcs
 */
export function profileAtRadius(profile: BitProfile, radius: number): ProfilePoint {
  requireBetween("radius", radius, 0, profile.holeRadius * (1 + 1e-12));
  let start = 0;
  for (const piece of profile.pieces) {
    const end = alongPiece(piece, piece.length).radius;
    if (radius <= end || start + piece.length >= profile.gaugeStart * (1 - 1e-12)) {
      return pointOn(profile, piece, start, Math.min(piece.length, Math.max(0, runAtRadius(piece, radius))));
    }
    start += piece.length;
  }
  throw new RangeError("a profile needs a piece, got none");
}

function runAtRadius({ radius: from, startAngle, endAngle, length }: ProfilePiece, radius: number): number {
  if (startAngle === endAngle) return (radius - from) / Math.cos(startAngle);
  const curve = length / (endAngle - startAngle);
  const sine = Math.sin(startAngle) + (radius - from) / curve;
  return curve * (Math.asin(Math.min(1, Math.max(-1, sine))) - startAngle);
}
