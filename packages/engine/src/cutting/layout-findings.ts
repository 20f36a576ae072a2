import { coverage, type PlacedCutter } from "../bit/index.ts";
import { commonPractice, derivedFrom, type Finding } from "../quantity/index.ts";
import type { EdgeTrace } from "./edge-trace.ts";

/**
 * Reach of a disc past the hole radius that is still taken as ordinary grinding to gauge [m].
 *
 * @source (c) common practice, no source
 */
export const ORDINARY_GAUGE_GRIND = 2.5e-4;

/**
 * Remarks on a layout that stand before any rock is cut: rings no cutter sweeps, discs ground far back to gauge, worn
 * cutters without back rake.
 *
 * @throws RangeError when the hole or a face has no size
 * @source (d) geometry of the traced edges
 */
export function layoutFindings({ layout, overreach }: EdgeTrace): Finding[] {
  const rings = coverage(layout).findings.filter(({ code }) => code === "uncut-ring");
  return [...rings, ...layout.cutters.flatMap((cutter, i) => cutterFindings(cutter, `cutter ${i + 1}`, overreach[i]))];
}

function cutterFindings(cutter: PlacedCutter, where: string, overreach: number): Finding[] {
  const findings: Finding[] = [];
  if (overreach > ORDINARY_GAUGE_GRIND) {
    findings.push({
      code: "ground-far-to-gauge",
      severity: "caution",
      where,
      message:
        "The disc reaches past the hole radius by more than is usually ground off at gauge. It is computed as ground to gauge.",
      value: overreach,
      limit: ORDINARY_GAUGE_GRIND,
      unit: "m",
      source: commonPractice(),
    });
  }
  if (cutter.wornHeight > 0 && !(cutter.backRake > 0)) {
    findings.push({
      code: "worn-without-back-rake",
      severity: "caution",
      where,
      message: "A worn cutter that does not lean back rubs along its whole cylinder: its contact load is very high.",
      value: cutter.backRake,
      limit: 0,
      unit: "rad",
      source: derivedFrom("flat of a cylinder cut along travel"),
    });
  }
  return findings;
}
