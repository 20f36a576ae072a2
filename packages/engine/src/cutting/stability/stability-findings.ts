import { commonPractice, derivedFrom, type Finding, recalledFrom } from "../../quantity/index.ts";
import { ACCEPTED_LATERAL_SHARE, GOOD_LATERAL_SHARE } from "../drilling-findings.ts";
import { worstGroup } from "./imbalance.ts";
import type { ReviewedCrossing, ReviewedString, StabilityFigures, StabilityInput } from "./stability-figures.ts";
import { whirlFindings } from "./whirl-tendency.ts";

/**
 * Overload of a cutter on the way into a bed, over the most it bears in either, that a driller should ease the weight for [-].
 *
 * @source (c) no source: half as much again, our choice
 */
export const CROSSING_OVERLOAD = 1.5;

/** Weight or cut sheltered by the wings less than this share counts as none [-]. */
const ROUNDING = 1e-6;
const EXCITATION = recalledFrom("Richard, Germay & Detournay 2007, J. Sound Vib. 305:432-456");

/**
 * Remarks on the figures of a stability review.
 *
 * @throws RangeError when a share or clearance is negative
 * @source (c) each limit names its own source; most are common practice
 */
export function stabilityFindings(input: StabilityInput, figures: StabilityFigures): Finding[] {
  const { trace, gaugeClearance = 0 } = input;
  const { imbalance, crossings, string } = figures;
  return [
    ...balanceFindings(figures),
    ...crossings.flatMap(crossingFindings),
    ...rubbingFindings(figures),
    ...(string ? stringFindings(input, string) : []),
    ...whirlFindings({ layout: trace.layout, lateralShare: imbalance.whole.share, gaugeClearance }),
  ];
}

function balanceFindings({ imbalance }: StabilityFigures): Finding[] {
  const { whole, direction, triples } = imbalance;
  const findings: Finding[] = [];
  if (whole.share > GOOD_LATERAL_SHARE && direction) {
    findings.push({
      code: "side-force-leans",
      severity: "note",
      where: `wing ${direction.wing}`,
      message: `The side force of the cutters pushes the bit ${direction.words}: the gauge of that wing takes the wear, and a smooth pad belongs there.`,
      value: whole.share,
      limit: GOOD_LATERAL_SHARE,
      unit: "-",
      source: commonPractice(),
    });
  }
  const worst = worstGroup(triples);
  if (worst && worst.lateralShare > 2 * ACCEPTED_LATERAL_SHARE) {
    findings.push({
      code: "neighbours-lean",
      severity: "note",
      where: `cutters ${worst.cutters.join(", ")}`,
      message:
        "These neighbours on the profile push much the same way. A hard streak that only they touch pushes the bit aside, whatever the whole bit's balance.",
      value: worst.lateralShare,
      limit: 2 * ACCEPTED_LATERAL_SHARE,
      unit: "-",
      source: derivedFrom(
        "vector sum over three neighbours; limit twice what is accepted of the whole bit, our choice",
      ),
    });
  }
  return findings;
}

function crossingFindings({ from, to, crossing }: ReviewedCrossing): Finding[] {
  const { peak, mostLateral, before, after } = crossing;
  const where = `${from} into ${to}`;
  const findings: Finding[] = [];
  if (peak.overloadRatio > CROSSING_OVERLOAD) {
    findings.push({
      code: "crossing-overload",
      severity: "caution",
      where: `${where}, cutter ${peak.cutter}`,
      message:
        "Going into the harder bed at full weight this cutter bears far more than in either bed alone. Ease the weight before the boundary and put it back on once all cutters are in.",
      value: peak.overloadRatio,
      limit: CROSSING_OVERLOAD,
      unit: "-",
      source: derivedFrom("cutter forces along the crossing; limit our choice"),
    });
  }
  const lateral = mostLateral.heldWeight.lateralShare;
  if (lateral > ACCEPTED_LATERAL_SHARE && lateral > 1.2 * Math.max(before.lateralShare, after.lateralShare)) {
    findings.push({
      code: "crossing-side-force",
      severity: "note",
      where,
      message:
        "Part-way across the boundary the bit is pushed to the side harder than in either bed: the hole may step or turn there.",
      value: lateral,
      limit: ACCEPTED_LATERAL_SHARE,
      unit: "-",
      source: derivedFrom("side force along the crossing"),
    });
  }
  return findings;
}

