import type { BitSpec } from "./bit-spec.ts";
import { cuttingTip } from "./face-on-profile.ts";
import { type FaceStock, faceStock, type StationedFace } from "./face-stock.ts";
import type { GeneratedBit } from "./generate-layout.ts";
import type { LayoutPlan, PlannedCutter } from "./layout-plan.ts";
import { layoutRemarks } from "./layout-remarks.ts";
import type { Slot } from "./layout-setting.ts";
import { placedCutter } from "./new-cutter-on-bit.ts";
import { cutterCylinder } from "./pocket-wall.ts";
import type { RakeShifts } from "./rake-shifts.ts";
import { sweptAzimuth } from "./wing-plan.ts";

/** Radii nearer than this are one radius: rounding must not number the gauge cutters [m]. */
const ONE_RADIUS = 1e-9;

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
  const numbered = slots
    .map((slot) => ({ slot, tip: cuttingTip(slot.pose) }))
    .sort((a, b) => outward(a.tip.radius, b.tip.radius) || a.slot.wing - b.slot.wing);
  return {
    layout: {
      holeDiameter,
      cutters: numbered.map(({ slot: { pose, wing } }) => placedCutter({ cutter, pose, wing: wing + 1 })),
    },
    places: numbered.map(({ slot, tip }, at) => ({
      number: at + 1,
      wing: slot.wing + 1,
      role: slot.role,
      zone: slot.zone,
      tipRadius: tip.radius,
      tipHeight: tip.height,
    })),
    profile: stock.profile,
    wingAngles: plan.wingAngles,
    findings: [...stock.profile.findings, ...layoutRemarks(spec, slots)],
  };
}

function faceOf(stock: FaceStock, { role, arc }: PlannedCutter, shifts: RakeShifts): StationedFace {
  if (role === "centre") return stock.atCentre();
  if (role === "gauge") return stock.atGauge(shifts.gauge);
  return stock.onFace(arc, shifts[stock.zoneAt(arc)]);
}

function outward(a: number, b: number): number {
  return Math.abs(a - b) < ONE_RADIUS ? 0 : a - b;
}
