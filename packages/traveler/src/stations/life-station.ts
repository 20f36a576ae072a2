import {
  type Band,
  band,
  COBALT_TABLE_LIMIT,
  type CutterFilms,
  type CuttingKernel,
  compiledKernel,
  derivedFrom,
  type Finding,
  type GaugePads,
  given,
  gravestFirst,
  LEACHED_TABLE_LIMIT,
  type Life,
  type LifeBed,
  type LifeInput,
  type LifeLimits,
  type LifeStep,
  life,
  lifeLimitsOf,
  lifeMarch,
  lifeOf,
  runToEnd,
  WEAR_COEFFICIENT,
  type Working,
} from "@bitwright/engine";
import type { ResolvedTraveler } from "../document/resolved-traveler.ts";
import type { AdviceStation } from "./advice-station.ts";
import type { BitStation } from "./bit-station.ts";
import { type BedCut, type CutStation, limitsOf, rockHeatOf } from "./cut-station.ts";
import { cleaningRate, type FlowStation, washedBit } from "./flow-station.ts";
import { barelyCooled, filmsOf, type HeatCurves, heatCurvesOf } from "./heat-curves.ts";

/** The stations that a life is reckoned from. */
export interface LifeQuestion {
  readonly advice: AdviceStation;
  readonly bit: BitStation;
  readonly cut: CutStation;
  readonly flow: FlowStation;
}

/** How to reckon a life. */
export interface LifeOptions {
  /** Holes through the same beds at most [-]; `MOST_HOLES` where not given. */
  readonly holes?: number;
  /** Wear against what the program takes, as bits that came back have shown [-]; 1 where not given. */
  readonly wearFactor?: number;
  /** Asked after every stretch; true ends the life with what it has. */
  readonly shouldStop?: () => boolean;
  /** Whether to draw the curves of critical weight, which the life itself does not ask for; yes where not given. */
  readonly curves?: boolean;
  /** What runs the loops; a kernel of its own where none is named. No figure depends on it. */
  readonly kernel?: CuttingKernel | undefined;
}

