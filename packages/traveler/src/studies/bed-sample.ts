import {
  advancePerRevolution,
  type Band,
  type BandsSample,
  type BitInRock,
  type CoolingFilm,
  drillAtAdvance,
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
import type { StudiedBed, StudiedBit } from "./studied-beds.ts";

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

/** What is drawn in a bed, each with its band. */
export type BedInputs = Readonly<Partial<Record<BedUncertainty, UncertainInput>>>;

/** How well a fluid cools a cutter against the film that is worked with, low, middle and high [-]. */
export const COOLING: Band = mapBand(FILM_COEFFICIENT_RANGE, (coefficient) => coefficient / FILM_COEFFICIENT_RANGE.mid);

/** What is not known of a bed. Strength, ratios and frictions are known by a factor, the friction angle by a difference. */
export function inputsOf(traveler: ResolvedTraveler, studied: StudiedBit, { cut, limits }: StudiedBed): BedInputs {
  const { rock, confinedStrength } = cut.ground;
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

/** A quantity that is known by a factor; one that may be nothing is known by a difference. */
export function byFactor(band: Band): UncertainInput {
  return { band, law: band.low > 0 ? "log-normal" : "normal" };
}

/** What the flow cleans by the slip methods, where it is what limits the rate and not a figure set by hand. */
function cleaningBand(traveler: ResolvedTraveler, { washed }: StudiedBit, { rate }: RateLimits): Band | undefined {
  const { circuit } = flowStation(traveler, { ...washed, chipSize: USUAL_CHIP_SIZE });
  const ceiling = circuit?.cleaning.rateCeiling;
  return rate !== undefined && ceiling && ceiling.mid === rate && ceiling.low > 0 ? ceiling : undefined;
}

/** The figures of a bed with one set of drawn inputs. */
export function sampleOf(
  { trace, kernel }: Pick<BitInRock, "trace" | "kernel">,
  { cut, limits, heat }: StudiedBed,
  values: Readonly<Record<BedUncertainty, number>>,
): BandsSample<BedFigure> {
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
    kernel,
    rotarySpeed,
    weight,
    limits: { ...withoutWeight(limits), ...(cleans === undefined ? {} : { rate: cleans }) },
    heat: cooledHeat(heat, values["cooling by the fluid"]),
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
      weightForRate: drillAtAdvance({ trace, response, kernel }, wanted).bit.weight,
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

function cooledHeat(heat: HeatConditions, factor: number): HeatConditions {
  const { film } = heat;
  if (!film) return heat;
  return { ...heat, film: "coefficient" in film ? cooledBy(film, factor) : film.map((one) => cooledBy(one, factor)) };
}

/** A film that cools so many times as well. */
export function cooledBy(film: CoolingFilm, factor: number): CoolingFilm {
  return { ...film, coefficient: film.coefficient * factor };
}
