import type { PlacedCutter } from "../bit/index.ts";
import { chamferHeight as freshHeight } from "../cutter/index.ts";

/** What rubs at one point of a cutter's edge. */
export interface ContactShape {
  /** Length of the wear flat along travel [m]. */
  readonly flatLength: number;
  /** Height of the chamfer over the hole bottom that the flat has left [m]. */
  readonly chamferHeight: number;
}

/**
 * The flat and the chamfer at points of one cutter's edge, from the height worn off there.
 *
 * The flat lies along travel, so where a height h is gone it is h/(sin β cos σ) long: cut off a cylinder, its area is
 * then the segment of the face over sin β, exactly. A flat that has not yet passed the chamfer starts behind what is
 * left of the chamfer; both the flat and the chamfer change without a jump as wear grows. A cutter that does not lean
 * back (β ≤ 0) rubs along its whole cylinder once worn.
 *
 * @source (d) geometry of a cylinder cut by a plane along travel
 */
export function contactShapeOf(cutter: PlacedCutter): (removed: number) => ContactShape {
  const { backRake, sideRake, chamferWidth, chamferAngle } = cutter;
  const fresh = freshHeight({ width: chamferWidth, angle: chamferAngle, backRake });
  const longest = cutter.length / Math.cos(backRake);
  const perHeight = Math.sin(backRake) * Math.cos(sideRake);
  const unworn: ContactShape = { flatLength: 0, chamferHeight: fresh };
  const setBackPerHeight =
    fresh > 0 ? (Math.tan(backRake + chamferAngle) - Math.tan(backRake)) / Math.cos(sideRake) : 0;
  return (removed) => {
    if (!(removed > 0)) return unworn;
    const chamferHeight = Math.min(fresh, Math.max(0, (chamferWidth - removed) * Math.cos(backRake)));
    const sharpFlat = perHeight > 0 ? Math.min(longest, removed / perHeight) : longest;
    return { flatLength: Math.max(0, sharpFlat - chamferHeight * setBackPerHeight), chamferHeight };
  };
}
