import type { BitSpec } from "../../bit/index.ts";
import type { RockResponse } from "../../ground/index.ts";

/**
 * What is to be even over the cutters: the area each cuts, the work each does, or the rate at which each wears, as the
 * contact load of its first small flat times the radius of its tip.
 */
export type EvenMeasure = "area" | "work" | "wear";

/** How far the search may depart from the specification. */
export interface LayoutFreedom {
  /** How much the sweep may be more or less than specified; 0 keeps it [rad]. */
  readonly sweep: number;
  /** How much a gap between wings may differ from an even one; 0 keeps the wings where they are [rad]. */
  readonly gap: number;
  /** How much back rake a zone may gain or lose; 0 keeps the schedule [rad]. */
  readonly rake: number;
}

/** What a layout is to be found for. Plain data: it can be handed to another thread. */
export interface LayoutQuestion {
  readonly spec: BitSpec;
  /** What is to be even; the area of cut where not given. */
  readonly measure?: EvenMeasure;
  /** Rock the layout is judged in; shale where not given. */
  readonly response?: RockResponse;
  /** Advances per revolution the layout is judged at, each for itself and the worst counted [m]. */
  readonly advances?: readonly number[];
  /** Diameter of a port that has to fit in every slot; the smallest that is not soon plugged where not given [m]. */
  readonly portDiameter?: number;
  readonly freedom?: Partial<LayoutFreedom>;
  /** Any whole number from 0: the same one finds the same layouts [-]. */
  readonly seed?: number;
  /** Layouts to try [-]. */
  readonly candidates?: number;
}

/** Looks on while a search runs. */
export interface SearchWatch {
  /** Told now and then how many candidates have been tried. */
  readonly onProgress?: (tried: number) => void;
  /** Asked now and then; once it says yes, the search ends with what it has. */
  readonly shouldStop?: () => boolean;
}

const DEGREE = Math.PI / 180;

/**
 * Freedom of the search where none is named.
 *
 * @source (c) common practice, no source: gaps of 360/n give or take 3 to 8 degrees; sweep and rake by our choice
 */
export const USUAL_FREEDOM: LayoutFreedom = { sweep: 10 * DEGREE, gap: 8 * DEGREE, rake: 2 * DEGREE };

/**
 * Candidates where no number is named [-].
 *
 * @source (d) where the lists of the demo bits stop getting much better
 */
export const USUAL_CANDIDATES = 20_000;

/**
 * Advances a layout is judged at where none is named [m].
 *
 * @source (c) common practice, no source: slow and fast drilling
 */
export const USUAL_ADVANCES: readonly number[] = [1e-3, 3e-3];
