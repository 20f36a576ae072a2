import { commonPractice, derivedFrom, type Finding } from "../quantity/index.ts";
import type { EdgeTrace } from "./edge-trace.ts";

/**
 * Reach of a disc past the hole radius that is still taken as ordinary grinding to gauge [m].
 *
 * @source (c) common practice, no source
 */
export const ORDINARY_GAUGE_GRIND = 2.5e-4;

/**
 * Radius of a core at the axis that is still taken to break off by itself [m].
 *
 * @source (c) common practice, no source
 */
export const BREAKING_CORE_RADIUS = 3e-3;

/**
 * Remarks on a layout that stand before any rock is cut: rings no cutter sweeps, discs that reach far past gauge, worn
 * cutters without back rake.
 *
 * @source (d) geometry of the traced edges
 */
export function layoutFindings(trace: EdgeTrace, uncut: readonly (readonly [number, number])[]): Finding[] {
  const findings: Finding[] = uncut.map(ringFinding);
  trace.layout.cutters.forEach((cutter, i) => {
    if (trace.overreach[i] > ORDINARY_GAUGE_GRIND) {
      findings.push({
        code: "past-gauge",
        severity: "caution",
        where: `cutter ${i + 1}`,
        message:
          "The disc reaches past the hole radius by more than is usually ground off at gauge. It is computed as ground.",
        value: trace.overreach[i],
        limit: ORDINARY_GAUGE_GRIND,
        unit: "m",
        source: commonPractice(),
      });
    }
    if (cutter.wornHeight > 0 && !(cutter.backRake > 0)) {
      findings.push({
        code: "worn-without-back-rake",
        severity: "caution",
        where: `cutter ${i + 1}`,
        message: "A worn cutter that does not lean back rubs along its whole cylinder: its contact load is very high.",
        value: cutter.backRake,
        limit: 0,
        unit: "rad",
        source: derivedFrom("flat of a cylinder cut along travel"),
      });
    }
  });
  return findings;
}

function ringFinding([from, to]: readonly [number, number]): Finding {
  const source = derivedFrom("swept intervals of all cutters");
  const figures = { value: to - from, unit: "m", source };
  if (from > 0) {
    return {
      code: "uncut-ring",
      severity: "stop",
      where: "bit face",
      message:
        "No cutter sweeps this ring of the hole: rock is left standing that the body must grind off. Move a cutter to it.",
      limit: 0,
      ...figures,
    };
  }
  // A face that leans back trails behind its centre, so even an inmost cutter set on the axis misses it by a hair.
  const breaks = to <= BREAKING_CORE_RADIUS;
  return {
    code: breaks ? "thin-core" : "uncut-ring",
    severity: breaks ? "note" : "stop",
    where: "bit centre",
    message: breaks
      ? "No cutter sweeps the very centre: a core this thin breaks off by itself."
      : "No cutter sweeps the centre of the hole: a core is left standing. Draw the inmost cutter in.",
    limit: BREAKING_CORE_RADIUS,
    ...figures,
  };
}
