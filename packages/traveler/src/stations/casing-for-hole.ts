import type { CasingPoint, Finding } from "@bitwright/engine";
import type { ResolvedHole } from "../document/resolved-traveler.ts";

/**
 * The casing point of the whole well as it bears on one hole: the stretches clipped to that hole, and, where the hole
 * begins below the casing point, the remark that the plan already holds back what has to be held.
 */
export function casingForHole(well: CasingPoint, hole: ResolvedHole): CasingPoint {
  const clip = (stretches: CasingPoint["bitIntervals"]) =>
    stretches
      .map(({ top, bottom }) => ({ top: Math.max(top, hole.from), bottom: Math.min(bottom, hole.to) }))
      .filter(({ top, bottom }) => bottom > top);
  const held = well.depth !== undefined && hole.from >= well.depth;
  const findings = well.findings
    .map((finding) => (held && finding.code === "casing-point" ? planHolds(finding, hole) : finding))
    .filter(({ code, value }) => code !== "unfit-in-hole" || value === undefined || inside(value, hole));
  return {
    ...well,
    bitIntervals: clip(well.bitIntervals),
    otherIntervals: clip(well.otherIntervals),
    findings,
  };
}

function inside(depth: number, { from, to }: ResolvedHole): boolean {
  return depth >= from && depth < to;
}

function planHolds(finding: Finding, hole: ResolvedHole): Finding {
  return {
    ...finding,
    code: "casing-point-met",
    severity: "note",
    message: `The ${hole.name} begins below the least depth of the casing shoe, so the plan already holds ${finding.where} back. Local code and licensed practice may ask for deeper casing.`,
  };
}
