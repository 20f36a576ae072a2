import { cutterFrame, type PlacedCutter } from "../bit/index.ts";

/** Points around one cutter's edge as they pass a fixed half-plane of the hole; the first point is repeated at the end. */
export interface EdgeSamples {
  /** Place along the radius through the face centre, from the bit axis [m]. */
  readonly x: Float64Array;
  /** Place along the travel of the face centre [m]. */
  readonly y: Float64Array;
  /** Distance from the bit axis [m]. */
  readonly radius: Float64Array;
  /** Azimuth ahead of the face centre; not a number until `turnOf` is asked for it [rad]. */
  readonly turn: Float64Array;
  /** Height along the bit axis, positive down-hole [m]. */
  readonly height: Float64Array;
  /** Height worn off at this point, along the face [m]. */
  readonly removed: Float64Array;
}

/**
 * How one cutter's edge is worn, point by point: the height gone along the face at even angles of its lower half, the
 * first at 0, the last at π (the middle one is the bottom of the face) [m]. The same array may grow as wear goes on.
 */
export type EdgeWear = Float64Array;

/** The unit circle in even steps, its first point repeated at the end. */
export interface CircleTable {
  /** Cosines [-]. */
  readonly cosine: Float64Array;
  /** Sines [-]. */
  readonly sine: Float64Array;
}

/**
 * Even points of the unit circle; one table serves every cutter sampled with the same number of points.
 *
 * @source (d) geometry
 */
export function circleTable(count: number): CircleTable {
  const cosine = new Float64Array(count + 1);
  const sine = new Float64Array(count + 1);
  for (let k = 0; k < count; k++) {
    const phi = (2 * Math.PI * k) / count;
    cosine[k] = Math.cos(phi);
    sine[k] = Math.sin(phi);
  }
  cosine[count] = cosine[0];
  sine[count] = sine[0];
  return { cosine, sine };
}

/**
 * Room for the samples of an edge, to be filled for one cutter after another.
 *
 * @source (d) bookkeeping, no relation
 */
export function emptyEdgeSamples({ cosine }: CircleTable): EdgeSamples {
  const row = () => new Float64Array(cosine.length);
  return { x: row(), y: row(), radius: row(), turn: row(), height: row(), removed: row() };
}

/**
 * The edge of one cutter, taken from its tilted face without flattening it: every point keeps its own radius, its own
 * azimuth and its own height. Worn points are brought back to the chord at D/2 - h_w below the face centre, or, where
 * `wear` is given in place of the worn height, each point by what it has lost itself.
 *
 * The frame is taken at azimuth zero, so that turning the bit changes no figure of the trace but the azimuth itself. The
 * azimuth of a point is left for `turnOf`: most points stand where the cutter cuts nothing, and an angle costs more than
 * all the rest of a point.
 *
 * @source (d) geometry of the pose as fixed in docs/nomenclature.md
 */
export function edgeSamples(
  cutter: PlacedCutter,
  circle: CircleTable,
  wear?: EdgeWear,
  into: EdgeSamples = emptyEdgeSamples(circle),
): EdgeSamples {
  const { centre, faceAcross, faceDown } = cutterFrame({ ...cutter, azimuth: 0 });
  // Taken out of their objects once: the loop runs for every point of every cutter of every candidate layout.
  const [centreX, , centreZ] = centre;
  const [acrossX, acrossY, acrossZ] = faceAcross;
  const [downX, downY, downZ] = faceDown;
  const { cosine, sine } = circle;
  const { x, y, radius, turn, height, removed } = into;
  const faceRadius = cutter.faceDiameter / 2;
  const lowest = faceRadius - cutter.wornHeight;
  const count = cosine.length;
  for (let k = 0; k < count; k++) {
    const across = faceRadius * cosine[k];
    const unworn = faceRadius * sine[k];
    const left = wear ? Math.abs(unworn) - wornAt(wear, k, count - 1) : lowest;
    const down = Math.min(unworn, left);
    const ahead = centreX + across * acrossX + down * downX;
    const along = across * acrossY + down * downY;
    x[k] = ahead;
    y[k] = along;
    radius[k] = Math.sqrt(ahead * ahead + along * along);
    height[k] = centreZ + across * acrossZ + down * downZ;
    removed[k] = unworn - down;
  }
  turn.fill(Number.NaN);
  return into;
}

/**
 * Azimuth of one sample ahead of the face centre.
 *
 * atan2(y, x), kept for the next time.
 *
 * @returns azimuth, -π to π [rad]
 * @source (d) geometry
 */
export function turnOf({ x, y, turn }: EdgeSamples, sample: number): number {
  const known = turn[sample];
  if (!Number.isNaN(known)) return known;
  const found = Math.atan2(y[sample], x[sample]);
  turn[sample] = found;
  return found;
}

/** Height gone at sample `k` of `count` around the circle; a point of the upper half goes with the one below it. */
function wornAt(wear: EdgeWear, k: number, count: number): number {
  const last = wear.length - 1;
  const around = (2 * k) / count;
  const place = last * (around > 1 ? 2 - around : around);
  const before = Math.min(last - 1, Math.floor(place));
  return wear[before] + (place - before) * (wear[before + 1] - wear[before]);
}
