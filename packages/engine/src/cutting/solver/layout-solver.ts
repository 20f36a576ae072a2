import { type GeneratedBit, generateLayout, type LayoutPlan, plannedBit, planOfBit } from "../../bit/index.ts";
import { type Finding, gravestFirst, runToEnd, type Working } from "../../quantity/index.ts";
import type { CuttingKernel } from "../cutting-kernel.ts";
import { sideForceJudge } from "../side-force-judge.ts";
import { figuredLayout, type LayoutFigures } from "./layout-figures.ts";
import type { EvenMeasure, LayoutQuestion, SearchWatch } from "./layout-question.ts";
import { bestCompromise, paretoList, thinnedList } from "./pareto-list.ts";
import { type ChunkResult, chunkInSteps, chunksOfSearch, chunkWork } from "./solve-chunk.ts";
import { bitFindings, searchFindings, unmetFindings } from "./solver-findings.ts";
import { type SolverSetting, solverSetting } from "./solver-setting.ts";
import { solverWorkings } from "./solver-workings.ts";

/** A layout with its figures, and what it does not meet. */
export interface SolvedLayout {
  readonly plan: LayoutPlan;
  readonly bit: GeneratedBit;
  readonly figures: LayoutFigures;
  /** Whether it covers the hole and keeps every wall. */
  readonly sound: boolean;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** What a search has come to. */
export interface SolvedLayouts {
  readonly measure: EvenMeasure;
  /** Layouts to choose from, none bettered by another in both evenness and side force: the most even first. */
  readonly choices: readonly SolvedLayout[];
  /** The best compromise, by its place among the choices from 0 [-]. */
  readonly best: number;
  /** The plain generator's layout, its wings in the order it finds steadiest by itself. */
  readonly plain: SolvedLayout;
  /** The plain generator's layout, its wings in the order with the least side force. */
  readonly steadied: SolvedLayout;
  /** Candidates tried [-]. */
  readonly tried: number;
  readonly findings: readonly Finding[];
}

/** A search made ready, to be run chunk by chunk on any thread. */
export interface LayoutSolver {
  /** Chunks the search falls into [-]. */
  readonly chunks: number;
  /** Runs one chunk, by its number from 0. */
  readonly run: (chunk: number, watch?: SearchWatch) => ChunkResult;
  /** The same with pauses, each telling the candidates tried in this chunk. */
  readonly runInSteps: (chunk: number, shouldStop?: () => boolean) => Generator<number, ChunkResult, void>;
  /** Merges what chunks have found and confirms it on the usual grid; chunks that were not run are left out. */
  readonly finish: (results: readonly ChunkResult[]) => SolvedLayouts;
}

/** Most layouts to choose from [-]: (d) our choice. */
const MOST_CHOICES = 12;
/** Layouts that are confirmed on the usual grid, of which some then turn out bettered [-]: (d) our choice. */
const MOST_CONFIRMED = 24;

/**
 * A search for layouts in which the chosen measure is even over the cutters and the side force small, every radius cut,
 * every wall and port kept.
 *
 * The result depends on the question alone, seed included, and not on the order or the thread that its chunks run in.
 *
 * @throws RangeError when the specification or a number of the question is not sound
 * @source (d) search over the sums of `engage` and `edgeLoads`, see docs/decisions, layout solver
 */
export function layoutSolver(
  question: LayoutQuestion,
  /** What runs the loops for the layouts that are confirmed; the plain kernel where none is named. */
  kernel?: CuttingKernel,
): LayoutSolver {
  const setting = solverSetting(question);
  const work = chunkWork(setting);
  return {
    chunks: chunksOfSearch(setting.candidates),
    run: (chunk, { onProgress, shouldStop } = {}) => runToEnd(chunkInSteps(work, chunk, shouldStop), onProgress),
    runInSteps: (chunk, shouldStop) => chunkInSteps(work, chunk, shouldStop),
    finish: (results) => solvedLayouts(setting, results, kernel),
  };
}

/**
 * Runs a whole search, one chunk after the other.
 *
 * @throws RangeError when the specification or a number of the question is not sound
 * @source (d) search over the sums of `engage` and `edgeLoads`, see docs/decisions, layout solver
 */
export function solveLayout(question: LayoutQuestion, { onProgress, shouldStop }: SearchWatch = {}): SolvedLayouts {
  return runToEnd(solveLayoutInSteps(question, shouldStop), onProgress);
}

/**
 * The same with pauses, for a caller that has to look after other things; each tells the candidates tried so far.
 *
 * @throws RangeError when the specification or a number of the question is not sound
 * @source (d) search over the sums of `engage` and `edgeLoads`, see docs/decisions, layout solver
 */
export function* solveLayoutInSteps(
  question: LayoutQuestion,
  shouldStop?: () => boolean,
  kernel?: CuttingKernel,
): Generator<number, SolvedLayouts, void> {
  const solver = layoutSolver(question, kernel);
  const results: ChunkResult[] = [];
  let before = 0;
  for (let chunk = 0; chunk < solver.chunks && !shouldStop?.(); chunk++) {
    const steps = solver.runInSteps(chunk, shouldStop);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield before + step.value;
    results.push(step.value);
    before += step.value.tried;
  }
  return solver.finish(results);
}

function solvedLayouts(
  setting: SolverSetting,
  results: readonly ChunkResult[],
  kernel: CuttingKernel | undefined,
): SolvedLayouts {
  const solved = (plan: LayoutPlan, bit: GeneratedBit) => solvedLayout(setting, { plan, bit, kernel });
  const { spec, stock, plain } = setting;
  // The order in which chunks came in must not show.
  const found = [...results].sort((a, b) => a.chunk - b.chunk).flatMap((result) => result.found);
  const keeping = found.filter(({ lack }) => lack === 0);
  const lackingLeast = [...found].sort((a, b) => a.lack - b.lack).slice(0, 1);
  const plainLayout = solved(planOfBit(spec, plain, stock), plain);
  // As everywhere else, by the usual judge: the bit that a workup lays out is this one.
  const judged = generateLayout(spec, sideForceJudge({ kernel }));
  const steadied = solved(planOfBit(spec, judged, stock), judged);
  const confirmed = (keeping.length > 0 ? thinnedList(keeping, MOST_CONFIRMED) : lackingLeast).map(({ plan }) =>
    solved(plan, plannedBit(spec, plan, stock)),
  );
  // What the plain generator has found is there to choose as well, so that no list is worse than it.
  const sound = [...confirmed, plainLayout, steadied].filter((one) => one.sound);
  const choices = (
    sound.length > 0 ? thinnedList(sound.map(asAims), MOST_CHOICES) : paretoList(confirmed.map(asAims))
  ).map(({ of }) => of);
  const bettered = {
    evenness: Math.min(plainLayout.figures.evenness, steadied.figures.evenness),
    imbalance: Math.min(plainLayout.figures.imbalance, steadied.figures.imbalance),
  };
  const best = bestCompromise(choices.map(asAims), bettered);
  const tried = results.reduce((sum, result) => sum + result.tried, 0);
  const stopped = results.some((result) => result.stopped) || results.length < chunksOfSearch(setting.candidates);
  const course = { tried, asked: setting.candidates, stopped, sound: sound.length > 0 };
  return {
    measure: setting.measure,
    choices,
    best: best ? choices.indexOf(best.of) : 0,
    plain: plainLayout,
    steadied,
    tried,
    findings: searchFindings(
      course,
      choices.map(({ figures }) => figures),
      [plainLayout.figures, steadied.figures],
    ),
  };
}

function asAims(of: SolvedLayout) {
  const { evenness, imbalance } = of.figures;
  return { evenness, imbalance, of };
}

function solvedLayout(
  setting: SolverSetting,
  {
    plan,
    bit,
    kernel,
  }: { readonly plan: LayoutPlan; readonly bit: GeneratedBit; readonly kernel: CuttingKernel | undefined },
): SolvedLayout {
  const figured = figuredLayout(setting, bit, kernel);
  const { figures, walls } = figured;
  const unmet = unmetFindings(setting, bit, figured);
  const sound =
    figures.uncutWidth === 0 &&
    walls.findings.length === 0 &&
    unmet.every(({ code }) => code !== "faces-far-apart" && code !== "past-gauge");
  return {
    plan,
    bit,
    figures,
    sound,
    findings: gravestFirst([...unmet, ...bitFindings(bit)]),
    working: solverWorkings(setting, figured, bit.layout.cutters.length),
  };
}
