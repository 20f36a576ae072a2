import {
  type Band,
  band,
  commonPractice,
  type Finding,
  given,
  INCH,
  requirePositive,
  STANDARD_GRAVITY,
  type Working,
} from "../quantity/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";
import { type BreakIn, breakInFor } from "./break-in.ts";
import { CARE_STRENGTH, UNFIT_STRENGTH } from "./fit-limits.ts";
import type { Reason } from "./reason.ts";

const TURN_PER_MINUTE = (2 * Math.PI) / 60;
const POUND = 0.45359237;

/**
 * Rule of thumb for the weight on a PDC bit, pipe weight included, for each metre of hole diameter [N/m].
 *
 * @source (c) common practice, no source: 1,000 lbf for each inch of diameter
 */
export const PRACTICE_WEIGHT_PER_DIAMETER = (1000 * POUND * STANDARD_GRAVITY) / INCH;

/**
 * Rotary speed of the rule of thumb in soft ground [rad/s].
 *
 * @source (c) common practice, no source: 100 rpm
 */
export const PRACTICE_SPEED_SOFT = 100 * TURN_PER_MINUTE;

/**
 * Rotary speed of the rule of thumb where ground turns hard [rad/s].
 *
 * @source (c) common practice, no source: 80 rpm
 */
export const PRACTICE_SPEED_FIRM = 80 * TURN_PER_MINUTE;

/**
 * Rotary speed of the rule of thumb at the hard end of what a PDC bit drills [rad/s].
 *
 * @source (c) common practice, no source: "slower in hard ground" taken as 60 rpm
 */
export const PRACTICE_SPEED_HARD = 60 * TURN_PER_MINUTE;

/**
 * Confined strength up to which ground counts as soft in the rule of thumb for speed [Pa].
 *
 * @source (c) common practice, no source
 */
export const SOFT_STRENGTH = 20e6;

/**
 * Rule of thumb for the weight on a PDC bit, pipe weight included.
 *
 * W = w D, w = 1,000 lbf for each inch; for bits of 3 to 12 in.
 *
 * @returns weight on bit [N]
 * @throws RangeError when the diameter is not positive
 * @source (c) common practice, no source
 * @example
 * practiceWeight(0.155575) // → 27245.4
 */
export function practiceWeight(holeDiameter: number): number {
  requirePositive({ holeDiameter });
  return PRACTICE_WEIGHT_PER_DIAMETER * holeDiameter;
}

/**
 * Rule of thumb for the rotary speed of a PDC bit, slower in harder ground.
 *
 * 100 rpm to 20 MPa of confined strength, falling evenly to 80 rpm at 100 MPa and to 60 rpm at 150 MPa, then level. The
 * trade says 80 to 100 rpm and slower in hard ground; where it bends is our reading of that.
 *
 * @returns rotary speed [rad/s]
 * @throws RangeError when the strength is not positive
 * @source (c) common practice, no source
 * @example
 * practiceRotarySpeed(60e6) // → 9.42478
 */
export function practiceRotarySpeed(confinedStrength: number): number {
  requirePositive({ confinedStrength });
  const points = [
    { strength: SOFT_STRENGTH, speed: PRACTICE_SPEED_SOFT },
    { strength: CARE_STRENGTH, speed: PRACTICE_SPEED_FIRM },
    { strength: UNFIT_STRENGTH, speed: PRACTICE_SPEED_HARD },
  ];
  let softer = { strength: 0, speed: PRACTICE_SPEED_SOFT };
  for (const harder of points) {
    if (confinedStrength <= harder.strength) {
      const share = (confinedStrength - softer.strength) / (harder.strength - softer.strength);
      return softer.speed + share * (harder.speed - softer.speed);
    }
    softer = harder;
  }
  return PRACTICE_SPEED_HARD;
}

/** The rules of thumb for running a PDC bit in one bed. */
export interface PracticeRun {
  /** Weight on bit, pipe weight included [N]. */
  readonly weight: number;
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed: number;
  /** Rotary speed over the strength band of the bed [rad/s]. */
  readonly rotarySpeedBand: Band;
  readonly breakIn: BreakIn;
  readonly reasons: readonly Reason[];
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** What the rules of thumb look at. */
export interface PracticeRunInput {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  readonly bed: AdvisedBed;
}

/**
 * Weight, speed and break-in by the rules of thumb of the trade.
 *
 * @throws RangeError when the diameter or a strength is not positive
 * @source (c) common practice, no source
 */
export function practiceWeightAndSpeed({ holeDiameter, bed }: PracticeRunInput): PracticeRun {
  const { low, mid, high } = bed.confinedStrength;
  const weight = practiceWeight(holeDiameter);
  const rotarySpeed = practiceRotarySpeed(mid);
  const source = commonPractice();
  return {
    weight,
    rotarySpeed,
    rotarySpeedBand: band(practiceRotarySpeed(high), rotarySpeed, practiceRotarySpeed(low)),
    breakIn: breakInFor({ fullWeight: weight, fullSpeed: rotarySpeed }),
    reasons: [
      {
        sentence: "A thousand pounds for each inch of diameter, and the weight of the pipe counts.",
        rule: "practice weight",
        value: weight,
        unit: "N",
        source,
      },
      {
        sentence:
          mid >= CARE_STRENGTH
            ? "Eighty to a hundred turns a minute, slower in hard ground: this ground is hard."
            : "Eighty to a hundred turns a minute, slower as the ground gets harder.",
        rule: "practice speed",
        value: rotarySpeed,
        unit: "rad/s",
        source,
      },
    ],
    findings: [],
    working: [
      {
        name: "weight on bit by rule of thumb",
        relation: "W = w D",
        inputs: [
          given("w", "weight for each length of diameter", PRACTICE_WEIGHT_PER_DIAMETER, "N/m", "common practice"),
          given("D", "hole diameter", holeDiameter, "m", "hole"),
        ],
        value: weight,
        unit: "N",
        source,
      },
      {
        name: "rotary speed by rule of thumb",
        relation: "ω falls evenly from 100 rpm at 20 MPa to 80 rpm at 100 MPa and 60 rpm at 150 MPa",
        inputs: [given("q", "confined strength", mid, "Pa", bed.name)],
        value: rotarySpeed,
        unit: "rad/s",
        source,
      },
    ],
  };
}
