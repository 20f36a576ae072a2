import { commonPractice, readIn } from "../quantity/index.ts";
import { CARE_STRENGTH } from "./fit-limits.ts";
import { COUNTING_SHARE, type GroundMix } from "./ground-mix.ts";
import { SOFT_STRENGTH } from "./practice-weight-and-speed.ts";
import type { Choice, Reason } from "./reason.ts";

const DEGREE = Math.PI / 180;

/**
 * Back rake the trade starts from [rad].
 *
 * @source (a) ASME J. Energy Resour. Technol. 114:323, 1992: cutting force least near 10 degrees in every rock tried
 */
export const USUAL_BACK_RAKE = 10 * DEGREE;

/**
 * By how much soft ground lowers, and abrasive or broken ground raises, the back rake [rad].
 *
 * @source (c) common practice, no source: 5 degrees
 */
export const BACK_RAKE_STEP = 5 * DEGREE;

/**
 * By how much the back rake grows from the centre to the gauge [rad].
 *
 * @source (c) common practice, no source: 10 degrees
 */
export const BACK_RAKE_RISE = 10 * DEGREE;

/**
 * Least back rake of gauge cutters [rad].
 *
 * @source (c) common practice, no source: 20 to 30 degrees at the gauge
 */
export const LEAST_GAUGE_BACK_RAKE = 20 * DEGREE;

/**
 * Side rake of gauge cutters [rad].
 *
 * @source (c) common practice, no source: 0 to 10 degrees, more toward the gauge
 */
export const GAUGE_SIDE_RAKE = 10 * DEGREE;

/** A rake that runs evenly over the radius. */
export interface RakeRange {
  /** Rake of a cutter at the bit axis [rad]. */
  readonly centre: number;
  /** Rake of a cutter at the gauge [rad]. */
  readonly gauge: number;
}

/**
 * The back rake of the trade that starts from a rake at the centre: steeper toward the gauge.
 *
 * @source (c) common practice, no source
 */
export function backRakeFrom(centre: number): RakeRange {
  return { centre, gauge: Math.max(centre + BACK_RAKE_RISE, LEAST_GAUGE_BACK_RAKE) };
}

/**
 * Back rake by ground: near 10 degrees at the centre, less in soft ground, more where the ground wears, strikes or is
 * hard; steeper toward the gauge, where cutters travel furthest.
 *
 * @source (a) ASME J. Energy Resour. Technol. 114:323, 1992 for 10 degrees; the steps are common practice
 */
export function backRakeForGround(mix: GroundMix): Choice<RakeRange> {
  const source = commonPractice();
  const reasons: Reason[] = [
    {
      sentence: "Cutters need the least force near this rake in every rock that was tried.",
      rule: "usual back rake",
      value: USUAL_BACK_RAKE,
      unit: "rad",
      source: readIn("ASME J. Energy Resour. Technol. 114:323, 1992"),
    },
  ];
  const causes = [
    mix.impactBeds.length > 0 ? "strikes" : "",
    mix.abrasiveShare >= COUNTING_SHARE ? "wears" : "",
    mix.hardestStrength >= CARE_STRENGTH ? "is hard" : "",
  ].filter(Boolean);
  let centre = USUAL_BACK_RAKE;
  if (causes.length > 0) {
    centre += BACK_RAKE_STEP;
    reasons.push({
      sentence: `A step more, because the ground ${causes.join(" and ")}: the edge is better backed.`,
      rule: "back rake by ground",
      value: BACK_RAKE_STEP,
      unit: "rad",
      source,
    });
  } else if (mix.hardestStrength < SOFT_STRENGTH && !mix.unknownGround) {
    centre -= BACK_RAKE_STEP;
    reasons.push({
      sentence: "A step less, because all the ground is soft: the cutters bite deeper for the same weight.",
      rule: "back rake by ground",
      value: mix.hardestStrength,
      limit: SOFT_STRENGTH,
      unit: "Pa",
      source,
    });
  }
  return {
    value: backRakeFrom(centre),
    reasons: [
      ...reasons,
      {
        sentence: "Steeper toward the gauge: those cutters travel furthest and hold the diameter.",
        rule: "back rake at the gauge",
        value: LEAST_GAUGE_BACK_RAKE,
        unit: "rad",
        source,
      },
    ],
    alternatives: [
      { what: "15 to 20 degrees at the nose", why: "usual on large bits with weight to spare; costs weight here" },
      { what: "0 to 5 degrees throughout", why: "fast in clay alone; the edges chip in rock" },
    ],
  };
}

/**
 * Side rake: none at the centre, outward toward the gauge, where it helps the chips off the face.
 *
 * @source (c) common practice, no source: 0 to 10 degrees, more toward the gauge
 */
export function sideRakeForGround(): Choice<RakeRange> {
  return {
    value: { centre: 0, gauge: GAUGE_SIDE_RAKE },
    reasons: [
      {
        sentence: "Turned outward toward the gauge so that the chips leave the face; it hardly changes the force.",
        rule: "side rake",
        value: GAUGE_SIDE_RAKE,
        unit: "rad",
        source: commonPractice(),
      },
      {
        sentence: "Bits with both rakes at 10 to 15 degrees were the best for rate and strength in one set of tests.",
        rule: "side rake in tests",
        unit: "rad",
        value: GAUGE_SIDE_RAKE,
        source: readIn("ASME J. Energy Resour. Technol. 114:323, 1992"),
      },
    ],
    alternatives: [{ what: "no side rake", why: "easier pockets; the chips crowd in front of the outer cutters" }],
  };
}
