import type { PlacedCutter } from "../bit/index.ts";
import { circleTable, type EdgeWear, edgeSamples } from "./edge-samples.ts";

// Even points of 0.5°: on a face of 19 mm the chords between them stand off the edge by a third of a micrometre.
const CIRCLE = circleTable(720);

/**
 * Largest distance from the bit axis at which a cutter's edge still stands, worn as it is.
 *
 * max over the edge of √(x² + y²), before anything is ground off to gauge.
 *
 * @returns radius [m]
 * @source (d) geometry of the pose as fixed in docs/nomenclature.md
 * @example
 * edgeReach({ radius: 0.03, azimuth: 0, height: 0, profileAngle: 0, backRake: 0, sideRake: 0, faceDiameter: 0.013, wing: 1, length: 0.008, chamferWidth: 0, chamferAngle: 0, wornHeight: 0 }) // → 0.0365
 */
export function edgeReach(cutter: PlacedCutter, wear?: EdgeWear): number {
  const { radius } = edgeSamples(cutter, CIRCLE, wear);
  return radius.reduce((farthest, here) => Math.max(farthest, here), 0);
}
