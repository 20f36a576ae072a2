import {
  advanceWhere,
  bestRun,
  COBALT_TABLE_LIMIT,
  compiledKernel,
  drillAtWeight,
  type EdgeTrace,
  type Finding,
  type LimitedBit,
  type LimitLine,
  limitLines,
  limitsPassed,
  type RateLimitName,
  type RateLimits,
  type RunningCell,
  type RunningMap,
  type RunningMapPoint,
  rateOfPenetration,
  runningMap,
  runningTable,
  runToEnd,
  type SpeedRange,
  type SpeedWindow,
} from "@bitwright/engine";
import { weightAvailable } from "../stations/string-of.ts";
import type { Workup } from "../workup.ts";
import { type InsidePoint, insidePoints } from "./inside-points.ts";
import { mapFindings, runFindings } from "./map-findings.ts";
import { LEAST_TURNING, rotaryOf } from "./rotary-of.ts";
import { type RuleBox, ruleBox } from "./rule-box.ts";
import { type StudiedBed, studiedBeds } from "./studied-beds.ts";

/** What to map, and what to keep out of. */
export interface MapStudyOptions {
  /** The beds to map, by number or a part of the name; all that the bit drills where not given. */
  readonly bed?: string;
  /** Speeds to keep out of in every bed, beside those in step with the string. */
  readonly avoid?: readonly SpeedWindow[];
  /** Asked before every bed; true ends the study with what it has. */
  readonly shouldStop?: () => boolean;
}

/** How far a study of maps has come. */
export interface MapStudyProgress {
  /** The bed it is at. */
  readonly bed: string;
  /** Beds done [-]. */
  readonly done: number;
  /** Beds to map [-]. */
  readonly of: number;
}

/** The map of one bed. */
export interface BedMap {
  /** Number among the beds that the bit drills, from 1 [-]. */
  readonly number: number;
  readonly name: string;
  /** The rock it is taken as. */
  readonly rock: string;
  /** Depth where the bit comes into it [m]. */
  readonly top: number;
  /** Depth where the bit leaves it [m]. */
  readonly bottom: number;
  readonly limits: RateLimits;
  /** Most weight that rig and string give at its bottom; at its top it is the limit on weight [N]. */
  readonly weightAtBottom: number;
  readonly map: RunningMap;
  /** Rates over even steps of weight and speed. */
  readonly table: readonly RunningCell[];
  /** How the card says to run it. */
  readonly run: RunningMapPoint;
  /** The most weight inside all limits at speeds that the rotary turns, and the limit that holds it. */
  readonly inside: readonly InsidePoint[];
  /** Where each limit is met at the speed of the run, tightest first. */
  readonly atRun: readonly LimitLine[];
  readonly rule: RuleBox;
  /** The middle of the rule of thumb, and the rate that the law gives it; absent where the ground cannot carry its weight. */
  readonly rulePoint?: RunningMapPoint;
  /** The limits that the middle of the rule of thumb would pass. */
  readonly rulePasses: readonly RateLimitName[];
  readonly findings: readonly Finding[];
}

/** The maps of a traveler's bit. */
export interface MapStudy {
  readonly beds: readonly BedMap[];
}

const RPM = (2 * Math.PI) / 60;
/** Steps between the speeds of a map: a half of five turns a minute, so that every ten is one of them [rad/s]. */
const SPEED_STEP = 2.5 * RPM;
const STEPS_OF_TABLE = 12;
/** How far beyond the largest weight and the fastest speed of note a map goes [-]. */
const BEYOND = 1.15;
/** The same in ground that cannot carry the rule of thumb [-]. */
const WITHOUT_RULE = 2;

/**
 * Weight against speed for every bed that the bit drills, from the very limits that the cut station worked with.
 *
 * The speeds run past both ends of what the rig turns, the weights past the rule of thumb, so that one sees what a limit
 * costs.
 */
export function mapStudy(workup: Workup, options: MapStudyOptions = {}): MapStudy {
  return runToEnd(mapStudyInSteps(workup, options));
}

/** The same a bed at a time, for a caller that has to look after other things between the beds. */
export function* mapStudyInSteps(
  workup: Workup,
  { bed, avoid = [], shouldStop = () => false }: MapStudyOptions = {},
): Generator<MapStudyProgress, MapStudy, void> {
  const { trace, beds } = studiedBeds(workup, bed);
  const mapOf = bedMapper(workup, trace, avoid);
  const done: BedMap[] = [];
  for (const studied of beds) {
    if (shouldStop()) break;
    yield { bed: studied.name, done: done.length, of: beds.length };
    done.push(mapOf(studied));
  }
  return { beds: done };
}

