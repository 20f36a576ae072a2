import { derivedFrom, type Finding } from "../quantity/index.ts";
import type { BitSpec } from "./bit-spec.ts";
import type { Slot } from "./layout-setting.ts";
import { CENTRE_SIDE_RAKE, rakesAt } from "./rake-schedule.ts";

/**
 * Remarks on what a layout does otherwise than one might expect: a turned centre cutter, wings without a gauge cutter.
 *
 * @source (d) geometry of the centre cutter and the gauge cutters
 */
export function layoutRemarks(spec: BitSpec, slots: readonly Slot[]): Finding[] {
  const findings: Finding[] = [];
  const { sideRake } = rakesAt(spec.rakes, { zone: "centre", radiusShare: 0 });
  const source = derivedFrom("geometry of the centre cutter and the gauge cutters");
  if (sideRake < CENTRE_SIDE_RAKE) {
    findings.push({
      code: "centre-cutter-turned",
      severity: "note",
      where: "cutter 1",
      message: "The centre cutter is turned outward so that its edge crosses the bit axis and leaves no core.",
      value: CENTRE_SIDE_RAKE,
      limit: sideRake,
      unit: "rad",
      source,
    });
  }
  const carrying = new Set(slots.filter((slot) => slot.role === "gauge").map((slot) => slot.wing));
  for (const wing of new Set(slots.map((slot) => slot.wing))) {
    if (carrying.has(wing)) continue;
    findings.push({
      code: "wing-without-gauge-cutter",
      severity: "note",
      where: `wing ${wing + 1}`,
      message:
        "This wing's outermost cutter covers the ring between the face and the gauge cutters of the others, where no other could keep its pocket wall. The other wings hold the diameter.",
      source,
    });
  }
  return findings;
}
