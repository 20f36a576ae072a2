import { sweptAzimuth } from "../../bit/index.ts";
import { type Candidate, facesOf } from "./candidate.ts";
import { coverShortfall } from "./candidate-cover.ts";
import { type CandidateCut, candidateSum } from "./candidate-cut.ts";
import { type WallShortfalls, type WallsBefore, wallShortfalls } from "./candidate-walls.ts";
import { cutLines } from "./cut-line.ts";
import type { SolverSetting } from "./solver-setting.ts";

/** A candidate with what it was found to be worth. */
export interface ScoredCandidate extends CandidateCut {
  readonly candidate: Candidate;
  readonly walls: WallShortfalls;
  /** What it lacks of covering and of its walls, in units of evenness; 0 where it keeps both [-]. */
  readonly lack: number;
  /** Evenness, weighed imbalance and lack together: the less the better [-]. */
  readonly score: number;
}

/** How a candidate is scored. */
interface Scoring {
  /** What a side force of the whole weight counts beside evenness [-]. */
  readonly imbalanceWeight: number;
  /** The walls it had before, and the cutters moved since; left out, all are looked at. */
  readonly from?: WallsBefore;
  /** Score at which the candidate is of no more interest [-]. */
  readonly limit?: number;
}

/** Scores one candidate after the other; nothing where the score passes the limit or a face reaches past the hole. */
export type Scorer = (candidate: Candidate, scoring: Scoring) => ScoredCandidate | undefined;

/** What a whole face of missing cover counts [-]: (d) our choice, so that half a millimetre outweighs all evenness. */
const COVER_WEIGHT = 20;
/** What a whole wall missing counts [-]: (d) our choice, likewise. */
const WALL_WEIGHT = 10;
/** Reach past the hole radius that is rounding [m]. */
const GAUGE_SLACK = 1e-9;

/**
 * A scorer on a grid of so many cells. What costs least comes first: cover, then the cut, and the walls of moved cutters
 * only for candidates that would be taken without them, for a lack can only add.
 *
 * @source (d) weighed sum; the weights are our choice
 */
export function scorer(setting: SolverSetting, cells: number): Scorer {
  const { stock, spec, holeRadius, mostApart } = setting;
  const sum = candidateSum(setting, cutLines(setting, cells), cells);
  const azimuths = new Float64Array(setting.start.role.length);
  const { faceDiameter } = spec.cutter;
  return (candidate, { imbalanceWeight, from, limit = Number.POSITIVE_INFINITY }) => {
    const faces = facesOf(candidate, stock);
    for (const [at, { role, pose, swept }] of faces.entries()) {
      if (role === "face" && swept.to > holeRadius + GAUGE_SLACK) return undefined;
      const wingAngle = candidate.wingAngles[candidate.wing[at]];
      azimuths[at] = sweptAzimuth({ wingAngle, sweep: candidate.sweep, radiusShare: pose.radius / holeRadius });
    }
    const cover = coverShortfall(faces, { faceDiameter, mostApart });
    const uncovered = COVER_WEIGHT * (cover.sweeps + cover.faces);
    if (uncovered > limit) return undefined;
    const cut = sum(faces, azimuths, candidate.role);
    const bare = cut.evenness + imbalanceWeight * cut.imbalance + uncovered;
    if (bare > limit) return undefined;
    const walls = wallShortfalls(setting, { faces, azimuths, ...(from ? { from } : {}) });
    const lack = uncovered + (WALL_WEIGHT * total(walls)) / 2 / stock.wall;
    return { candidate, ...cut, walls, lack, score: bare - uncovered + lack };
  };
}

function total(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}
