import type { BitSpec } from "./bit-spec.ts";
import type { FaceStock } from "./face-stock.ts";
import type { GeneratedBit } from "./generated-bit.ts";
import type { CutterRole } from "./layout-setting.ts";
import { profileAtRadius } from "./profile-place.ts";
import { NO_RAKE_SHIFTS, type RakeShifts } from "./rake-shifts.ts";
import { ORDINARY_SWEEP } from "./wing-plan.ts";

/** One cutter of a plan: what it is there for, which wing carries it and where along the profile it stands. */
export interface PlannedCutter {
  readonly role: CutterRole;
  /** Number of the wing that carries it, from 1 [-]. */
  readonly wing: number;
  /** Length along the profile of its tip; the centre and the gauge cutters find their own places [m]. */
  readonly arc: number;
}

/** A layout by what can be chosen about it; with a specification it gives every pose. */
export interface LayoutPlan {
  readonly cutters: readonly PlannedCutter[];
  /** Azimuths of the wings at the bit axis, wing 1 first, in the sense of rotation [rad]. */
  readonly wingAngles: readonly number[];
  /** How far the gauge end of a wing trails its inner end at the bit axis [rad]. */
  readonly sweep: number;
  /** Back rake added to the schedule, by zone [rad]. */
  readonly rakeShifts: RakeShifts;
}

/**
 * The plan that a generated bit stands by.
 *
 * @throws RangeError when a tip lies beyond the hole radius
 * @source (d) bookkeeping: places read off the bit
 */
export function planOfBit(
  spec: BitSpec,
  { places, wingAngles }: Pick<GeneratedBit, "places" | "wingAngles">,
  stock: FaceStock,
): LayoutPlan {
  const arcOf = (role: CutterRole, tipRadius: number) => {
    if (role === "centre") return stock.atCentre().arc;
    if (role === "gauge") return stock.atGauge(0).arc;
    return profileAtRadius(stock.profile, tipRadius).arc;
  };
  return {
    cutters: places.map(({ role, wing, tipRadius }) => ({ role, wing, arc: arcOf(role, tipRadius) })),
    wingAngles,
    sweep: spec.wings.sweep ?? ORDINARY_SWEEP,
    rakeShifts: NO_RAKE_SHIFTS,
  };
}
