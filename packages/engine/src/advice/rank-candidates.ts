import type { CandidateBit, SoundCandidate } from "./candidate-bit.ts";

/**
 * Costs that are nearer than this, as a share, are one cost [-].
 *
 * @source (d) spread of the cost over the step of the wear march, see docs/guide/checks.md
 */
export const TOO_CLOSE_SHARE = 0.01;

/** Why a candidate is not told apart from the first. */
export type TieReason =
  /** Its cost is nearer than the march is exact. */
  | "too close"
  /** It is the cheaper one if bits wear as slowly as the band of the wear coefficient allows. */
  | "slow wear"
  /** It is the cheaper one if they wear as fast. */
  | "fast wear";

/** A candidate in its place. */
export interface RankedCandidate {
  /** Place in the order, from 1 [-]. */
  readonly place: number;
  readonly candidate: SoundCandidate;
  /** Cost over that of the first, as a share of it [-]. */
  readonly overBest: number;
  /** Why it may be as good as the first; empty for the first, and where the first is cheaper throughout. */
  readonly ties: readonly TieReason[];
}

/** Candidates in order. */
export interface CandidateRanking {
  /** By cost for each length of hole, the cheapest first; where two cost the same, the one looked at first. */
  readonly ranked: readonly RankedCandidate[];
  /** Those that are no bit for this job, each with what keeps it from it. */
  readonly excluded: readonly CandidateBit[];
  /** The cheapest at the slow and at the fast end of the band of the wear coefficient; absent where there is none. */
  readonly cheapestAt?: Readonly<Record<"slowWear" | "fastWear", SoundCandidate>>;
}

/**
 * Candidates by cost for each length of hole. All are held against each other at the same wear coefficient: it is not known,
 * but it is one and the same for all of them. Where the order turns within its band, that is a tie and is said to be one.
 *
 * @source (d) order of the costs
 */
export function rankCandidates(candidates: readonly CandidateBit[]): CandidateRanking {
  const sound = candidates.filter(isSound);
  const excluded = candidates.filter((one) => !isSound(one));
  const inOrder = [...sound].sort((a, b) => a.figures.costPerLength.mid - b.figures.costPerLength.mid);
  const [best] = inOrder;
  if (!best) return { ranked: [], excluded };
  const least = (end: "low" | "high") =>
    inOrder.reduce((found, one) => (one.figures.costPerLength[end] < found.figures.costPerLength[end] ? one : found));
  return {
    ranked: inOrder.map((candidate, at) => ({
      place: at + 1,
      candidate,
      overBest: candidate.figures.costPerLength.mid / best.figures.costPerLength.mid - 1,
      ties: candidate === best ? [] : tiesOf(candidate, best),
    })),
    excluded,
    cheapestAt: { slowWear: least("low"), fastWear: least("high") },
  };
}

function isSound(candidate: CandidateBit): candidate is SoundCandidate {
  return candidate.figures !== undefined && candidate.excludedBy.length === 0;
}

function tiesOf({ figures: { costPerLength: cost } }: SoundCandidate, best: SoundCandidate): TieReason[] {
  const least = best.figures.costPerLength;
  return [
    ...(cost.mid <= least.mid * (1 + TOO_CLOSE_SHARE) ? (["too close"] as const) : []),
    ...(cost.low < least.low * (1 - TOO_CLOSE_SHARE) ? (["slow wear"] as const) : []),
    ...(cost.high < least.high * (1 - TOO_CLOSE_SHARE) ? (["fast wear"] as const) : []),
  ];
}