/** How far a bit goes in this ground. */
export interface LifeStation {
  /** The beds that the bit drills, as the march takes them; empty where it drills none. */
  readonly beds: readonly LifeBed[];
  /** Holes asked for at most [-]. */
  readonly holes: number;
  /** What ends a life. */
  readonly limits: LifeLimits;
  /** Absent where the bit drills nothing of the hole. */
  readonly life?: Life;
  /** Footage over the band of the wear coefficient [m]; absent without a life. */
  readonly footageBand?: Band;
  readonly films?: CutterFilms;
  readonly heatCurves?: HeatCurves;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** Holes after which a bit that nothing has ended is let go where nobody asks for another number [-]. */
export const MOST_HOLES = 1000;

/** Works the life up at one go. */
export function lifeStation(
  traveler: ResolvedTraveler,
  question: LifeQuestion,
  options: LifeOptions = {},
): LifeStation {
  return runToEnd(lifeStationInSteps(traveler, question, options));
}

/** The same a stretch at a time, for a caller that has to look after other things between the stretches. */
export function* lifeStationInSteps(
  traveler: ResolvedTraveler,
  question: LifeQuestion,
  { shouldStop = () => false, curves = true, ...asked }: LifeOptions = {},
): Generator<LifeStep, LifeStation, void> {
  const { input, limits, films } = lifeQuestion(traveler, question, asked);
  const { beds, holes = MOST_HOLES, kernel } = input;
  if (beds.length === 0) return { beds, holes, limits, findings: [], working: [] };
  const march = lifeMarch(input);
  let step = march.next();
  while (!step.done) {
    yield step.value;
    step = march.next(shouldStop());
  }
  const lived = lifeOf(input, step.value);
  const spread = footageBandOf(input, lived);
  const heatCurves = curves ? heatCurvesOf(traveler, question, { beds, steps: lived.steps, kernel }) : undefined;
  return {
    beds,
    holes,
    limits,
    life: lived,
    footageBand: spread.value,
    ...(films ? { films } : {}),
    ...(heatCurves ? { heatCurves } : {}),
    findings: gravestFirst([...lived.findings, ...(films?.findings ?? [])]),
    working: [...lived.working, ...spread.working, ...(films?.working ?? [])],
  };
}

/** What the engine is asked for a life, with what ends it and the cooling it comes from. */
export function lifeQuestion(
  traveler: ResolvedTraveler,
  question: LifeQuestion,
  { holes = MOST_HOLES, wearFactor = 1, kernel = compiledKernel() }: Omit<LifeOptions, "curves" | "shouldStop"> = {},
): { readonly input: LifeInput; readonly limits: LifeLimits; readonly films?: CutterFilms } {
  const tableLimit = isLeached(traveler, question) ? LEACHED_TABLE_LIMIT : COBALT_TABLE_LIMIT;
  const films = filmsOf(traveler, question);
  const gaugePads = gaugePadsOf(traveler, question);
  return {
    input: {
      layout: question.bit.layout,
      beds: lifeBeds(traveler, question),
      holes,
      fluidTemperature: traveler.inquiry.fluid.temperature,
      films: films?.films ?? barelyCooled(question),
      exposure: question.bit.review.body.exposure,
      tableLimit,
      kernel,
      ...(gaugePads ? { gaugePads } : {}),
      ...(wearFactor === 1 ? {} : { wearCoefficient: wearFactor * WEAR_COEFFICIENT.mid }),
    },
    limits: lifeLimitsOf({ tableLimit }),
    ...(films ? { films } : {}),
  };
}

/** The beds as they are run: the weight the driller may go to, the limits that hold the rate before it. */
function lifeBeds(traveler: ResolvedTraveler, { advice, bit, cut }: LifeQuestion): LifeBed[] {
  const ceiling = cleaningRate(traveler, washedBit(advice, bit));
  const common = {
    exposure: bit.review.body.leastExposure,
    ...(ceiling === undefined ? {} : { cleaningRate: ceiling }),
  };
  return cut.beds.map((one): LifeBed => {
    const { torque, power, rate, weight } = limitsOf(traveler, common, one);
    return {
      name: one.bed.name,
      top: one.bed.top,
      bottom: one.bed.bottom,
      response: one.ground.response.mid,
      cerchar: one.ground.rock.cerchar.mid,
      rock: rockHeatOf(one.ground),
      weight: weightAsFlatsGrow(traveler, one, weight ?? one.weight),
      rotarySpeed: one.rotarySpeed,
      limits: {
        ...(torque === undefined ? {} : { torque }),
        ...(power === undefined ? {} : { power }),
        ...(rate === undefined ? {} : { rate }),
      },
    };
  });
}

/**
 * The most weight the driller puts on as the cutters wear: where a sharp bit is held by its wings, the flow or the rotary, a
 * driller adds weight as the rate falls, up to the rule of thumb and what rig and string give. A weight set by hand stays.
 */
function weightAsFlatsGrow({ overrides }: ResolvedTraveler, { run, weight }: BedCut, available: number): number {
  const { binds } = run.computed;
  if (overrides.weight !== undefined || binds === "weight" || binds === "contactTemperature") return weight;
  return Math.max(weight, Math.min(run.practice.weight, available));
}

/**
 * The gauge pads as ordered or as the rules choose them; of a measured bit as far as they are known, and hardfaced where nobody
 * says what is on them. None where they have no length or the wings are not known.
 */
function gaugePadsOf({ bit }: ResolvedTraveler, { advice, bit: { review } }: LifeQuestion): GaugePads | undefined {
  const rule = advice.bit.gauge.value;
  const length = bit.gaugeLength ?? (bit.kind === "spec" ? rule.padLength : 0);
  const protection = bit.gaugeProtection ?? (bit.kind === "spec" ? rule.protection : "hardfacing");
  const { wings, wingThickness } = review.body;
  return length > 0 && wings > 0 ? { count: wings, length, width: wingThickness, protection } : undefined;
}

function isLeached({ bit }: ResolvedTraveler, { advice }: LifeQuestion): boolean {
  return bit.kind === "spec" && (bit.leached ?? advice.bit.leached.value);
}

/**
 * Footage at the ends of the coefficient's band. The march sees coefficient and way only as a product, so that in one bed ten
 * times the coefficient goes just a tenth as far; through many beds nearly. A life that wear did not end is marched again at
 * the fast end, where wear may.
 */
function footageBandOf(input: LifeInput, { footage, end }: Life): { value: Band; working: Working[] } {
  const { low, mid, high } = WEAR_COEFFICIENT;
  const coefficient = input.wearCoefficient ?? mid;
  const worn = end.by !== "holes drilled" && end.by !== "stopped";
  const scaled = (side: "low" | "high") => (footage * mid) / WEAR_COEFFICIENT[side];
  const short = worn ? scaled("high") : life({ ...input, wearCoefficient: (coefficient * high) / mid }).footage;
  const value = band(Math.min(short, footage), footage, worn ? scaled("low") : footage);
  const byScale = (name: string, side: "low" | "high", share: number, of: number): Working => ({
    name: `${name} life over the band of the wear coefficient`,
    relation: `L(k_${side}) = L k/k_${side}`,
    inputs: [
      given("L", "hole drilled", footage, "m", "working: hole drilled by the bit"),
      given("k", "wear coefficient", coefficient, "m²/N", "wear coefficient"),
      given(`k_${side}`, "wear coefficient", coefficient * share, "m²/N", "band, no source"),
    ],
    value: of,
    unit: "m",
    source: derivedFrom("footage scaled, not marched: coefficient and way count only as a product"),
  });
  if (worn) {
    return {
      value,
      working: [byScale("shortest", "high", high / mid, value.low), byScale("longest", "low", low / mid, value.high)],
    };
  }
  return {
    value,
    working: [
      {
        name: "shortest life over the band of the wear coefficient",
        relation: "L(k_high), the same march",
        inputs: [given("k_high", "wear coefficient", (coefficient * high) / mid, "m²/N", "band, no source")],
        value: value.low,
        unit: "m",
        source: derivedFrom("the march at the high end of the band of the wear coefficient"),
      },
    ],
  };
}
