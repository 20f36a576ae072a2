import {
  advancePerRevolution,
  type Band,
  type Bands,
  bandsInSteps,
  type CoolingFilm,
  drillAtAdvance,
  type EdgeTrace,
  FILM_COEFFICIENT_RANGE,
  type HeatConditions,
  heldRate,
  mapBand,
  mechanicalSpecificEnergy,
  type RateLimits,
  type RockResponse,
  rateOfPenetration,
  type UncertainInput,
} from "@bitwright/engine";
import type { ResolvedTraveler } from "../document/resolved-traveler.ts";
import { flowStation, USUAL_CHIP_SIZE } from "../stations/flow-station.ts";
import type { Workup } from "../workup.ts";
import { type StudiedBed, type StudiedBit, studiedBeds } from "./studied-beds.ts";

/** What is uncertain about a bed, by the names that results use. */
export type BedUncertainty =
  | "strength"
  | "specific energy over strength"
  | "contact stress over strength"
  | "friction on the cutter face"
  | "friction of flats"
  | "growth of contact with depth"
  | "cooling by the fluid"
  | "what the flow cleans";

/** Figures of a bed whose spread is worked out. */
export type BedFigure =
  /** Rate at the weight and speed of the run, eased to the first limit [m/s]. */
  | "rate"
  /** Rate at that weight and speed if nothing held it [m/s]. */
  | "freeRate"
  /** Weight that makes the rate of the run at its speed [N]. */
  | "weightForRate"
  /** Torque at that weight, nothing holding it [N·m]. */
  | "torque"
  /** MSE at that weight and speed, nothing holding it [Pa]. */
  | "mechanicalEnergy";

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
  readonly inputs: Readonly<Partial<Record<BedUncertainty, UncertainInput>>>;
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

/** How well a fluid cools a cutter against the film that is worked with, low, middle and high [-]. */
const COOLING: Band = mapBand(FILM_COEFFICIENT_RANGE, (coefficient) => coefficient / FILM_COEFFICIENT_RANGE.mid);

/** The spread of rate, weight, torque and specific energy over what is not known of the ground, bed by bed. */
export function bandsStudy(
  workup: Workup,
  options: BandsStudyOptions & {
    /** Told after every sample. */
    readonly progress?: (at: BandsStudyProgress) => void;
  } = {},
): BandsStudy {
  const steps = bandsStudyInSteps(workup, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    options.progress?.(step.value);
  }
}

/** The same a sample at a time, for a caller that has to look after other things between the samples. */
export function* bandsStudyInSteps(
  workup: Workup,
  { bed, samples = USUAL_SAMPLES, seed = USUAL_SEED, shouldStop }: BandsStudyOptions = {},
): Generator<BandsStudyProgress, BandsStudy, void> {
  const studied = studiedBeds(workup, bed);
  const done: BedBands[] = [];
  const of = samples * studied.beds.length;
  for (const [at, one] of studied.beds.entries()) {
    const inputs = inputsOf(workup.inquiry, studied, one);
    const steps = bandsInSteps<BedUncertainty, BedFigure>({
      inputs: inputs as Record<BedUncertainty, UncertainInput>,
      seed,
      samples,
      evaluate: (values) => sampleOf(studied.trace, one, values),
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

function bedBands({ number, name, cut }: StudiedBed, inputs: BedBands["inputs"], bands: BedBands["bands"]): BedBands {
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

/** What is not known of a bed. Strength, ratios and frictions are known by a factor, the friction angle by a difference. */
function inputsOf(traveler: ResolvedTraveler, studied: StudiedBit, { cut, limits }: StudiedBed): BedBands["inputs"] {
  const { rock, confinedStrength } = cut.ground;
  const byFactor = (band: Band): UncertainInput => ({ band, law: band.low > 0 ? "log-normal" : "normal" });
  const cleans = cleaningBand(traveler, studied, limits);
  return {
    strength: byFactor(confinedStrength),
    "specific energy over strength": byFactor(rock.specificEnergyRatio),
    "contact stress over strength": byFactor(rock.contactStressRatio),
    "friction on the cutter face": { band: rock.faceFriction, law: "normal" },
    "friction of flats": byFactor(rock.flatFriction),
    "growth of contact with depth": byFactor(rock.kappa),
    "cooling by the fluid": byFactor(COOLING),
    ...(cleans ? { "what the flow cleans": byFactor(cleans) } : {}),
  };
}

/** What the flow cleans by the slip methods, where it is what limits the rate and not a figure set by hand. */
function cleaningBand(traveler: ResolvedTraveler, { washed }: StudiedBit, { rate }: RateLimits): Band | undefined {
  const { circuit } = flowStation(traveler, { ...washed, chipSize: USUAL_CHIP_SIZE });
  const ceiling = circuit?.cleaning.rateCeiling;
  return rate !== undefined && ceiling && ceiling.mid === rate && ceiling.low > 0 ? ceiling : undefined;
}

function sampleOf(
  trace: EdgeTrace,
  { cut, limits, heat }: StudiedBed,
  values: Readonly<Record<BedUncertainty, number>>,
) {
  const { weight, rotarySpeed, drilling } = cut;
  const response: RockResponse = {
    specificEnergy: values.strength * values["specific energy over strength"],
    contactStress: values.strength * values["contact stress over strength"],
    faceFriction: values["friction on the cutter face"],
    flatFriction: values["friction of flats"],
    kappa: values["growth of contact with depth"],
  };
  const cleans = values["what the flow cleans"] as number | undefined;
  const run = heldRate({
    trace,
    response,
    rotarySpeed,
    weight,
    limits: { ...withoutWeight(limits), ...(cleans === undefined ? {} : { rate: cleans }) },
    heat: cooledBy(heat, values["cooling by the fluid"]),
  });
  const { advance, bit } = run.free;
  const { torque } = bit;
  const { holeRadius } = trace;
  const rate = rateOfPenetration({ advance, rotarySpeed });
  const wanted = advancePerRevolution({ rate: drilling.rate, rotarySpeed });
  return {
    figures: {
      rate: run.rate,
      freeRate: rate,
      weightForRate: drillAtAdvance({ trace, response }, wanted).bit.weight,
      torque,
      mechanicalEnergy:
        rate > 0 ? mechanicalSpecificEnergy({ weight, torque, rotarySpeed, rate, holeRadius }) : Number.NaN,
    },
    outcome: run.heldBy,
  };
}

/** The run has its weight; what rig and string could give beyond it does not matter. */
function withoutWeight({ weight: _, ...others }: RateLimits): RateLimits {
  return others;
}

function cooledBy(heat: HeatConditions, factor: number): HeatConditions {
  const { film } = heat;
  if (!film) return heat;
  const scaled = (one: CoolingFilm): CoolingFilm => ({ ...one, coefficient: one.coefficient * factor });
  return { ...heat, film: "coefficient" in film ? scaled(film) : film.map(scaled) } as HeatConditions;
}
