import {
  compiledKernel,
  type EvenMeasure,
  type LayoutQuestion,
  runToEnd,
  type SolvedLayouts,
  solveLayoutInSteps,
  USUAL_CANDIDATES,
} from "@bitwright/engine";
import type { ResolvedBitSpec } from "../document/resolved-traveler.ts";
import { bitOrder } from "../stations/bit-order.ts";
import type { BedCut } from "../stations/cut-station.ts";
import type { Workup } from "../workup.ts";
import { USUAL_SEED } from "./bands-study.ts";

/** What to look for. */
export interface LayoutStudyOptions {
  /** What is to be even over the cutters; the area of cut where not given. */
  readonly measure?: EvenMeasure;
  /** Layouts to try [-]; 20,000 where not given. */
  readonly candidates?: number;
  /** Any whole number from 0; the same one finds the same layouts [-]; 1 where not given. */
  readonly seed?: number;
}

/** Layouts for the bit of a traveler to choose from. */
export interface LayoutStudy {
  readonly question: LayoutQuestion;
  /** The bed it was judged in; absent where the bit drills none, and then in shale. */
  readonly bed?: string;
  /** What the traveler names and the search therefore left alone, in words. */
  readonly kept: readonly string[];
  readonly solved: SolvedLayouts;
}

/** How far a search has come. */
export interface LayoutStudyProgress {
  /** Layouts tried [-]. */
  readonly tried: number;
  /** Layouts asked for [-]. */
  readonly of: number;
}

/** Share of the least advance that is looked at as well [-]. */
const EASED = 1 / 3;

/**
 * The question that a workup's bit asks, as plain data that can be handed to another thread. Nothing for a measured bit: its
 * cutters stand where they stand.
 *
 * It is judged in the bed that keeps the bit longest, at the largest advance of all beds and at a third of the least, as where
 * the driller eases off; what the traveler names is left as it is.
 */
export function layoutQuestion(workup: Workup, options: LayoutStudyOptions = {}): LayoutQuestion | undefined {
  const { inquiry: traveler, advice, bit, cut } = workup;
  if (traveler.bit.kind !== "spec") return undefined;
  const { spec } = bitOrder(traveler.bit, advice.bit, traveler);
  const longest = longestBed(cut.beds);
  const advances = cut.beds.map(({ drilling }) => drilling.advance).filter((advance) => advance > 0);
  return {
    spec,
    measure: options.measure ?? "area",
    seed: options.seed ?? USUAL_SEED,
    candidates: options.candidates ?? USUAL_CANDIDATES,
    portDiameter: bit.ports.diameter,
    freedom: {
      ...(traveler.bit.sweep === undefined ? {} : { sweep: 0 }),
      ...(traveler.bit.backRake === undefined ? {} : { rake: 0 }),
    },
    ...(longest ? { response: longest.ground.response.mid } : {}),
    ...(advances.length > 0 ? { advances: [EASED * Math.min(...advances), Math.max(...advances)] } : {}),
  };
}

/** What a question has come to, with the words that go with it. */
export function layoutStudyOf(workup: Workup, question: LayoutQuestion, solved: SolvedLayouts): LayoutStudy {
  const { bit } = workup.inquiry;
  const longest = longestBed(workup.cut.beds);
  return {
    question,
    ...(longest ? { bed: longest.bed.name } : {}),
    kept: bit.kind === "spec" ? keptWords(bit) : [],
    solved,
  };
}

/** A whole search; nothing for a measured bit. */
export function layoutStudy(
  workup: Workup,
  options: LayoutStudyOptions & {
    /** Told now and then. */
    readonly progress?: (at: LayoutStudyProgress) => void;
    /** Asked now and then; true ends the search with what it has. */
    readonly shouldStop?: () => boolean;
  } = {},
): LayoutStudy | undefined {
  const question = layoutQuestion(workup, options);
  if (!question) return undefined;
  return runToEnd(layoutStudyInSteps(workup, question, options.shouldStop), options.progress);
}

/** The same with pauses, for a caller that has to look after other things in between. */
export function* layoutStudyInSteps(
  workup: Workup,
  question: LayoutQuestion,
  shouldStop?: () => boolean,
): Generator<LayoutStudyProgress, LayoutStudy, void> {
  const of = question.candidates ?? USUAL_CANDIDATES;
  const steps = solveLayoutInSteps(question, shouldStop, compiledKernel());
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield { tried: step.value, of };
  return layoutStudyOf(workup, question, step.value);
}

/** The bed that takes the bit longest to drill. */
function longestBed(beds: readonly BedCut[]): BedCut | undefined {
  const time = ({ bed, drilling }: BedCut) => (bed.bottom - bed.top) / drilling.rate;
  return beds.reduce<BedCut | undefined>(
    (longest, bed) => (longest && time(longest) >= time(bed) ? longest : bed),
    undefined,
  );
}

function keptWords({ sweep, backRake }: ResolvedBitSpec): string[] {
  return [...(sweep === undefined ? [] : ["sweep of the wings"]), ...(backRake === undefined ? [] : ["back rakes"])];
}
