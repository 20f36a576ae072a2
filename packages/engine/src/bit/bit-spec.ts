import type { Cutter } from "../cutter/index.ts";
import type { BitMaterial } from "./bit-material.ts";
import type { ProfileSpec } from "./profile.ts";
import type { RakeSchedule } from "./rake-schedule.ts";
import type { WingPlan } from "./wing-plan.ts";

/** What a bit is laid out from. */
export interface BitSpec {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  readonly profile: Omit<ProfileSpec, "holeDiameter" | "leastCorner">;
  readonly wings: WingPlan;
  readonly cutter: Cutter;
  readonly rakes: RakeSchedule;
  readonly material: BitMaterial;
  /** Profile angle that the gauge cutters are set at [rad]. */
  readonly gaugeAngle?: number;
  /** Share of a face by which neighbours on the profile overlap at least, wherever there are cutters enough [-]. */
  readonly overlap?: number;
  /** By how much a pocket is wider than its cutter, over the diameter [m]. */
  readonly clearance?: number;
  /** Least wall between two pockets; of the body where not given [m]. */
  readonly leastWall?: number;
}

/**
 * Profile angle of the gauge cutters where none is named: leaning outward, with back rake left for the bottom of the
 * face, which cuts most [rad].
 *
 * @source (c) no source: 60 degrees, our choice
 */
export const ORDINARY_GAUGE_ANGLE = Math.PI / 3;

/**
 * Overlap of neighbours on the profile where none is named [-].
 *
 * @source (c) no source: 0.3 of a face, our choice
 */
export const ORDINARY_OVERLAP = 0.3;
