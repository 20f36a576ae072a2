import type { MarchedLife } from "./life-march.ts";

/** The figures of a bit's life in its ground, before its remarks and workings are written. */
export interface LifeFigures extends MarchedLife {
  /** Hole drilled, all holes together [m]. */
  readonly footage: number;
  /** Time on bottom [s]. */
  readonly timeOnBottom: number;
}
