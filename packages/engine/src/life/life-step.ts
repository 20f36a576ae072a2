import type { RateLimitName } from "../cutting/index.ts";
import type { WearState } from "./wear-state.ts";

/** The bit at the end of one stretch of hole. */
export interface LifeStep extends WearState {
  /** Hole drilled with this bit so far, all holes together [m]. */
  readonly footage: number;
  /** Number of the hole, from 1 [-]. */
  readonly holeNumber: number;
  /** Number of the bed in the column, from 0 [-]. */
  readonly bedIndex: number;
  /** Depth in that hole [m]. */
  readonly depth: number;
  /** Time on bottom so far [s]. */
  readonly timeOnBottom: number;
  /** Rate of penetration over the stretch [m/s]. */
  readonly rate: number;
  /** Weight on bit over the stretch [N]. */
  readonly weight: number;
  /** Torque at the bit over the stretch [N·m]. */
  readonly torque: number;
  /** Side force of the cutters over the stretch, which the gauge pads bear [N]. */
  readonly sideForce: number;
  /** What held the rate. */
  readonly binds: RateLimitName;
  /** Temperature of the hottest rubbing surface [K]. */
  readonly hottestTemperature: number;
  /** Number of the cutter that is hottest, from 1 [-]. */
  readonly hottestCutter: number;
}

/** What ended a life. */
export type LifeEndName = "inner grade" | "outer grade" | "gauge" | "rate" | "heat" | "holes drilled" | "stopped";

/** How a life ended. */
export interface LifeEnd {
  readonly by: LifeEndName;
  /** The figure that ended it, the holes where all were drilled; none where somebody stopped the reckoning [unit]. */
  readonly value?: number;
  /** The limit it met [unit]. */
  readonly limit?: number;
  readonly unit?: string;
  /** What held the rate in the end, where the rate ended it. */
  readonly binds?: RateLimitName;
  /** Number of the cutter that got too hot, where heat ended it, from 1 [-]. */
  readonly cutter?: number;
}
