import {
  type Bands,
  type BandsProgress,
  type BandsSample,
  bandsInSteps,
  type LifeBed,
  type LifeInput,
  life,
  PAD_FACES,
  runToEnd,
  type UncertainInput,
  WEAR_COEFFICIENT,
} from "@bitwright/engine";
import type { BedCut } from "../stations/cut-station.ts";
import { type LifeOptions, lifeQuestion } from "../stations/life-station.ts";
import type { Workup } from "../workup.ts";
import { byFactor, COOLING, cooledBy } from "./bed-sample.ts";

/** Figures of a life whose spread is worked out. */
export type LifeFigure =
  /** Hole drilled over the life [m]. */
  | "footage"
  /** Whole holes like this one [-]. */
  | "holes"
  /** Time on bottom [s]. */
  | "timeOnBottom"
  /** Footage over time on bottom; none where nothing is drilled [m/s]. */
  | "meanRate";

/** How to sample a life. */
export interface LifeBandsOptions extends Pick<LifeOptions, "holes" | "wearFactor" | "shouldStop"> {
  /** Lives to march [-]; 40 where not given. */
  readonly samples?: number;
  /** Any whole number from 0; the same one gives the same bands [-]; 1 where not given. */
  readonly seed?: number;
}

/** The spread of a life over what is not known of wear and ground. */
export interface LifeBands {
  /** What was drawn, by the names that the drivers carry. */
  readonly inputs: Readonly<Record<string, UncertainInput>>;
  readonly bands: Bands<string, LifeFigure>;
}

/** Lives marched where nobody asks for another number [-]. */
export const USUAL_LIVES = 40;

const WEAR = "wear coefficient";
const COOLED = "cooling by the fluid";
const PADS = "wear of the gauge pads";
const strengthOf = (at: number, name: string) => `strength of bed ${at + 1}, ${name}`;
const abrasivityOf = (at: number, name: string) => `abrasivity of bed ${at + 1}, ${name}`;

/** The spread of a life at one go; none where the bit drills nothing of the hole. */
export function lifeBands(workup: Workup, options: LifeBandsOptions = {}): LifeBands | undefined {
  return runToEnd(lifeBandsInSteps(workup, options));
}

/** The same a life at a time, for a caller that has to look after other things between them. */
export function* lifeBandsInSteps(
  workup: Workup,
  { samples = USUAL_LIVES, seed = 1, shouldStop, ...options }: LifeBandsOptions = {},
): Generator<BandsProgress, LifeBands | undefined, void> {
  const { input } = lifeQuestion(workup.inquiry, workup, options);
  if (input.beds.length === 0) return undefined;
  const inputs = lifeInputs(input, workup.cut.beds);
  const bands = yield* bandsInSteps<string, LifeFigure>({
    inputs,
    seed,
    samples,
    evaluate: (values) => lifeSample(input, workup.cut.beds, values),
    ...(shouldStop ? { shouldStop } : {}),
  });
  return { inputs, bands };
}

/** What is not known of a life: how diamond and pads wear, how it is cooled, how strong and how abrasive each bed is. */
function lifeInputs(
  { wearCoefficient, gaugePads }: LifeInput,
  beds: readonly BedCut[],
): Record<string, UncertainInput> {
  const { low, mid, high } = WEAR_COEFFICIENT;
  const factor = (wearCoefficient ?? mid) / mid;
  const ofBeds = beds.flatMap(({ bed, ground }, at) => [
    [strengthOf(at, bed.name), byFactor(ground.confinedStrength)] as const,
    [abrasivityOf(at, bed.name), byFactor(ground.rock.cerchar)] as const,
  ]);
  return {
    [WEAR]: byFactor({ low: factor * low, mid: factor * mid, high: factor * high }),
    [COOLED]: byFactor(COOLING),
    ...(gaugePads ? { [PADS]: byFactor(PAD_FACES[gaugePads.protection].wearMultiple) } : {}),
    ...Object.fromEntries(ofBeds),
  };
}

function lifeSample(
  input: LifeInput,
  beds: readonly BedCut[],
  values: Readonly<Record<string, number>>,
): BandsSample<LifeFigure> {
  const drawn = input.beds.map((bed, at): LifeBed => {
    const { confinedStrength, response } = beds[at].ground;
    // Both stresses stand in the ratio of the strength drawn to the one worked with.
    const share = values[strengthOf(at, bed.name)] / confinedStrength.mid;
    const { specificEnergy, contactStress } = response.mid;
    return {
      ...bed,
      response: {
        ...response.mid,
        specificEnergy: share * specificEnergy,
        contactStress: share * contactStress,
      },
      cerchar: values[abrasivityOf(at, bed.name)],
    };
  });
  const { films } = input;
  const { footage, holes, timeOnBottom, end } = life({
    ...input,
    beds: drawn,
    wearCoefficient: values[WEAR],
    ...(input.gaugePads ? { padWearMultiple: values[PADS] } : {}),
    ...(films ? { films: films.map((film) => cooledBy(film, values[COOLED])) } : {}),
  });
  return {
    figures: { footage, holes, timeOnBottom, meanRate: timeOnBottom > 0 ? footage / timeOnBottom : Number.NaN },
    outcome: end.by,
  };
}
