import type { BitSpec } from "./bit-spec.ts";
import { type FaceStock, faceStock, type StationedFace } from "./face-stock.ts";
import { bitOfSlots, type GeneratedBit } from "./generated-bit.ts";
import type { LayoutPlan, PlannedCutter } from "./layout-plan.ts";
import type { Slot } from "./layout-setting.ts";
import { cutterCylinder } from "./pocket-wall.ts";
import type { RakeShifts } from "./rake-shifts.ts";
import { sweptAzimuth } from "./wing-plan.ts";

/**
 * The bit that a plan describes: every pose, and the cutters numbered from the centre outward.
 *
 * A face turns with its wing, θ = θ_wing - s r/R; its pose is otherwise that of its station and its rakes.
 *
 * @throws RangeError when a cutter stands on a wing that the plan does not have, or beyond the profile
 * @source (d) geometry of the pose
 */
export function plannedBit(spec: BitSpec, plan: LayoutPlan, stock: FaceStock = faceStock(spec)): GeneratedBit {
  const { holeDiameter, cutter } = spec;
  const slots = plan.cutters.map((planned): Slot => {
    const face = faceOf(stock, planned, plan.rakeShifts);
    const wingAngle = plan.wingAngles[planned.wing - 1];
    if (wingAngle === undefined) {
      throw new RangeError(`wing must be one of ${plan.wingAngles.length}, got ${planned.wing}`);
    }
    const radiusShare = (2 * face.pose.radius) / holeDiameter;
    const pose = { ...face.pose, azimuth: sweptAzimuth({ wingAngle, sweep: plan.sweep, radiusShare }) };
    const cylinder = cutterCylinder({ ...pose, length: cutter.length });
    return { wing: planned.wing - 1, role: face.role, zone: face.zone, pose, arc: face.arc, cylinder };
  });
  return bitOfSlots(spec, { slots, profile: stock.profile, wingAngles: plan.wingAngles });
}

/**
 * The face of a planned cutter out of a stock.
 *
 * @source (d) bookkeeping
 */
export function faceOf(
  stock: FaceStock,
  { role, arc }: Pick<PlannedCutter, "role" | "arc">,
  shifts: RakeShifts,
): StationedFace {
  if (role === "centre") return stock.atCentre();
  if (role === "gauge") return stock.atGauge(shifts.gauge);
  return stock.onFace(arc, shifts[stock.zoneAt(arc)]);
}
