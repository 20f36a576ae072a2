import { cutterFrame, type PlacedCutter } from "../bit/index.ts";
import type { EdgeWear } from "./edge-samples.ts";

/** Points of half an edge where no wear tells their number: on a face of 19 mm the chords between them are off by 0.4 µm. */
const UNWORN = new Float64Array(361);

/**
 * Largest distance from the bit axis at which a cutter's edge still stands, worn as it is.
 *
 * max over the edge of √(x² + y²), before anything is ground off to gauge. Read off at the wear points.
 *
 * @returns radius [m]
 * @throws RangeError when wear is given at fewer than two points
 * @source (d) geometry of the pose as fixed in docs/nomenclature.md
 * @example
 * edgeReach({ radius: 0.03, azimuth: 0, height: 0, profileAngle: 0, backRake: 0, sideRake: 0, faceDiameter: 0.013, wing: 1, length: 0.008, chamferWidth: 0, chamferAngle: 0, wornHeight: 0 }) // → 0.0365
 */
export function edgeReach(cutter: PlacedCutter, wear: EdgeWear = UNWORN): number {
  const last = wear.length - 1;
  if (!(last >= 1)) throw new RangeError(`wear needs 2 points or more, got ${wear.length}`);
  const { centre, faceAcross, faceDown } = cutterFrame({ ...cutter, azimuth: 0 });
  const faceRadius = cutter.faceDiameter / 2;
  const distance = (across: number, down: number) =>
    Math.hypot(
      centre[0] + across * faceAcross[0] + down * faceDown[0],
      centre[1] + across * faceAcross[1] + down * faceDown[1],
    );
  let farthest = 0;
  for (let j = 0; j <= last; j++) {
    const across = faceRadius * Math.cos((Math.PI * j) / last);
    const unworn = faceRadius * Math.sin((Math.PI * j) / last);
    const left = unworn - wear[j];
    farthest = Math.max(farthest, distance(across, left), distance(across, Math.min(-unworn, left)));
  }
  return farthest;
}
