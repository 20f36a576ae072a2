import type { BitLayout, GaugePads } from "../bit/index.ts";
import type { CoolingFilm, CuttingKernel, EdgeWear, RateLimits, RockHeat } from "../cutting/index.ts";
import type { RockResponse } from "../ground/index.ts";

/** What holds the rate in a bed beside the weight. Heat is no such limit: nobody at the rig sees it. */
export type HeldLimits = Pick<RateLimits, "torque" | "power" | "advance" | "rate">;

/** One bed and how the bit is run in it. */
export interface LifeBed {
  readonly name: string;
  /** Depth where the bit enters it [m]. */
  readonly top: number;
  /** Depth where the bit leaves it [m]. */
  readonly bottom: number;
  readonly response: RockResponse;
  /** CERCHAR index of the rock [-]. */
  readonly cerchar: number;
  readonly rock: RockHeat;
  /** Weight kept on the bit; no more of it is used where another limit holds the rate [N]. */
  readonly weight: number;
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed: number;
  readonly limits?: HeldLimits;
}

/** What ends the life of a bit. */
export interface LifeLimits {
  /** Mean wear grade of the inner or of the outer cutters, in eighths of a face [-]. */
  readonly grade: number;
  /** Loss of diameter at the gauge [m]. */
  readonly undergauge: number;
  /** Rate under which drilling on is not worth it [m/s]. */
  readonly rate: number;
  /** Temperature of the hottest rubbing surface [K]. */
  readonly temperature: number;
}

/** A bit, the beds it drills in every hole, and how it wears. */
export interface LifeInput {
  readonly layout: BitLayout;
  /** From the top down. */
  readonly beds: readonly LifeBed[];
  /** How many holes through the same beds are drilled if nothing ends it sooner; 1 where not given [-]. */
  readonly holes?: number;
  /** Temperature of the fluid at the bit [K]. */
  readonly fluidTemperature: number;
  /** Cooling of each cutter when new, in the order of the layout; the area shrinks with the face that is left. */
  readonly films?: readonly CoolingFilm[];
  /** Height of each tip over its wing along the profile normal at the start, in the order of the layout [m]. */
  readonly exposure?: readonly number[];
  /** Temperature that the diamond tables bear; that of tables with their cobalt where not given [K]. */
  readonly tableLimit?: number;
  /** What ends it; what is not given is of `lifeLimitsOf`. */
  readonly ends?: Partial<LifeLimits>;
  /** Wear coefficient in the reference sandstone; the middle of its band where not given [m²/N]. */
  readonly wearCoefficient?: number;
  /** Factor on wear where the contact is as hot as the table bears; the middle of its band where not given [-]. */
  readonly multipleAtLimit?: number;
  /** Pads that hold the gauge beside its cutters, level with them at the start; none where not given. */
  readonly gaugePads?: GaugePads;
  /** Wear of the pads against that of diamond; the middle of the band of their protection where not given [-]. */
  readonly padWearMultiple?: number;
  /** How the edges are worn at the start, in place of the worn heights of the layout. */
  readonly wear?: readonly EdgeWear[];
  /** Most height that any point of an edge may lose before the edges are traced anew [m]. */
  readonly largestChange?: number;
  /** Radial cells of the trace; one for each 0.1 mm where not given [-]. */
  readonly cells?: number;
  /** What runs the loops; the plain kernel where none is named. No figure depends on it. */
  readonly kernel?: CuttingKernel | undefined;
}