function rubbingFindings({ advance, rubbing }: StabilityFigures): Finding[] {
  const [first] = rubbing?.first ?? [];
  if (!first || !(advance > first.advance * (1 + ROUNDING))) return [];
  if (first.advance === 0) {
    return [
      {
        code: "ridge-as-high-as-wing",
        severity: "caution",
        where: `wing ${first.wing}`,
        message:
          "Between two cutters the rock is left standing as high as this wing's top: the body grinds on it from the first turn. Close the gap with a cutter or lower the wing there.",
        value: first.radius,
        unit: "m",
        source: derivedFrom("exposure and what each wing leaves for the next"),
      },
    ];
  }
  return [
    {
      code: "wing-rubs",
      severity: "caution",
      where: `wing ${first.wing}`,
      message:
        "The bit goes down so fast that this wing's body meets the rock: more weight goes into rubbing, not into cutting. Ease the weight or turn faster.",
      value: advance,
      limit: first.advance,
      unit: "m",
      source: derivedFrom("exposure and what each wing leaves for the next"),
    },
  ];
}

function stringFindings({ rotarySpeed }: StabilityInput, string: ReviewedString): Finding[] {
  const { axialLimitSpeed: limit, march, avoid, speeds, feedHolds } = string;
  const findings: Finding[] = [];
  const near = avoid.find(({ from, to }) => rotarySpeed > from && rotarySpeed < to);
  if (near) {
    findings.push({
      code: "speed-in-step-with-string",
      severity: "caution",
      where: "rotary speed",
      message: `At this speed the bit is ${near.why}: turn slower or faster.`,
      value: rotarySpeed,
      limit: rotarySpeed < (near.from + near.to) / 2 ? near.from : near.to,
      unit: "rad/s",
      source: commonPractice(),
    });
  }
  if (rotarySpeed < limit) {
    findings.push({
      code: "bounces-on-own-cut",
      severity: "note",
      where: "rotary speed",
      message:
        "A sharp bit on this string may chatter on the steps of its own cut at this speed. Reckoned without damping along the hole: feed, mud and wear calm it. Less weight or a softer bed lowers the speed above which it stops.",
      value: rotarySpeed,
      limit,
      unit: "rad/s",
      source: derivedFrom("linear limit of the equations of Richard, Germay & Detournay 2007"),
    });
  }
  if (march.regime === "stick-slip" || march.regime === "bit bounce") {
    const sticks = march.regime === "stick-slip";
    const what = sticks ? "stop and spin" : "leave the bottom and land again";
    const feed = feedHolds
      ? " The string is short: a feed held still, instead of one under constant force, keeps the bit from it."
      : "";
    findings.push({
      code: sticks ? "stick-slip" : "bit-bounce",
      severity: feedHolds ? "note" : "caution",
      where: "string",
      message: `Under a constant feed force the bit may ${what} at this weight and speed. Turn faster or take weight off, and watch the torque.${feed}`,
      value: sticks ? march.stickShare : march.bounceShare,
      unit: "-",
      source: EXCITATION,
    });
  }
  if (speeds?.finished && speeds.steady.length === 0) {
    findings.push({
      code: "no-steady-speed",
      severity: "note",
      where: "string",
      message:
        "At this weight no speed of the rotary leaves the bit steady by the equations of self-excitation. Try less weight.",
      source: EXCITATION,
    });
  }
  return findings;
}
