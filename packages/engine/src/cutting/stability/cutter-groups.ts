import { cuttingTip, type PlacedCutter } from "../../bit/index.ts";
import { sideForce } from "../bit-loads.ts";
import type { BedLoads } from "./bed-loads.ts";

/** Neighbours on the profile and how far their side forces cancel. */
export interface CutterGroup {
  /** Numbers of the cutters in the layout, from the centre outward [-]. */
  readonly cutters: readonly number[];
  /** Sum of their side forces [N]. */
  readonly lateralForce: number;
  /** Where it points [rad]. */
  readonly lateralAzimuth: number;
  /** The sum as a share of the weight on the whole bit [-]. */
  readonly lateralShare: number;
  /** The sum over the sum of their sizes: 0 where they cancel out, 1 where all push one way [-]. */
  readonly leanShare: number;
}

/** Nearer than this two tips are at one place [m]. */
const SAME_PLACE = 1e-7;

/**
 * Cutters in the order in which they stand along the profile, from the axis outward; their numbers from 0.
 *
 * @source (d) radius of the cutting tip, then height
 */
export function cuttersAlongProfile(cutters: readonly PlacedCutter[]): number[] {
  // In whole tenths of a micrometre, so that rounding puts no gauge cutter before another: there the lower on the bit
  // comes first, then the one with the lower number.
  const tips = cutters.map((cutter) => {
    const { radius, height } = cuttingTip(cutter);
    return { radius: Math.round(radius / SAME_PLACE), height: Math.round(height / SAME_PLACE) };
  });
  return cutters
    .map((_, k) => k)
    .sort((a, b) => tips[a].radius - tips[b].radius || tips[b].height - tips[a].height || a - b);
}

/**
 * Balance of every run of neighbours on the profile.
 *
 * While a hard streak or a new bed touches only a few neighbouring cutters, it is their side forces alone that push the
 * bit: |Σ F_k| over the group, as a share of the weight and of Σ |F_k|.
 *
 * @throws RangeError when the size is not a whole number of at least 1
 * @source (a) the idea of balancing neighbours among themselves: International Petroleum Technology Conference paper 17149;
 *   (d) the sums
 */
export function cutterGroups({
  cutters,
  loads,
  weight,
  size,
}: {
  readonly cutters: readonly PlacedCutter[];
  readonly loads: Pick<BedLoads, "lateralX" | "lateralY">;
  /** Weight on the whole bit [N]. */
  readonly weight: number;
  /** How many neighbours to a group [-]. */
  readonly size: number;
}): CutterGroup[] {
  if (!(Number.isInteger(size) && size >= 1)) throw new RangeError(`size must be a whole number from 1, got ${size}`);
  const order = cuttersAlongProfile(cutters);
  return Array.from({ length: Math.max(0, order.length - size + 1) }, (_, first) => {
    const members = order.slice(first, first + size);
    let [x, y, sizes] = [0, 0, 0];
    for (const k of members) {
      x += loads.lateralX[k];
      y += loads.lateralY[k];
      sizes += Math.hypot(loads.lateralX[k], loads.lateralY[k]);
    }
    const { force, azimuth, share } = sideForce({ x, y, weight });
    return {
      cutters: members.map((k) => k + 1),
      lateralForce: force,
      lateralAzimuth: azimuth,
      lateralShare: share,
      leanShare: sizes > 0 ? force / sizes : 0,
    };
  });
}
