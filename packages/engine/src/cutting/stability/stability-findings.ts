import { commonPractice, derivedFrom, type Finding, recalledFrom } from "../../quantity/index.ts";
import { ACCEPTED_LATERAL_SHARE, GOOD_LATERAL_SHARE } from "../drilling-findings.ts";
import { worstGroup } from "./imbalance.ts";
import type { ReviewedCrossing, ReviewedString, StabilityFigures, StabilityInput } from "./stability-figures.ts";
import type { SteadySpan, SteadySpeeds } from "./steady-speeds.ts";
import { whirlFindings } from "./whirl-tendency.ts";

/**
 * Overload of a cutter on the way into a bed, over the most it bears in either, that a driller should ease the weight for [-].
 *
 * @source (c) no source: half as much again, our choice
 */
export const CROSSING_OVERLOAD = 1.5;

/**
 * Share of the time at rest from which a stick-slip is more than an unevenness [-].
 *
 * @source (c) no source: a quarter, our choice
 */
export const MUCH_STICKING = 0.25;

/** Weight or cut sheltered by the wings less than this share counts as none [-]. */
const ROUNDING = 1e-6;
const EXCITATION = recalledFrom("Richard, Germay & Detournay 2007, J. Sound Vib. 305:432-456");

/**
 * Remarks on the figures of a stability review, those on its boundaries apart.
 *
 * @throws RangeError when a share or clearance is negative
 * @source (c) each limit names its own source; most are common practice
 */
export function stabilityFindings(input: StabilityInput, figures: StabilityFigures): Finding[] {
  const { trace, gaugeClearance = 0 } = input;
  const { imbalance, string } = figures;
  return [
    ...balanceFindings(figures),
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

/**
 * Remarks on the way across a boundary.
 *
 * @source (d) cutter forces along the crossing; the limits are our choice
 */
export function crossingFindings({ from, to, intoHarder, crossing }: ReviewedCrossing): Finding[] {
  const { peak, mostLateral, before, after } = crossing;
  const where = `${from} into ${to}`;
  const findings: Finding[] = [];
  if (peak.overloadRatio > CROSSING_OVERLOAD) {
    findings.push({
      code: "crossing-overload",
      // A bit that drops out of a hard bed is held back by its feed; what breaks cutters is the way in.
      severity: intoHarder ? "caution" : "note",
      where: `${where}, cutter ${peak.cutter}`,
      message: intoHarder
        ? "Going into the harder bed at full weight this cutter bears far more than in either bed alone. Ease the weight before the boundary and put it back on once all cutters are in."
        : "Leaving the harder bed at full weight this cutter, among the last in it, bears far more than in either bed alone. Ease the weight as the bit begins to drop through.",
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

/**
 * Remarks on the speeds that were scanned: none of them steady, or others than that of the run.
 *
 * @source (b) the march of Richard, Germay & Detournay 2007, recalled
 */
export function speedFindings({ steady, finished }: SteadySpeeds, rotarySpeed: number): Finding[] {
  if (!finished) return [];
  const common = { severity: "note", where: "rotary speed", source: EXCITATION } as const;
  const [first] = steady;
  if (first === undefined) {
    return [
      {
        ...common,
        code: "no-steady-speed",
        message:
          "At this weight no speed of the rotary leaves the bit steady by the equations of self-excitation. Try less weight.",
      },
    ];
  }
  if (steady.some(({ slowestSpeed, fastestSpeed }) => rotarySpeed >= slowestSpeed && rotarySpeed <= fastestSpeed))
    return [];
  const off = ({ slowestSpeed, fastestSpeed }: SteadySpan) =>
    rotarySpeed < slowestSpeed ? slowestSpeed - rotarySpeed : rotarySpeed - fastestSpeed;
  const nearest = steady.reduce((best, one) => (off(one) < off(best) ? one : best), first);
  return [
    {
      ...common,
      code: "steadier-at-another-speed",
      message: "By the equations of self-excitation the bit settles at other speeds of the rotary than this.",
      value: rotarySpeed,
      limit: rotarySpeed < nearest.slowestSpeed ? nearest.slowestSpeed : nearest.fastestSpeed,
      unit: "rad/s",
    },
  ];
}

function stringFindings({ rotarySpeed }: StabilityInput, string: ReviewedString): Finding[] {
  const { axialLimitSpeed: limit, march, inStep, feedHolds } = string;
  const findings: Finding[] = inStep.map(({ from, to, why }) => ({
    code: "speed-in-step-with-string",
    severity: "note",
    where: "rotary speed",
    message: `From the first of these lengths of the string to the second the bit is ${why} at this speed: turn slower or faster there.`,
    value: from,
    limit: to,
    unit: "m",
    source: commonPractice(),
  }));
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
    const share = sticks ? march.stickShare : march.bounceShare;
    const what = sticks ? "stop and spin" : "leave the bottom and land again";
    const feed = feedHolds
      ? " The string is short: a feed held still, instead of one under constant force, keeps the bit from it."
      : "";
    findings.push({
      code: sticks ? "stick-slip" : "bit-bounce",
      severity: feedHolds || share < MUCH_STICKING ? "note" : "caution",
      where: "string",
      message: `Under a constant feed force the bit may ${what} at this weight and speed. Turn faster or take weight off, and watch the torque.${feed}`,
      source: EXCITATION,
    });
  }
  return findings;
}
