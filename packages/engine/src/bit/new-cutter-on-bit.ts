import type { Cutter } from "../cutter/index.ts";
import type { CutterPose, PlacedCutter } from "./placed-cutter.ts";

/**
 * A cutter of the catalog in a pose on a wing, as new.
 *
 * @source (d) bookkeeping, no relation
 */
export function placedCutter({
  cutter,
  pose,
  wing,
}: {
  readonly cutter: Cutter;
  readonly pose: CutterPose;
  /** Number of the wing that carries it, from 1 [-]. */
  readonly wing: number;
}): PlacedCutter {
  const { length, chamferWidth, chamferAngle } = cutter;
  return { ...pose, wing, length, chamferWidth, chamferAngle, wornHeight: 0 };
}
