import type { PlacedCutter } from "../bit/index.ts";
import { circleTable, type EdgeWear, edgeSamples } from "./edge-samples.ts";

/** Points of half an edge where no wear tells their number: on a face of 19 mm the chords between them are off by 0.4 µm. */
const USUAL_POINTS = 361;

/**
 * Largest distance from the bit axis at which a cutter's edge still stands: worn to its worn height or, where `wear` is given in its place,
 * point by point.
 *
 * max over the edge of √(x² + y²), before anything is ground off to gauge. Read off at the wear points.
 *
 * @returns radius [m]
 * @throws RangeError when wear is given at fewer than two points
 * @source (d) geometry of the pose as fixed in docs/nomenclature.md
 * @example
 * edgeReach({ radius: 0.03, azimuth: 0, height: 0, profileAngle: 0, backRake: 0, sideRake: 0, faceDiameter: 0.013, wing: 1, length: 0.008, chamferWidth: 0, chamferAngle: 0, wornHeight: 0 }) // → 0.0365
 */
export function edgeReach(cutter: PlacedCutter, wear?: EdgeWear): number {
  const last = (wear?.length ?? USUAL_POINTS) - 1;
  if (!(last >= 1)) throw new RangeError(`wear needs 2 points or more, got ${wear?.length}`);
  const { radius } = edgeSamples(cutter, circleTable(2 * last), wear);
  return radius.reduce((farthest, each) => Math.max(farthest, each), 0);
}
