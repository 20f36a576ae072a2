import { availableParallelism } from "node:os";
import {
  compiledKernel,
  type EvenMeasure,
  type Finding,
  type LayoutQuestion,
  layoutSolver,
  MEASURE_WORDS,
  type SolvedLayout,
  USUAL_CANDIDATES,
} from "@bitwright/engine";
import { layoutSheets } from "@bitwright/shop";
import {
  formatQuantity,
  type LayoutStudy,
  layoutQuestion,
  layoutStudyInSteps,
  layoutStudyOf,
  type UnitSystem,
  USUAL_SEED,
  type Workup,
  workUp,
} from "@bitwright/traveler";
import { columns } from "../columns.ts";
import { Complaint } from "../complaint.ts";
import { longWork, STOPPED_EARLY } from "../long-work.ts";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { wholeNumber } from "../whole-number.ts";
import { canUseThreads, chunksInThreads } from "../workers/chunks-in-threads.ts";
import { writeSheets } from "../write-sheets.ts";

/** Options of `bitwright solve-layout`. */
export interface SolveLayoutOptions {
  readonly measure?: string;
  readonly candidates?: string;
  readonly seed?: string;
  readonly threads?: string;
  readonly out?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

const MEASURES: readonly EvenMeasure[] = ["area", "work", "wear"];
const MOST_CANDIDATES = 10_000_000;
const MOST_THREADS = 64;
/** Milliseconds before the first line of progress, and between lines [ms]. */
const [QUIET, BETWEEN_LINES] = [1000, 2000];

/**
 * Layouts to choose from for the bit of a traveler; gives the status to end with: 0, or 130 where Ctrl-C stopped it and what
 * follows is what it had by then.
 */
export async function solveLayoutCommand(
  file: string,
  options: SolveLayoutOptions,
  terminal: Terminal,
): Promise<number> {
  const { out, json, units } = options;
  const measure = measureOf(options.measure);
  const candidates = wholeNumber("--candidates", options.candidates, USUAL_CANDIDATES, 1, MOST_CANDIDATES);
  const seed = wholeNumber("--seed", options.seed, USUAL_SEED, 0, Number.MAX_SAFE_INTEGER);
  const threads = wholeNumber("--threads", options.threads, availableParallelism(), 1, MOST_THREADS);
  const workup = workUp(readTraveler(file));
  const question = layoutQuestion(workup, { measure, candidates, seed });
  if (!question) {
    throw new Complaint([
      `${file}: bit.kind: the cutters of a measured bit stand where they stand; give the bit as a specification`,
    ]);
  }
  const { study, stopped } = await searched({ workup, question, threads, terminal });
  const wrote = writeSheets(out, () => layoutSheets(workup, study, { units, program: PROGRAM }));
  if (json) terminal.say(JSON.stringify(study, null, 2));
  else {
    terminal.say(studyText(study, units));
    if (wrote) terminal.say(wrote);
  }
  return stopped ? STOPPED_EARLY : 0;
}

interface Search {
  readonly workup: Workup;
  readonly question: LayoutQuestion;
  readonly threads: number;
  readonly terminal: Terminal;
}

/** The search on as many threads as there is work for; on this one alone where that is one. */
async function searched({ workup, question, threads, terminal }: Search) {
  const of = question.candidates ?? USUAL_CANDIDATES;
  const line = (tried: number) =>
    `solve-layout: ${tried.toLocaleString("en-US")} of ${of.toLocaleString("en-US")} layouts (${Math.round((100 * tried) / of)} %)`;
  const solver = layoutSolver(question, compiledKernel());
  const atOnce = Math.min(threads, solver.chunks);
  if (atOnce === 1 || !canUseThreads()) {
    const { result, stopped } = await longWork((shouldStop) => layoutStudyInSteps(workup, question, shouldStop), {
      terminal,
      progressLine: ({ tried }) => line(tried),
    });
    return { study: result, stopped };
  }
  let next = performance.now() + QUIET;
  const underWay = chunksInThreads({
    question,
    chunks: solver.chunks,
    threads: atOnce,
    onProgress: (tried) => {
      if (performance.now() < next) return;
      terminal.complain(line(tried));
      next = performance.now() + BETWEEN_LINES;
    },
  });
  let stopped = false;
  const stop = () => {
    stopped = true;
    process.off("SIGINT", stop);
    underWay.stop();
    terminal.complain("Stopping; what is done so far follows. Ctrl-C once more ends at once.");
  };
  process.on("SIGINT", stop);
  try {
    const results = await underWay.results;
    return { study: layoutStudyOf(workup, question, solver.finish(results)), stopped };
  } finally {
    process.off("SIGINT", stop);
  }
}

function studyText(study: LayoutStudy, units: UnitSystem): string {
  const { solved, question, bed, kept } = study;
  const { choices, best, plain, steadied, tried, measure, findings } = solved;
  const chosen = choices[best];
  const advances = (question.advances ?? []).map((one) => formatQuantity("advance", one, units, { figures: 3 }));
  return [
    `Layouts by unevenness of the ${MEASURE_WORDS[measure]} and by side force, in ${bed ?? "shale"}${advances.length > 0 ? ` at ${advances.join(" and ")}, the worst counted` : ""}.`,
    columns(
      ["layout", "unevenness", "largest", "side force", "thinnest wall", "uncut", "largest port", "keeps all"],
      [
        tableRow("plain generator", plain, units),
        tableRow("plain, steadiest wings", steadied, units),
        ...choices.map((one, at) => tableRow(at === best ? `${at + 1} (best compromise)` : String(at + 1), one, units)),
      ],
    ),
    ...(chosen ? [chosenText(best, chosen, units)] : []),
    ...(kept.length > 0 ? [`Left as the traveler has it: ${kept.join(", ")}.`] : []),
    ...remarks(findings, chosen),
    `${tried.toLocaleString("en-US")} layouts tried, seed ${question.seed ?? 0}.`,
  ].join("\n\n");
}

function tableRow(name: string, { figures, sound }: SolvedLayout, units: UnitSystem): string[] {
  const length = (si: number) => formatQuantity("length", si, units, { figures: 3 });
  const share = (si: number) => `${(100 * si).toFixed(1)} %`;
  return [
    name,
    share(figures.evenness),
    `${figures.peak.toFixed(2)} x mean`,
    share(figures.imbalance),
    length(figures.thinnestWall),
    figures.uncutWidth > 0 ? length(figures.uncutWidth) : "none",
    length(figures.largestPort),
    sound ? "yes" : "no",
  ];
}

/** The chosen layout in the terms of the shop: wings, sweep, rakes, which cutters stand on which wing. */
function chosenText(best: number, { plan, bit }: SolvedLayout, units: UnitSystem): string {
  const angle = (si: number) => `${((si * 180) / Math.PI).toFixed(1)}°`;
  const shifts = Object.entries(plan.rakeShifts).filter(([, shift]) => shift !== 0);
  const rakes =
    shifts.length === 0
      ? "back rakes as scheduled"
      : `back rake ${shifts.map(([zone, shift]) => `${shift > 0 ? "+" : "-"}${angle(Math.abs(shift))} on the ${zone}`).join(", ")}`;
  const wings = bit.wingAngles.map((wing, at) => {
    const on = bit.places.filter((place) => place.wing === at + 1);
    const cutters = on.map(({ number, tipRadius, role }) => {
      const radius = formatQuantity("length", tipRadius, units, { figures: 4 });
      return `${number} at ${radius}${role === "face" ? "" : ` (${role})`}`;
    });
    return `wing ${at + 1} at ${angle(wing)}: ${cutters.join(", ")}`;
  });
  return [
    `Layout ${best + 1}, nearest to no unevenness and no side force at once, each measured against the better plain layout:`,
    `sweep ${angle(plan.sweep)}, ${rakes}; cutters by the radius of their tips:`,
    ...wings,
  ].join("\n");
}

/** What the search and the chosen layout do not meet, one line each. */
function remarks(findings: readonly Finding[], chosen: SolvedLayout | undefined): string[] {
  const lines = [...findings, ...(chosen?.findings ?? [])].map(
    ({ severity, where, message }) => `${severity.toUpperCase()} ${where}: ${message}`,
  );
  return lines.length > 0 ? [lines.join("\n")] : [];
}

function measureOf(text: string | undefined): EvenMeasure {
  if (text === undefined) return "area";
  const found = MEASURES.find((measure) => measure === text);
  if (!found) throw new Complaint([`--measure: got "${text}"; give ${MEASURES.join(", ")}`]);
  return found;
}
