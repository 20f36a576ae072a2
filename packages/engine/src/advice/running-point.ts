import type { RateLimitName } from "../cutting/index.ts";
import { LEAST_WORTHWHILE_RATE } from "../life/index.ts";
import {
  type Band,
  commonPractice,
  derivedFrom,
  type Finding,
  given,
  requirePositive,
  type Working,
} from "../quantity/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";
import { practiceRate } from "./practice-rate.ts";
import { type PracticeRun, practiceWeightAndSpeed } from "./practice-weight-and-speed.ts";
import type { Reason } from "./reason.ts";

/** One computed way to run the bit: the largest rate inside all limits at one rotary speed. */
export interface ComputedRun {
  /** Weight on bit, pipe weight included [N]. */
  readonly weight: number;
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed: number;
  /** Rate of penetration [m/s]. */
  readonly rate: number;
  /** The limit that binds there. */
  readonly binds: RateLimitName;
}

/** What `runningPoint` compares. */
export interface RunningPointInput {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  readonly bed: AdvisedBed;
  /** Computed runs, one for each rotary speed that was tried; at least one. */
  readonly candidates: readonly ComputedRun[];
}

/** How to run the bit in one bed, the computed beside the rule of thumb. */
export interface RunningPoint {
  readonly bed: AdvisedBed;
  /** The computed run with the largest rate; of equal ones the slowest turning. */
  readonly computed: ComputedRun;
  readonly practice: PracticeRun;
  /** Rate by the experience of the trade, where it has a figure [m/s]. */
  readonly practiceRate?: Band;
  /** Weight to begin with after the break-in: the lesser of computed and rule of thumb [N]. */
  readonly startWeight: number;
  /** Weight not to go beyond: the computed one [N]. */
  readonly weightCeiling: number;
  /** Computed weight over that of the rule of thumb [-]. */
  readonly weightRatio: number;
  /** Computed rotary speed over that of the rule of thumb [-]. */
  readonly speedRatio: number;
  /** Why the two part, or that they agree; at least one. */
  readonly reasons: readonly Reason[];
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * Ratio within which a computed figure and a rule of thumb count as saying the same [-].
 *
 * @source (c) common practice, no source: the rule of thumb is no finer than a quarter
 */
export const AGREEING_RATIO = 1.25;

const BINDS_WORDS: Readonly<Record<RateLimitName, string>> = {
  weight: "rig and string give no more weight here",
  torque: "the rotary gives no more torque",
  power: "the rotary gives no more power",
  advance: "the bit is held to this advance for each turn",
  exposure: "deeper cuts would let the wings rub behind the cutters",
  rate: "the flow cleans no more cuttings from the hole",
  contactTemperature: "the rubbing edges would get too hot",
};

/**
 * The computed running point beside the rules of thumb, and why they part.
 *
 * @throws RangeError when there is no candidate or a figure is not positive
 * @source (c) the rules of thumb: common practice, no source; the rest follows from the computed runs
 */
export function runningPoint({ holeDiameter, bed, candidates }: RunningPointInput): RunningPoint {
  const computed = fastest(candidates);
  const practice = practiceWeightAndSpeed({ holeDiameter, bed });
  const byTrade = practiceRate(bed);
  const weightRatio = computed.weight / practice.weight;
  const speedRatio = computed.rotarySpeed / practice.rotarySpeed;
  const compared: Compared = { bed, computed, practice, weightRatio, speedRatio };
  const { reasons, findings } = collected([
    weightRemark(compared),
    speedRemark(compared),
    rateRemark(compared, byTrade),
  ]);
  return {
    bed,
    computed,
    practice,
    ...(byTrade ? { practiceRate: byTrade } : {}),
    startWeight: Math.min(computed.weight, practice.weight),
    weightCeiling: computed.weight,
    weightRatio,
    speedRatio,
    reasons,
    findings,
    working: [
      ...practice.working,
      {
        name: "computed weight over rule of thumb",
        relation: "r = W / W_t",
        inputs: [
          given("W", "computed weight", computed.weight, "N", "largest rate inside all limits"),
          given("W_t", "weight by rule of thumb", practice.weight, "N", "weight on bit by rule of thumb"),
        ],
        value: weightRatio,
        unit: "-",
        source: derivedFrom("the two weights"),
      },
    ],
  };
}

interface Compared {
  readonly bed: AdvisedBed;
  readonly computed: ComputedRun;
  readonly practice: PracticeRun;
  readonly weightRatio: number;
  readonly speedRatio: number;
}

interface Remark {
  readonly reasons: readonly Reason[];
  readonly findings: readonly Finding[];
}

function fastest(candidates: readonly ComputedRun[]): ComputedRun {
  requirePositive({ "number of candidates": candidates.length });
  for (const { weight, rotarySpeed, rate } of candidates) requirePositive({ weight, rotarySpeed, rate });
  return candidates.reduce((best, next) => {
    if (next.rate !== best.rate) return next.rate > best.rate ? next : best;
    return next.rotarySpeed < best.rotarySpeed ? next : best;
  });
}

function collected(remarks: readonly Remark[]): Remark {
  return {
    reasons: remarks.flatMap(({ reasons }) => reasons),
    findings: remarks.flatMap(({ findings }) => findings),
  };
}

function weightRemark({ bed, computed, practice, weightRatio }: Compared): Remark {
  const { weight, binds } = computed;
  const figures = { value: weight, limit: practice.weight, unit: "N", source: commonPractice() };
  const rule = "computed weight beside practice";
  if (weightRatio > AGREEING_RATIO) {
    const sentence = `Computed weight is over the rule of thumb; what ends it is that ${BINDS_WORDS[binds]}.`;
    return {
      reasons: [{ sentence, rule, ...figures }],
      findings: [
        {
          code: "computed-weight-over-practice",
          severity: "note",
          where: bed.name,
          message: `${sentence} Begin at the rule of thumb and go up in steps, only while the rate rises with the weight.`,
          ...figures,
        },
      ],
    };
  }
  if (weightRatio < 1 / AGREEING_RATIO) {
    const sentence = `Computed weight stays under the rule of thumb, because ${BINDS_WORDS[binds]}.`;
    return {
      reasons: [{ sentence, rule, ...figures }],
      findings: [
        {
          code: "practice-weight-over-limit",
          severity: "caution",
          where: bed.name,
          message: `${sentence} Do not push to the rule of thumb here.`,
          ...figures,
        },
      ],
    };
  }
  const sentence = `Computed weight and the rule of thumb agree within a quarter; beyond it ${BINDS_WORDS[binds]}.`;
  return { reasons: [{ sentence, rule, ...figures }], findings: [] };
}

function speedRemark({ computed, practice, speedRatio }: Compared): Remark {
  if (speedRatio <= AGREEING_RATIO && speedRatio >= 1 / AGREEING_RATIO) return { reasons: [], findings: [] };
  const sentence =
    speedRatio > 1
      ? "The computed speed is over the rule of thumb: faster gives more rate in the model, which knows nothing of whirl and bounce."
      : "The computed speed is under the rule of thumb: slower turning keeps inside a limit that faster turning would pass.";
  return {
    reasons: [
      {
        sentence,
        rule: "computed speed beside practice",
        value: computed.rotarySpeed,
        limit: practice.rotarySpeed,
        unit: "rad/s",
        source: commonPractice(),
      },
    ],
    findings: [],
  };
}

function rateRemark({ bed, computed }: Compared, byTrade: Band | undefined): Remark {
  const { rate, binds } = computed;
  const source = commonPractice();
  const reasons: Reason[] = [];
  const findings: Finding[] = [];
  if (byTrade && (rate > byTrade.high || rate < byTrade.low)) {
    const over = rate > byTrade.high;
    reasons.push({
      sentence: over
        ? "The computed rate is over what the trade sees: it is a sharp bit on a clean bottom at full weight. Feed and cleaning usually end it sooner."
        : `The computed rate is under what the trade sees, because ${BINDS_WORDS[binds]}, or because the rock is harder here than its name says.`,
      rule: "computed rate beside practice",
      value: rate,
      limit: over ? byTrade.high : byTrade.low,
      unit: "m/s",
      source,
    });
  }
  if (rate < LEAST_WORTHWHILE_RATE) {
    findings.push({
      code: "rate-hardly-pays",
      severity: "caution",
      where: bed.name,
      message: "The rate is so low that another tool is likely cheaper here, and the cutters rub instead of cutting.",
      value: rate,
      limit: LEAST_WORTHWHILE_RATE,
      unit: "m/s",
      source,
    });
  }
  return { reasons, findings };
}
