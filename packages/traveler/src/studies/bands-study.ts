import { type Bands, bandsInSteps, compiledKernel, runToEnd, type UncertainInput } from "@bitwright/engine";
import type { Workup } from "../workup.ts";
import { type BedFigure, type BedInputs, type BedUncertainty, inputsOf, sampleOf } from "./bed-sample.ts";
import { type StudiedBed, studiedBeds } from "./studied-beds.ts";

/** How to sample. */
export interface BandsStudyOptions {
  /** The beds to study, by number or a part of the name; all that the bit drills where not given. */
  readonly bed?: string;
  /** Sets of inputs to draw for each bed [-]; 500 where not given. */
  readonly samples?: number;
  /** Any whole number from 0; the same one gives the same bands [-]; 1 where not given. */
  readonly seed?: number;
  /** Asked after every sample; true ends the study with what it has. */
  readonly shouldStop?: () => boolean;
}

/** The spread of one bed. */
export interface BedBands {
  /** Number among the beds that the bit drills, from 1 [-]. */
  readonly number: number;
  readonly name: string;
  /** The rock it is taken as. */
  readonly rock: string;
  /** Depth where the bit comes into it [m]. */
  readonly top: number;
  /** Depth where the bit leaves it [m]. */
  readonly bottom: number;
  /** Weight of the run [N]. */
  readonly weight: number;
  /** Rotary speed of the run [rad/s]. */
  readonly rotarySpeed: number;
  /** The figures at the best single values, as the workup prints them. */
  readonly worked: Readonly<Record<BedFigure, number>>;
  readonly inputs: BedInputs;
  readonly bands: Bands<BedUncertainty, BedFigure>;
}

/** The spread of all beds. */
export interface BandsStudy {
  /** The seed the samples were drawn from [-]. */
  readonly seed: number;
  /** Samples asked for in each bed [-]. */
  readonly asked: number;
  readonly beds: readonly BedBands[];
  /** Names of the beds that a stop left out. */
  readonly notReached: readonly string[];
}

/** How far a study of beds has come. */
export interface BandsStudyProgress {
  /** The bed it is at. */
  readonly bed: string;
  /** Samples done, of all beds together [-]. */
  readonly done: number;
  /** Samples asked for, of all beds together [-]. */
  readonly of: number;
}

/** Samples for each bed where nobody asks for another number [-]. */
export const USUAL_SAMPLES = 500;
/** The seed where nobody asks for another [-]. */
export const USUAL_SEED = 1;

/** The spread of rate, weight, torque and specific energy over what is not known of the ground, bed by bed. */
export function bandsStudy(
  workup: Workup,
  options: BandsStudyOptions & {
    /** Told after every sample. */
    readonly progress?: (at: BandsStudyProgress) => void;
  } = {},
): BandsStudy {
  return runToEnd(bandsStudyInSteps(workup, options), options.progress);
}

/** The same a sample at a time, for a caller that has to look after other things between the samples. */
export function* bandsStudyInSteps(
  workup: Workup,
  { bed, samples = USUAL_SAMPLES, seed = USUAL_SEED, shouldStop }: BandsStudyOptions = {},
): Generator<BandsStudyProgress, BandsStudy, void> {
  const studied = studiedBeds(workup, bed);
  const kernel = compiledKernel();
  const done: BedBands[] = [];
  const of = samples * studied.beds.length;
  for (const [at, one] of studied.beds.entries()) {
    const inputs = inputsOf(workup.inquiry, studied, one);
    const steps = bandsInSteps<BedUncertainty, BedFigure>({
      inputs: inputs as Record<BedUncertainty, UncertainInput>,
      seed,
      samples,
      evaluate: (values) => sampleOf({ trace: studied.trace, kernel }, one, values),
      ...(shouldStop ? { shouldStop } : {}),
    });
    let step = steps.next();
    while (!step.done) {
      yield { bed: one.name, done: at * samples + step.value.done, of };
      step = steps.next();
    }
    done.push(bedBands(one, inputs, step.value));
    if (step.value.samples < samples) break;
  }
  return { seed, asked: samples, beds: done, notReached: studied.beds.slice(done.length).map(({ name }) => name) };
}

function bedBands({ number, name, cut }: StudiedBed, inputs: BedInputs, bands: BedBands["bands"]): BedBands {
  const { ground, bed, weight, rotarySpeed, drilling, rate } = cut;
  return {
    number,
    name,
    rock: ground.rock.name,
    top: bed.top,
    bottom: bed.bottom,
    weight,
    rotarySpeed,
    worked: {
      rate: rate.mid,
      freeRate: drilling.rate,
      weightForRate: drilling.bit.weight,
      torque: drilling.bit.torque,
      mechanicalEnergy: drilling.mechanicalEnergy,
    },
    inputs,
    bands,
  };
}
