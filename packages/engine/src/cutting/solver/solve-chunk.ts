import type { LayoutPlan } from "../../bit/index.ts";
import { USUAL_CELL_WIDTH } from "../trace-edges.ts";
import { copied, planOf } from "./candidate.ts";
import { type ScoredCandidate, type Scorer, scorer } from "./candidate-score.ts";
import { drawnMove } from "./moves.ts";
import { paretoList, type TwoAims, thinnedList } from "./pareto-list.ts";
import { randomSource } from "./random-source.ts";
import type { SolverSetting } from "./solver-setting.ts";

/** A layout that a chunk of the search has found. Plain data. */
export interface FoundPlan extends TwoAims {
  readonly plan: LayoutPlan;
  /** What it lacks of covering and of its walls, 0 where it keeps both [-]. */
  readonly lack: number;
}

/** What one chunk of a search has found. Plain data, to be handed from thread to thread. */
export interface ChunkResult {
  /** Number of the chunk, from 0 [-]. */
  readonly chunk: number;
  /** Candidates tried [-]. */
  readonly tried: number;
  readonly stopped: boolean;
  /** Those that cover the hole and keep their walls and that no other betters; else the one that lacks least. */
  readonly found: readonly FoundPlan[];
}

/**
 * Radial cells while a search is warm [-]. On them side force is out by up to a few hundredths of the weight, evenness by a
 * hundredth: enough to find the way, not to settle it.
 *
 * @source (d) compared with the usual grid on random layouts of the demo bits, see docs/guide/checks.md
 */
const WARM_CELLS = 160;

/** Share of a chunk after which it goes on on the usual grid, where what it finds holds [-]: (d) our choice. */
const WARM_SHARE = 0.6;
/** Candidates of one chunk, about [-]: (d) our choice; shorter ones end before they have cooled well. */
const CHUNK_CANDIDATES = 5_000;
/** What a side force of the whole weight counts beside evenness, chunk after chunk [-]: (d) our choice. */
const IMBALANCE_WEIGHTS = [0.3, 0.6, 0.15] as const;
/** Worsening taken at odds of 1 in e at the start and at the end of a chunk, in units of evenness [-]: (d) our choice. */
const [HOT, COLD] = [0.1, 1e-3];
/** Moves drawn for each candidate at most, so that a bit with nothing to move ends [-]. */
const MOST_DRAWS = 50;
/** Candidates between two pauses [-]. */
const PAUSE_EVERY = 100;
/** Most plans that a chunk hands on [-]. */
const MOST_FOUND = 24;

/**
 * How many chunks a search falls into.
 *
 * @returns number of chunks [-]
 * @source (d) our choice
 * @example
 * chunksOfSearch(20000) // → 4
 */
export function chunksOfSearch(candidates: number): number {
  return Math.max(1, Math.round(candidates / CHUNK_CANDIDATES));
}

/** What the chunks of one thread work with, each face traced once for all of them. */
export interface ChunkWork {
  readonly setting: SolverSetting;
  /** Scores on the grid of a warm search. */
  readonly warm: Scorer;
  /** Scores on the usual grid. */
  readonly settled: Scorer;
}

/**
 * Makes a setting ready to be searched.
 *
 * @source (d) bookkeeping, no relation
 */
export function chunkWork(setting: SolverSetting): ChunkWork {
  const usualCells = Math.round(setting.holeRadius / USUAL_CELL_WIDTH);
  return { setting, warm: scorer(setting, WARM_CELLS), settled: scorer(setting, Math.max(usualCells, WARM_CELLS)) };
}

/**
 * One chunk of a search: a candidate is moved at random over and over; a better one is taken, a worse one at odds
 * exp(-Δ/T) that fall as T sinks. It depends on setting and number of the chunk alone, so chunks may run anywhere, in any
 * order, and their lists be merged. It starts on a coarse grid and settles on the usual one. Now and then it pauses and
 * tells how many candidates it has tried.
 *
 * @source (b) Kirkpatrick, Gelatt & Vecchi 1983, Science 220:671, recalled; the schedule is our choice
 */
export function* chunkInSteps(
  { setting, warm, settled }: ChunkWork,
  chunk: number,
  shouldStop?: () => boolean,
): Generator<number, ChunkResult, void> {
  const { seed, start, candidates } = setting;
  const chunks = chunksOfSearch(candidates);
  const budget = Math.floor((candidates * (chunk + 1)) / chunks) - Math.floor((candidates * chunk) / chunks);
  const random = randomSource({ seed, row: chunk });
  const imbalanceWeight = IMBALANCE_WEIGHTS[chunk % IMBALANCE_WEIGHTS.length];
  let score = warm;
  const first = score(start, { imbalanceWeight });
  // Without a sound start there is nothing to move: the plain generator has failed, and says so itself.
  if (!first) return { chunk, tried: 1, stopped: false, found: [] };
  let here = first;
  let least = first;
  let front: readonly ScoredCandidate[] = first.lack > 0 ? [] : [first];
  let tried = 1;
  let stopped = false;
  for (let draws = 0; tried < budget && draws < MOST_DRAWS * budget; draws++) {
    const candidate = copied(here.candidate);
    const moved = drawnMove(random)(candidate, setting, random);
    if (!moved) continue;
    if (score === warm && tried > WARM_SHARE * budget) {
      score = settled;
      here = score(here.candidate, { imbalanceWeight }) ?? here;
      front = here.lack > 0 ? [] : [here];
    }
    tried++;
    const warmth = HOT * (COLD / HOT) ** (tried / budget);
    const limit = here.score - warmth * Math.log(random.share());
    const next = score(candidate, { imbalanceWeight, from: { walls: here.walls, moved }, limit });
    if (next && next.score <= limit) {
      here = next;
      if (next.lack < least.lack) least = next;
      if (next.lack === 0) front = widened(front, next);
    }
    if (tried % PAUSE_EVERY === 0) {
      yield tried;
      if (shouldStop?.()) {
        stopped = true;
        break;
      }
    }
  }
  yield tried;
  const found = front.length > 0 ? thinnedList(front, MOST_FOUND) : [least];
  return {
    chunk,
    tried,
    stopped,
    found: found.map(({ candidate, evenness, imbalance, lack }) => ({
      plan: planOf(candidate),
      evenness,
      imbalance,
      lack,
    })),
  };
}

/** The list with one more, where no other betters it. */
function widened(front: readonly ScoredCandidate[], next: ScoredCandidate): readonly ScoredCandidate[] {
  if (front.some(({ evenness, imbalance }) => evenness <= next.evenness && imbalance <= next.imbalance)) return front;
  return paretoList([...front, next]);
}
