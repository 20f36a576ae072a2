import type { Finding, LifeStep } from "@bitwright/engine";
import {
  endsText,
  holesInWords,
  LIFE_FIGURES,
  LIMIT_SHORT,
  lifeBandText,
  lifeDriversText,
  lifeSheets,
} from "@bitwright/shop";
import {
  formatQuantity,
  type HeatCurves,
  inUnit,
  type LifeBands,
  type LifeFigure,
  type LifeStation,
  lifeBandsInSteps,
  lifeStationInSteps,
  MOST_HOLES,
  type QuantityKind,
  studyJson,
  type UnitSystem,
  USUAL_SEED,
  workUp,
} from "@bitwright/traveler";
import { columns } from "../columns.ts";
import { Complaint } from "../complaint.ts";
import { longWork, STOPPED_EARLY } from "../long-work.ts";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { wholeNumber } from "../whole-number.ts";
import { writeSheets } from "../write-sheets.ts";

/** Options of `bitwright life`. */
export interface LifeCommandOptions {
  readonly holes?: string;
  readonly wear?: string;
  readonly samples?: string;
  readonly seed?: string;
  readonly out?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

const MOST_ASKED = 100_000;
const MOST_SAMPLES = 10_000;
const LARGEST_FACTOR = 1000;
/** Rows of the table, about. */
const ROWS = 20;

/**
 * How far the bit of a traveler goes in its ground; gives the status to end with: 0, or 130 where Ctrl-C stopped it and what
 * follows is what it had by then.
 */
export async function lifeCommand(file: string, options: LifeCommandOptions, terminal: Terminal): Promise<number> {
  const { out, json, units } = options;
  const holes = wholeNumber("--holes", options.holes, MOST_HOLES, 1, MOST_ASKED);
  const wearFactor = wearFactorOf(options.wear);
  const samples = wholeNumber("--samples", options.samples, 0, 1, MOST_SAMPLES);
  const seed = wholeNumber("--seed", options.seed, USUAL_SEED, 0, Number.MAX_SAFE_INTEGER);
  const workup = workUp(readTraveler(file));
  const { result: station, stopped } = await longWork(
    (shouldStop) => lifeStationInSteps(workup.inquiry, workup, { holes, wearFactor, shouldStop }),
    {
      terminal,
      progressLine: ({ footage, holeNumber, outerGrade }) =>
        `life: ${formatQuantity("depth", footage, units, { figures: 3 })} drilled, hole ${holeNumber} of ${holes} at most, outer grade ${outerGrade.toFixed(1)}`,
    },
  );
  const sampled =
    samples === 0 || stopped
      ? { result: undefined, stopped }
      : await longWork((shouldStop) => lifeBandsInSteps(workup, { samples, seed, holes, wearFactor, shouldStop }), {
          terminal,
          progressLine: ({ done, of }) => `life: ${done} of ${of} lives (${Math.round((100 * done) / of)} %)`,
        });
  const spread = sampled.result;
  const wrote = writeSheets(out, () => lifeSheets(workup, station, { units, program: PROGRAM }, spread));
  if (json) terminal.say(studyJson({ ...station, ...(spread ? { spread } : {}) }));
  else {
    terminal.say(lifeText(station, units));
    if (spread) terminal.say(`\n${spreadText(spread, units)}`);
    if (wrote) terminal.say(wrote);
  }
  return sampled.stopped ? STOPPED_EARLY : 0;
}

/** The spread of a life as a table, with what ended the lives. */
function spreadText(spread: LifeBands, units: UnitSystem): string {
  const { samples, asked, seed } = spread.bands;
  const figures = Object.keys(LIFE_FIGURES) as LifeFigure[];
  const lives = samples < asked ? `the ${samples} done of ${asked}` : String(samples);
  return [
    columns(
      ["over what is not known", "P10 / P50 / P90", "driven by"],
      figures.map((figure) => [
        LIFE_FIGURES[figure].name,
        lifeBandText(spread, figure, units),
        lifeDriversText(spread, figure),
      ]),
      [0, 2],
    ),
    `Ended by ${endsText(spread)} of ${lives} lives, seed ${seed}. Wear, cooling, and the strength and abrasivity of every bed are drawn from their bands.`,
  ].join("\n");
}

function wearFactorOf(text: string | undefined): number {
  if (text === undefined) return 1;
  const factor = Number(text);
  if (text.trim() === "" || !(factor >= 1 / LARGEST_FACTOR && factor <= LARGEST_FACTOR)) {
    throw new Complaint([
      `--wear: got "${text}"; give how many times faster than usual the bits come back worn, from ${1 / LARGEST_FACTOR} to ${LARGEST_FACTOR}`,
    ]);
  }
  return factor;
}

function lifeText(station: LifeStation, units: UnitSystem): string {
  const { life, footageBand, heatCurves } = station;
  if (!life) return "No bed of this hole is drilled with this bit.";
  const depth = (si: number, figures = 3) => formatQuantity("depth", si, units, { figures });
  const holes = holesInWords(life);
  const hours = (life.timeOnBottom / 3600).toFixed(0);
  return [
    [
      `${depth(life.footage)} in ${holes}, ${hours} h on bottom.`,
      ...(footageBand && footageBand.high > 1.01 * footageBand.low
        ? [
            `An order of magnitude: ${depth(footageBand.low, 2)} to ${depth(footageBand.high, 2)} over what is known of wear.`,
          ]
        : []),
    ].join("\n"),
    stepTable(station, life.steps, units),
    ...(heatCurves ? [heatText(heatCurves, units)] : []),
    station.findings.map((finding) => remark(finding, units)).join("\n"),
  ].join("\n\n");
}

/** A remark in one line; one that speaks of a footage says which. */
function remark({ severity, where, message, code, value }: Finding, units: UnitSystem): string {
  const since = FROM_FOOTAGE.includes(code) && value !== undefined;
  const at = since ? `, ${formatQuantity("depth", value, units, { figures: 3 })}` : "";
  return `${severity.toUpperCase()} ${where}${at}: ${message}`;
}

/** Codes of the remarks whose figure is a footage. */
const FROM_FOOTAGE: readonly string[] = ["gauge-under-new-tolerance", "pads-hold-gauge", "carbide-rubs"];

function stepTable({ beds }: LifeStation, steps: readonly LifeStep[], units: UnitSystem): string {
  const figure = (kind: QuantityKind, si: number) => formatQuantity(kind, si, units, { figures: 3 });
  return columns(
    [
      "bed",
      "hole",
      "drilled",
      "rate",
      "held by",
      "weight",
      "torque",
      "hottest",
      "inner",
      "outer",
      "gauge lost",
      "hours",
    ],
    shownSteps(steps, beds.length).map((step) => [
      beds[step.bedIndex].name,
      String(step.holeNumber),
      figure("depth", step.footage),
      figure("rate", step.rate),
      LIMIT_SHORT[step.binds],
      formatQuantity("force", step.weight, units),
      figure("torque", step.torque),
      figure("temperature", step.hottestTemperature),
      step.innerGrade.toFixed(2),
      step.outerGrade.toFixed(2),
      figure("length", step.undergauge),
      inUnit("duration", step.timeOnBottom, "h").toFixed(1),
    ]),
  );
}

/** All steps where they are few; else the ends of the beds in some holes, evenly chosen, the first and the last among them. */
function shownSteps(steps: readonly LifeStep[], beds: number): LifeStep[] {
  if (steps.length <= ROWS) return [...steps];
  const ends = steps.filter(
    (step, k) =>
      steps[k + 1] === undefined ||
      steps[k + 1].bedIndex !== step.bedIndex ||
      steps[k + 1].holeNumber !== step.holeNumber,
  );
  const lastHole = ends[ends.length - 1].holeNumber;
  const holes = Math.max(2, Math.floor(ROWS / beds));
  const chosen = new Set(Array.from({ length: holes }, (_, k) => Math.round(1 + (k / (holes - 1)) * (lastHole - 1))));
  return ends.filter(({ holeNumber }) => chosen.has(holeNumber));
}

function heatText({ bed, grade, curves }: HeatCurves, units: UnitSystem): string {
  const figure = (kind: QuantityKind, si: number) => formatQuantity(kind, si, units, { figures: 3 });
  const heads = curves.map(
    ({ temperature, flowShare }) =>
      `${figure("temperature", temperature)}, ${flowShare === 1 ? "full flow" : `${Math.round(100 * flowShare)} % flow`}`,
  );
  const rows = curves[0].points.map(({ rotarySpeed }, k) => [
    figure("rotary speed", rotarySpeed),
    ...curves.map(({ points }) => {
      const { weight } = points[k];
      return weight === undefined ? "-" : figure("force", weight);
    }),
  ]);
  if (curves.every(({ points }) => points.every(({ weight }) => weight === undefined))) {
    const hottest = figure("temperature", Math.min(...curves.map(({ temperature }) => temperature)));
    return `No weight at any speed from ${rows[0][0]} to ${rows[rows.length - 1][0]} gets a cutter to ${hottest} in ${bed} with every cutter worn level to grade ${grade}.`;
  }
  return [
    `Weight at which the hottest cutter gets so hot in ${bed}, every cutter worn level to grade ${grade} (- : no weight gets it so hot):`,
    columns(["rotary", ...heads], rows),
  ].join("\n");
}
