import type { EdgeWear } from "../cutting/index.ts";
import type { LifeEnd, LifeStep } from "./life-step.ts";
import type { WearState } from "./wear-state.ts";

/** The figures of a bit's life in its ground, before its remarks and workings are written. */
export interface LifeFigures {
  readonly end: LifeEnd;
  /** The bit along the way, stretch by stretch. */
  readonly steps: readonly LifeStep[];
  /** Hole drilled, all holes together [m]. */
  readonly footage: number;
  /** Holes drilled to their end [-]. */
  readonly holes: number;
  /** Time on bottom [s]. */
  readonly timeOnBottom: number;
  /** How the bit was worn at the start. */
  readonly start: WearState;
  /** How the bit is worn in the end. */
  readonly worn: WearState;
  /** How its edges are worn in the end. */
  readonly wear: readonly EdgeWear[];
  /** Diamond and carbide that the law has worn off each cutter [m³]. */
  readonly wornVolumes: readonly number[];
}
