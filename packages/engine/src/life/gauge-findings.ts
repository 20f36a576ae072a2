import { gaugeTolerance } from "../bit/index.ts";
import { commonPractice, derivedFrom, type Finding, readIn } from "../quantity/index.ts";
import type { LifeFigures } from "./life-figures.ts";
import type { LifeInput } from "./life-input.ts";
import { PAD_FACES } from "./pad-protection.ts";

/** Remarks on the gauge over a life: when it left the tolerance of a new bit, and what pads did for it. */
export function gaugeFindings(input: LifeInput, figures: LifeFigures): Finding[] {
  return [...toleranceFindings(input, figures), ...padFindings(input, figures)];
}

function toleranceFindings({ layout }: LifeInput, { steps }: LifeFigures): Finding[] {
  const tolerance = gaugeTolerance(layout.holeDiameter);
  const out = steps.find(({ undergauge }) => undergauge > tolerance);
  if (!out) return [];
  return [
    {
      code: "gauge-under-new-tolerance",
      severity: "note",
      where: "gauge",
      message:
        "From this footage on the gauge is under what a new bit may be ground to: a rebuild needs gauge cutters, not only a grind.",
      value: out.footage,
      unit: "m",
      source: readIn("API Spec 7-1 tolerance of fixed-cutter bits, seen in trade reprints, standard itself not read"),
    },
  ];
}

function padFindings(input: LifeInput, { steps, worn, sideLoss }: LifeFigures): Finding[] {
  const { gaugePads, padWearMultiple, layout } = input;
  if (!gaugePads) {
    const message =
      "No gauge pads are known: the gauge cutters hold the diameter and bear the side force by themselves.";
    return [
      {
        code: "gauge-pads-left-out",
        severity: "note",
        where: "gauge",
        message,
        source: derivedFrom("the bit as given"),
      },
    ];
  }
  const { wearMultiple } = PAD_FACES[gaugePads.protection];
  const tolerance = gaugeTolerance(layout.holeDiameter);
  const holding = steps.find(({ undergauge, cutterUndergauge }) => cutterUndergauge - undergauge > tolerance);
  const findings: Finding[] = [];
  if (holding) {
    findings.push({
      code: "pads-hold-gauge",
      severity: "note",
      where: "gauge",
      message:
        "From this footage on pads, not cutters, hold the diameter: they grind what the gauge cutters leave. A ring shows the bit larger than its cutters are; look at the cutters too.",
      value: holding.footage,
      unit: "m",
      source: derivedFrom("balance of losses at cutters and pads along the march"),
    });
  }
  if (2 * sideLoss > worn.cutterUndergauge / 2) {
    findings.push({
      code: "side-force-wears-gauge",
      severity: "caution",
      where: "gauge",
      message:
        "Most of what the gauge loses is worn off by the side force of the cutters, which the pads do not bear for long. A layout with less side force, longer or better protected pads keep the diameter.",
      value: 2 * sideLoss,
      limit: worn.cutterUndergauge,
      unit: "m",
      source: derivedFrom("balance of losses at cutters and pads along the march"),
    });
  }
  findings.push({
    code: "pad-wear-unsourced",
    severity: "note",
    where: "gauge",
    message: `No published wear of gauge pads stands behind this gauge: ${gaugePads.protection} is taken to wear so many times as fast as diamond, good within a factor of five either way.`,
    value: padWearMultiple ?? wearMultiple.mid,
    unit: "-",
    source: commonPractice(),
  });
  return findings;
}
