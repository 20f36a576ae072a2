import { cutterFrame, type PlacedCutter } from "../bit/index.ts";

/** Points around one cutter's edge as they pass a fixed half-plane of the hole; the first point is repeated at the end. */
export interface EdgeSamples {
  /** Place ahead of the bit axis, along the radius through the face centre [m]. */
  readonly x: Float64Array;
  /** Place along the travel of the face centre [m]. */
  readonly y: Float64Array;
  /** Distance from the bit axis [m]. */
  readonly radius: Float64Array;
  /** Height along the bit axis, positive down-hole [m]. */
  readonly height: Float64Array;
  /** Height worn off at this point, along the face [m]. */
  readonly removed: Float64Array;
}

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
  return { x: row(), y: row(), radius: row(), height: row(), removed: row() };
}

/**
 * The edge of one cutter, taken from its tilted face without flattening it: every point keeps its own radius, its own
 * azimuth and its own height. Worn points are brought back to the chord at D/2 - h_w below the face centre.
 *
 * The frame is taken at azimuth zero, so that turning the bit changes no figure of the trace but the azimuth itself. The
 * azimuth of a point ahead of the face centre is left as its x and y: most points stand on the half of the circle that
 * cuts nothing, and an angle costs more than all the rest of a point.
 *
 * @source (d) geometry of the pose as fixed in docs/nomenclature.md
 */
export function edgeSamples(
  cutter: PlacedCutter,
  circle: CircleTable,
  into: EdgeSamples = emptyEdgeSamples(circle),
): EdgeSamples {
  const { centre, faceAcross, faceDown } = cutterFrame({ ...cutter, azimuth: 0 });
  // Out of their arrays once: the loop runs for every point of every cutter of every candidate layout.
  const [centreX, , centreZ] = centre;
  const [acrossX, acrossY, acrossZ] = faceAcross;
  const [downX, downY, downZ] = faceDown;
  const { cosine, sine } = circle;
  const { x, y, radius, height, removed } = into;
  const faceRadius = cutter.faceDiameter / 2;
  const lowest = faceRadius - cutter.wornHeight;
  for (let k = 0; k < cosine.length; k++) {
    const across = faceRadius * cosine[k];
    const unworn = faceRadius * sine[k];
    const down = unworn < lowest ? unworn : lowest;
    const alongX = centreX + across * acrossX + down * downX;
    const alongY = across * acrossY + down * downY;
    x[k] = alongX;
    y[k] = alongY;
    radius[k] = Math.sqrt(alongX * alongX + alongY * alongY);
    height[k] = centreZ + across * acrossZ + down * downZ;
    removed[k] = unworn - down;
  }
  return into;
}
