/** A point of the line through the cutters, seen in the half-plane through the bit axis. */
export interface TrackPoint {
  /** Distance from the bit axis [m]. */
  readonly radius: number;
  /** Height along the bit axis, positive down-hole [m]. */
  readonly height: number;
}

/** Points nearer than this in both directions stand on one track [m]: (c) no source, about what a shop measures to. */
const ONE_TRACK = 5e-4;
/** An end turns at most this much from its chord [rad]: (c) no source, so that one bad height does no harm. */
const MOST_TURN_AT_END = Math.PI / 6;

interface Track extends TrackPoint {
  /** Points on it [-]. */
  readonly points: number;
}

/** Tracks from the axis outward; those at one radius from the deepest up, as they follow each other along the gauge. */
function tracksOf(points: readonly TrackPoint[]): Track[] {
  const tracks: Track[] = [];
  for (const { radius, height } of [...points].sort((a, b) => a.radius - b.radius || b.height - a.height)) {
    const at = tracks.findIndex(
      (track) => Math.abs(track.radius - radius) <= ONE_TRACK && Math.abs(track.height - height) <= ONE_TRACK,
    );
    const found = tracks[at];
    if (!found) tracks.push({ radius, height, points: 1 });
    else {
      const points = found.points + 1;
      const mean = (old: number, added: number) => old + (added - old) / points;
      tracks[at] = { radius: mean(found.radius, radius), height: mean(found.height, height), points };
    }
  }
  return tracks.sort((a, b) =>
    Math.abs(a.radius - b.radius) <= ONE_TRACK ? b.height - a.height : a.radius - b.radius,
  );
}

/**
 * Profile angles of cutters from where they stand to one another: the direction of the line through the tracks.
 *
 * On a track with a neighbour on either side it is that of the circle through the three, α = (α₁ l₂ + α₂ l₁)/(l₁ + l₂) with
 * α, l angle and length of the two chords; at either end the circle is carried on by half the turn of its chord. The line
 * of the face centres runs as far inside the tips everywhere, so it has the same direction. On a
 * circle it is right to half a degree at the spacing of cutters. Heights that are off by a tenth of the spacing turn the angle by some six degrees.
 *
 * @throws RangeError when there is no point
 * @source (d) circle through three points
 */
export function estimatedProfileAngles(points: readonly TrackPoint[]): number[] {
  if (points.length === 0) throw new RangeError("points must be at least one, got 0");
  const tracks = tracksOf(points);
  const chords = tracks.slice(1).map((to, at) => {
    const from = tracks[at] ?? to;
    const [out, up] = [to.radius - from.radius, from.height - to.height];
    return { angle: Math.atan2(up, out), length: Math.hypot(out, up) };
  });
  const [only] = chords;
  if (!only) return points.map(() => 0);
  const inner = tracks.map((_, at) => {
    const [before, after] = [chords[at - 1], chords[at]];
    if (!before || !after) return (before ?? after ?? only).angle;
    return (before.angle * after.length + after.angle * before.length) / (before.length + after.length);
  });
  const carriedOn = (chord: number, next: number) =>
    chord + Math.min(MOST_TURN_AT_END, Math.max(-MOST_TURN_AT_END, chord - next));
  const last = tracks.length - 1;
  const angles = inner.map((angle, at) => {
    if (tracks.length < 3 || (at > 0 && at < last)) return angle;
    return carriedOn(angle, inner[at === 0 ? 1 : last - 1] ?? angle);
  });
  const held = angles.map((angle) => Math.min(Math.PI / 2, Math.max(-Math.PI / 3, angle)));
  return points.map((point) => {
    const away = tracks.map((track) => Math.hypot(track.radius - point.radius, track.height - point.height));
    return held[away.indexOf(Math.min(...away))] ?? 0;
  });
}
