import { derivedFrom, given, type Working } from "../../quantity/index.ts";
import type { FiguredLayout } from "./layout-figures.ts";
import type { EvenMeasure } from "./layout-question.ts";
import type { SolverSetting } from "./solver-setting.ts";

/** What is to be even, in words. */
export const MEASURE_WORDS: Readonly<Record<EvenMeasure, string>> = {
  area: "area of cut",
  work: "cutting work",
  wear: "contact load times radius",
};

/**
 * How the figures of a layout were reached.
 *
 * @source (d) as each working says
 */
export function solverWorkings(setting: SolverSetting, { figures, walls }: FiguredLayout, cutters: number): Working[] {
  const { advances, measure } = setting;
  const at = [
    given("d", "least advance per revolution looked at", Math.min(...advances), "m", "question"),
    given("d'", "largest advance per revolution looked at", Math.max(...advances), "m", "question"),
  ];
  const summed = derivedFrom("loads of the cutters in steady drilling");
  return [
    {
      name: `unevenness of the ${MEASURE_WORDS[measure]}`,
      relation: "u = max over d of √(Σ (x/x̄ - 1)²/n), all cutters but the centre one",
      inputs: [
        given("n", "cutters, the centre one left out", cutters - 1, "-", "layout"),
        given("x/x̄", "largest over the mean", figures.peak, "-", "loads of the cutters"),
        ...at,
      ],
      value: figures.evenness,
      unit: "-",
      source: summed,
    },
    {
      name: "side force as a share of the weight, worst of the advances",
      relation: "f = max over d of |Σ F|/W",
      inputs: at,
      value: figures.imbalance,
      unit: "-",
      source: summed,
    },
    ...walls.working,
    {
      name: "largest port in the narrowest slot",
      relation: "d = min(2 r_c sin(γ/2) - t - 2 w, r_c/2)",
      inputs: [given("d_p", "port that has to fit", setting.portDiameter, "m", "question")],
      value: figures.largestPort,
      unit: "m",
      source: derivedFrom("straight wings on a round core; their sizes are common practice"),
    },
  ];
}