/** Makes the map of one bed after another, all with one kernel and one rotary. */
function bedMapper(workup: Workup, trace: EdgeTrace, asked: readonly SpeedWindow[]): (studied: StudiedBed) => BedMap {
  const { inquiry } = workup.inquiry;
  const kernel = compiledKernel();
  const rotary = rotaryOf(inquiry.rig);
  return (studied) => {
    const { cut, limits, heat, number, name, inStep } = studied;
    const avoid = [...asked, ...inStep];
    const bit: LimitedBit = { trace, response: cut.ground.response.mid, kernel, limits, heat };
    const rule = ruleBox(cut.run.practice, cut.bed.confinedStrength.mid);
    const rotarySpeeds = drawnSpeeds(rotary, rule);
    const best = bestRun(bit, rotary, avoid);
    const ruleCarried = carries(bit, BEYOND * rule.weight.high);
    const most = Math.max(cut.weight, best?.weight ?? 0);
    const mostWeight = ruleCarried ? BEYOND * Math.max(rule.weight.high, most) : WITHOUT_RULE * most;
    const heatMarks = [COBALT_TABLE_LIMIT];
    const map = runningMap({ ...bit, rotary, rotarySpeeds, mostWeight, avoid, heatMarks, best });
    const ofRule = ruleCarried ? drillAtWeight(bit, rule.weight.mid) : undefined;
    const rulePasses = ofRule ? limitsPassed({ ...bit, state: ofRule, rotarySpeed: rule.rotarySpeed.mid }) : [];
    const { advance, rate, rotarySpeed } = cut.drilling;
    return {
      number,
      name,
      rock: cut.ground.rock.name,
      top: cut.bed.top,
      bottom: cut.bed.bottom,
      limits,
      weightAtBottom: weightAvailable(inquiry, cut.bed.bottom),
      map,
      table: runningTable(bit, {
        weights: evenSteps(0, mostWeight, STEPS_OF_TABLE).slice(1),
        rotarySpeeds: evenSteps(rotarySpeeds[0], rotarySpeeds[rotarySpeeds.length - 1], STEPS_OF_TABLE),
      }),
      run: { weight: cut.weight, rotarySpeed, advance, rate },
      inside: insidePoints(map),
      atRun: limitLines(bit, [rotarySpeed]).sort((a, b) => a.points[0].advance - b.points[0].advance),
      rule,
      ...(ofRule
        ? {
            rulePoint: {
              weight: rule.weight.mid,
              rotarySpeed: rule.rotarySpeed.mid,
              advance: ofRule.advance,
              rate: rateOfPenetration({ advance: ofRule.advance, rotarySpeed: rule.rotarySpeed.mid }),
            },
          }
        : {}),
      rulePasses,
      findings: [
        ...mapFindings(name, map, rule, ofRule ? rulePasses : "buries"),
        ...runFindings(name, rotarySpeed, { asked, inStep }),
      ],
    };
  };
}

/** Whether some advance of the bit carries a weight; in soft clay it buries under far less than the rule of thumb. */
function carries(bit: LimitedBit, weight: number): boolean {
  return advanceWhere(bit, (state) => state.bit.weight, weight) !== undefined;
}

/** Speeds from under the slowest to past the fastest of note, in whole tens of turns a minute at the ends. */
function drawnSpeeds({ slowest, fastest }: SpeedRange, rule: RuleBox): number[] {
  const tens = (rpm: number, round: (n: number) => number) => 10 * round(rpm / 10);
  const from = Math.max(LEAST_TURNING / RPM, tens((0.75 * Math.min(slowest, rule.rotarySpeed.low)) / RPM, Math.floor));
  const to = tens((BEYOND * Math.max(fastest, rule.rotarySpeed.high)) / RPM, Math.ceil);
  return evenSteps(from * RPM, to * RPM, Math.round(((to - from) * RPM) / SPEED_STEP));
}

function evenSteps(from: number, to: number, steps: number): number[] {
  return Array.from({ length: steps + 1 }, (_, k) => from + (k / steps) * (to - from));
}
