/** Where the two ends of each cutter's axis stand, x y z of the face end and then of the other: six numbers a cutter [m]. */
export type AxisEnds = Float64Array;

const clamped = (share: number): number => Math.max(0, Math.min(1, share));

/**
 * Least distance between the axes of two cutters. Less both radii it bounds the distance of their cylinders from below,
 * for a cylinder lies within the round-ended body about its axis; that spares the exact distance of most pairs.
 *
 * @source (b) Ericson 2005, Real-Time Collision Detection ch. 5, recalled
 */
export function axisDistance(ends: AxisEnds, a: number, b: number): number {
  const p = 6 * a;
  const q = 6 * b;
  const ux = ends[p + 3] - ends[p];
  const uy = ends[p + 4] - ends[p + 1];
  const uz = ends[p + 5] - ends[p + 2];
  const vx = ends[q + 3] - ends[q];
  const vy = ends[q + 4] - ends[q + 1];
  const vz = ends[q + 5] - ends[q + 2];
  const wx = ends[p] - ends[q];
  const wy = ends[p + 1] - ends[q + 1];
  const wz = ends[p + 2] - ends[q + 2];
  const uu = ux * ux + uy * uy + uz * uz;
  const vv = vx * vx + vy * vy + vz * vz;
  const uv = ux * vx + uy * vy + uz * vz;
  const uw = ux * wx + uy * wy + uz * wz;
  const vw = vx * wx + vy * wy + vz * wz;
  const square = uu * vv - uv * uv;
  // Axes within a millionth of parallel are taken as parallel: that is out by no more than a millionth of their length.
  let s = square > 1e-12 * uu * vv ? clamped((uv * vw - uw * vv) / square) : 0;
  let t = (uv * s + vw) / vv;
  if (t < 0) {
    t = 0;
    s = clamped(-uw / uu);
  } else if (t > 1) {
    t = 1;
    s = clamped((uv - uw) / uu);
  }
  const x = wx + s * ux - t * vx;
  const y = wy + s * uy - t * vy;
  const z = wz + s * uz - t * vz;
  return Math.sqrt(x * x + y * y + z * z);
}
