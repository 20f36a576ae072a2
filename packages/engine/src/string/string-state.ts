import type { Finding, Working } from "../quantity/index.ts";
import type { RegularThread } from "./connection-list.ts";
import type { MakeUpTorque } from "./make-up-torque.ts";
import type { JointRow, WeightByDepthInput } from "./weight-by-depth.ts";

/** A string on its rig, down to a depth. */
export interface StringStationInput extends WeightByDepthInput {
  /** Diameter of the bit [m]. */
  readonly bitDiameter: number;
  /** Thread of the bit's pin, if known. */
  readonly thread?: RegularThread;
  /** Outer diameter of the bit sub, if known [m]. */
  readonly subDiameter?: number;
  /** Largest torque of the rig [N·m]. */
  readonly torqueRating?: number;
  /** Torque expected at the bit [N·m]. */
  readonly drillingTorque?: number;
  /** Rotary speed planned [rad/s]. */
  readonly rotarySpeed?: number;
  /** Depth at which this bit starts; the first joint where not given [m]. */
  readonly startDepth?: number;
  /** Stiffness of the whole string in twist, if known [N·m/rad]. */
  readonly torsionalStiffness?: number;
  /** Size of the pipe, if known. */
  readonly pipeSize?: PipeSize;
  /** Yield strength of the pipe's steel, if known [Pa]. */
  readonly yieldStrength?: number;
}

/** Size of a pipe in section. */
export interface PipeSize {
  /** Outer diameter [m]. */
  readonly outerDiameter: number;
  /** Bore [m]. */
  readonly bore: number;
}

/** Where the neutral point lies: pressed below it, pulled above it. */
export type NeutralPart = "collars" | "pipe" | "above the string";

/** The height at which the string is neither pressed nor pulled. */
export interface NeutralPoint {
  /** Height above the bit; the string is shorter than this where `part` says so [m]. */
  readonly aboveBit: number;
  readonly part: NeutralPart;
}

/** Collar that would make up a weight. */
export interface CollarNeeded {
  /** Weight in air of a length of it [N/m]. */
  readonly collarWeight: number;
  /** Length of it, beside the collars there are [m]. */
  readonly collarLength: number;
  /** Weight on the bit that rig and string together lack where the bit starts [N]. */
  readonly missingWeight: number;
}

/** Collars that would carry the whole weight by themselves, in place of those there are. */
export interface CollarsForWeight {
  /** Weight in air of a length of it [N/m]. */
  readonly collarWeight: number;
  /** Length of all of them [m]. */
  readonly collarLength: number;
}

/** The string worked through. */
export interface StringStation {
  /** Share of its weight that the string keeps in fluid [-]. */
  readonly buoyancyFactor: number;
  /** Feed force joint by joint. */
  readonly rows: readonly JointRow[];
  /** Depth at which the rig passes from pushing to holding back; may lie below the hole [m]. */
  readonly balanceDepth: number;
  /** Depth from which the rig can push the weight wanted; 0 where it can from the start, absent where its pull-down is not known [m]. */
  readonly fullWeightDepth?: number;
  /** Neutral point with the bit at the full depth. */
  readonly neutralPoint: NeutralPoint;
  readonly makeUpTorque?: MakeUpTorque;
  /** Collar to put in the place of pipe so that the rig gives the weight from the start; absent where it does or nothing is heavier. */
  readonly collar?: CollarNeeded;
  /** Collars with which the neutral point would lie in them; absent where no listed collar goes into the hole. */
  readonly collarsForWeight?: CollarsForWeight;
  /** Torque at which the tube of a new pipe stays twisted, where its size and steel are known [N·m]. */
  readonly torsionalYield?: number;
  /** Angle by which the bit lags behind the top at the torque expected, where the stiffness is known [rad]. */
  readonly twist?: number;
  /** Speed at which a joint of pipe whips, where its size is known [rad/s]. */
  readonly criticalSpeed?: number;
  /** Power that turning takes, where torque and speed are known [W]. */
  readonly rotaryPower?: number;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** The string's figures before findings and workings are drawn from them. */
export type StringFigures = Omit<StringStation, "findings" | "working">;
