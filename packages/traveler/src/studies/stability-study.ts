import { type Finding, runToEnd, type SteadySpeeds, speedFindings, steadySpeedsInSteps } from "@bitwright/engine";
import { overBeds } from "../stations/over-beds.ts";
import type { BedStability } from "../stations/stability-station.ts";
import type { Workup } from "../workup.ts";
import { rotaryOf } from "./rotary-of.ts";
import { studiedBeds } from "./studied-beds.ts";

/** What to look at. */
export interface StabilityStudyOptions {
  /** The beds to look at, by number or a part of the name; all that the bit drills where not given. */
  readonly bed?: string;
  /** Speeds of the rotary to try in each bed [-]; 16 where not given. */
  readonly speeds?: number;
  /** Asked now and then; true ends the study with what it has. */
  readonly shouldStop?: () => boolean;
}

/** How steadily the bit drills one bed, and at which speeds of the rotary it would. */
export interface StudiedStability extends BedStability {
  /** Number among the beds that the bit drills, from 1 [-]. */
  readonly number: number;
  /** What becomes of the bit at speeds over the rotary's range; absent where it has one speed only or hangs on no string. */
  readonly speeds?: SteadySpeeds;
}

/** The steadiness of a bit in its beds, with the speeds of the rotary scanned. */
export interface StabilityStudy {
  readonly beds: readonly StudiedStability[];
  /** Names of the beds that a stop left without their speeds. */
  readonly notReached: readonly string[];
  /** The remarks of the stability station on these beds, and what the scans show. */
  readonly findings: readonly Finding[];
}

/** How far a study has come. */
export interface StabilityProgress {
  /** The bed it is at. */
  readonly bed: string;
  /** Speeds done, of all beds together [-]. */
  readonly done: number;
  /** Speeds to try, of all beds together [-]. */
  readonly of: number;
}

/** Speeds tried in each bed where nobody asks for another number [-]. */
export const USUAL_SPEEDS = 16;

/** Marches the bit over the speeds of the rotary in each bed, a speed at a time. */
export function* stabilityStudyInSteps(
  workup: Workup,
  { bed, speeds: count = USUAL_SPEEDS, shouldStop }: StabilityStudyOptions = {},
): Generator<StabilityProgress, StabilityStudy, void> {
  const { beds } = studiedBeds(workup, bed);
  const rotary = rotaryOf(workup.inquiry.inquiry.rig);
  const done: StudiedStability[] = [];
  const of = count * beds.length;
  for (const [at, { number, name, stability }] of beds.entries()) {
    const { string } = stability.review;
    let speeds: SteadySpeeds | undefined;
    if (string && rotary.fastest > rotary.slowest) {
      const steps = steadySpeedsInSteps({
        bit: string.scaled,
        weight: stability.weight,
        slowestSpeed: rotary.slowest,
        fastestSpeed: rotary.fastest,
        count,
        twistDamping: string.twistDamping,
        ...(shouldStop ? { shouldStop } : {}),
      });
      let step = steps.next();
      while (!step.done) {
        yield { bed: name, done: at * count + step.value.done, of };
        step = steps.next();
      }
      speeds = step.value;
      if (!speeds.finished) break;
    }
    done.push({ ...stability, number, ...(speeds ? { speeds } : {}) });
  }
  return {
    beds: done,
    notReached: beds.slice(done.length).map(({ name }) => name),
    findings: findingsOf(done),
  };
}

/** The same at one go. */
export function stabilityStudy(workup: Workup, options: StabilityStudyOptions = {}): StabilityStudy {
  return runToEnd(stabilityStudyInSteps(workup, options));
}

function findingsOf(beds: readonly StudiedStability[]): Finding[] {
  return [
    ...overBeds(
      beds.map(({ name, review, rotarySpeed, speeds }) => ({
        name,
        findings: [...review.findings, ...(speeds ? speedFindings(speeds, rotarySpeed) : [])],
      })),
    ),
    ...beds.flatMap(({ review }) => review.boundaryFindings),
  ];
}
