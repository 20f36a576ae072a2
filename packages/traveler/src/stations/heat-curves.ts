import {
  COBALT_TABLE_LIMIT,
  type CoolingFilm,
  type CriticalWeight,
  type CutterFilms,
  type CutterWash,
  type CuttingKernel,
  criticalWeights,
  cutterFilms,
  FILM_COEFFICIENT_RANGE,
  type LifeBed,
  type LifeStep,
  traceEdges,
  usualCoolingFilm,
  WEAR_QUICKENS_TEMPERATURE,
} from "@bitwright/engine";
import type { ResolvedTraveler } from "../document/resolved-traveler.ts";
import type { BitStation } from "./bit-station.ts";
import type { FlowStation } from "./flow-station.ts";

/** The stations that the cooling of the cutters is reckoned from. */
export interface CoolingQuestion {
  readonly bit: Pick<BitStation, "layout" | "ports" | "review">;
  readonly flow: Pick<FlowStation, "circuit" | "flow">;
}

/** Weight against speed at which the hottest cutter reaches a temperature, at one flow. */
export interface HeatCurve {
  /** Temperature reached [K]. */
  readonly temperature: number;
  /** Flow looked at over that of the pump [-]. */
  readonly flowShare: number;
  readonly points: readonly CriticalWeight[];
}

/** The curves of critical weight in the bed that heats most. */
export interface HeatCurves {
  readonly bed: string;
  /** Level wear of every cutter that the curves are drawn for, in eighths of the face [-]. */
  readonly grade: number;
  readonly curves: readonly HeatCurve[];
}

const RPM = (2 * Math.PI) / 60;
const CURVE_RPM = [40, 50, 60, 70, 80, 90, 100, 110, 120, 140, 160, 180, 200] as const;
const CURVE_FLOWS = [1, 0.5] as const;
/** Wear for which the curves of critical weight are drawn: an eighth of every face, still a running bit [-]. */
const CURVE_GRADE = 1;

/** The film of every cutter by the flow in its slot; absent where no liquid is circulated or the slots are not known. */
export function filmsOf(traveler: ResolvedTraveler, question: CoolingQuestion, flowShare = 1): CutterFilms | undefined {
  const { bit, flow } = question;
  const { slotArea, wings } = bit.review.body;
  if (!flow.circuit || slotArea === undefined || !(slotArea > 0)) return undefined;
  const { density, plasticViscosity } = traveler.inquiry.fluid;
  const wash: CutterWash = {
    layout: bit.layout,
    flow: flowShare * flow.flow,
    slotArea,
    wings,
    portCount: bit.ports.count,
    fluid: { density, viscosity: plasticViscosity },
  };
  return cutterFilms(wash);
}

/** The film of every cutter, whether the flow past it is known or not. */
export function coolingOf(traveler: ResolvedTraveler, question: CoolingQuestion): readonly CoolingFilm[] {
  return filmsOf(traveler, question)?.films ?? barelyCooled(question);
}

/** Air, foam, or slots that nobody knows: the low end of what cools a cutter. */
export function barelyCooled({ bit }: CoolingQuestion) {
  return bit.layout.cutters.map(({ faceDiameter }) => ({
    ...usualCoolingFilm(faceDiameter),
    coefficient: FILM_COEFFICIENT_RANGE.low,
  }));
}

/** Critical weight against speed in the bed where the flats of this life got hottest, at full and at half flow. */
export function heatCurvesOf(
  traveler: ResolvedTraveler,
  question: CoolingQuestion,
  {
    beds,
    steps,
    kernel,
  }: {
    readonly beds: readonly LifeBed[];
    readonly steps: readonly LifeStep[];
    readonly kernel?: CuttingKernel | undefined;
  },
): HeatCurves {
  const { layout } = question.bit;
  const hottest = steps.reduce<LifeStep | undefined>(
    (most, step) => (most === undefined || step.hottestTemperature > most.hottestTemperature ? step : most),
    undefined,
  );
  const bed = beds[hottest?.bedIndex ?? 0];
  const cutters = layout.cutters.map((cutter) => ({ ...cutter, wornHeight: (CURVE_GRADE / 8) * cutter.faceDiameter }));
  const trace = traceEdges({ ...layout, cutters });
  const { temperature: fluidTemperature } = traveler.inquiry.fluid;
  const curves = CURVE_FLOWS.flatMap((flowShare) => {
    const film = filmsOf(traveler, question, flowShare)?.films;
    if (!film && flowShare !== 1) return [];
    const heat = { rock: bed.rock, fluidTemperature, film: film ?? barelyCooled(question) };
    return [WEAR_QUICKENS_TEMPERATURE, COBALT_TABLE_LIMIT].map(
      (temperature): HeatCurve => ({
        temperature,
        flowShare,
        points: criticalWeights({
          trace,
          response: bed.response,
          heat,
          temperature,
          kernel,
          rotarySpeeds: CURVE_RPM.map((rpm) => rpm * RPM),
        }),
      }),
    );
  });
  return { bed: bed.name, grade: CURVE_GRADE, curves };
}
