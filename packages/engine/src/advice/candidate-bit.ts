import type { Band, Finding } from "../quantity/index.ts";
import type { BitChoices } from "./bit-choices.ts";

/** What the model makes of a candidate bit. */
export interface CandidateFigures {
  /** Cost for each length of hole, pulled where it is least; over the band of the wear coefficient [money/m]. */
  readonly costPerLength: Band;
  /** Price of the bit [money]. */
  readonly bitPrice: number;
  /** What the bit itself costs for each length [money/m]. */
  readonly bitCost: number;
  /** What the time on bottom costs for each length [money/m]. */
  readonly drillingCost: number;
  /** Hole drilled when it is cheapest to pull the bit [m]. */
  readonly pulledAt: number;
  /** Hole drilled when something ends the bit, over the band of the wear coefficient [m]. */
  readonly footage: Band;
  /** Rate over the column with the bit new, over the band of the rock's strength [m/s]. */
  readonly freshRate: Band;
  /** Rate on bottom from new until it is pulled [m/s]. */
  readonly meanRate: number;
  /** Time on bottom until it is pulled [s]. */
  readonly timeOnBottom: number;
  /** What the diamond bears less the hottest rubbing surface until it is pulled [K]. */
  readonly heatMargin: number;
  /** Largest share of side force in any bed, the bit new [-]. */
  readonly sideForceShare: number;
  /** Open area of the slots; absent where it is not known [m²]. */
  readonly slotArea?: number;
  /** Largest port that fits in a slot; absent where it is not known [m]. */
  readonly largestPort?: number;
  /** Number of cutters [-]. */
  readonly cutters: number;
}

/** The heaviest moment for one cutter on the way through the boundaries of the column. */
export interface CandidateBlow {
  /** The boundary: names of the bed it comes from and of the one it goes into. */
  readonly from: string;
  readonly into: string;
  /** Force on that cutter [N]. */
  readonly peakForce: number;
  /** The same over the larger of its forces wholly in either bed [-]. */
  readonly overloadRatio: number;
}

/** A bit that was looked at: its figures, or why it is none. */
export interface CandidateBit {
  readonly choices: BitChoices;
  /** The bit in one line, in the words of the shop. */
  readonly inWords: string;
  readonly figures?: CandidateFigures;
  /** Worked out for those that come out best; absent in a column of one bed. */
  readonly blow?: CandidateBlow;
  /** What keeps it from being a bit for this job; empty where nothing does. */
  readonly excludedBy: readonly Finding[];
}

/** A candidate that can be ranked. */
export type SoundCandidate = CandidateBit & { readonly figures: CandidateFigures };
