import type { Band, Finding, Source, Working } from "../quantity/index.ts";
import type { Bed } from "./bed.ts";
import type { ClassifiedGround } from "./classify-ground.ts";
import type { Hazard } from "./hazard.ts";
import type { Rock } from "./rock.ts";
import type { AbrasivityClass, CercharClass } from "./rock-abrasivity.ts";
import type { RockResponseResult } from "./rock-response.ts";

/** How a bed grinds. */
export interface Abrasivity {
  /** Rock abrasivity index [-]; of the stones where the ground has stones. */
  readonly index: Band;
  /** The word for the middle of the index. */
  readonly class: AbrasivityClass;
  /** CERCHAR index of such rock [-]. */
  readonly cerchar: Band;
  /** The word for the middle of the CERCHAR index. */
  readonly cercharClass: CercharClass;
}

/** A hard band that stands in a bed, as the phrase names it. */
export interface Stringer {
  readonly rock: Rock;
  /** Strength under the pressure difference at the middle of the bed [Pa]. */
  readonly confinedStrength: Band;
  readonly response: RockResponseResult;
}

/** All that is known of one bed. */
export interface GroundBed {
  readonly bed: Bed;
  /** The rock taken; `unnamedGround` where neither id nor phrase names one. */
  readonly rock: Rock;
  /** How the phrase was read, where there is one. */
  readonly reading?: ClassifiedGround;
  /** How the rock was settled. */
  readonly rockFrom: "entered" | "phrase" | "not named";
  /** Depth of the middle [m]. */
  readonly midDepth: number;
  /** Pressure of the fluid above that of the ground water at the middle [Pa]. */
  readonly pressureDifference: number;
  /** Unconfined strength [Pa]. */
  readonly ucs: Band;
  readonly ucsSource: Source;
  /** Strength under the pressure difference [Pa]. */
  readonly confinedStrength: Band;
  readonly response: RockResponseResult;
  readonly abrasivity: Abrasivity;
  readonly hazards: readonly Hazard[];
  /** The strongest of the hard bands that the phrase names in it; absent where it names none. */
  readonly stringer?: Stringer;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** A bed before its remarks and workings are written. */
export type GroundBedFigures = Omit<GroundBed, "findings" | "working">;
