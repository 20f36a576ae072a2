import type { CardContent, Finding } from "@bitwright/engine";
import type { Assumed } from "./document/assumed.ts";
import type { ResolvedTraveler } from "./document/resolved-traveler.ts";
import type { AdviceStation } from "./stations/advice-station.ts";
import type { BitStation } from "./stations/bit-station.ts";
import type { CutStation } from "./stations/cut-station.ts";
import type { FlowStation } from "./stations/flow-station.ts";
import type { GroundStation } from "./stations/ground-station.ts";
import type { LifeStation } from "./stations/life-station.ts";
import type { PowerStation } from "./stations/power-station.ts";
import type { StabilityStation } from "./stations/stability-station.ts";
import type { StringStation } from "./stations/string-station.ts";

/** The mark by which a file is known to be a workup. */
export const WORKUP_FORMAT = "bitwright-workup";

/** The version of the workup's shape. */
export const WORKUP_VERSION = 1;

/** Which station of the traveler a finding comes from. */
export type StationName =
  | "inquiry"
  | "ground"
  | "advice"
  | "bit"
  | "cut"
  | "string"
  | "stability"
  | "flow"
  | "power"
  | "life";

/** A finding with the station that made it. */
export interface StationFinding extends Finding {
  readonly station: StationName;
}

/** A traveler worked up: every station's result, in SI, with its findings and workings. */
export interface Workup {
  readonly format: typeof WORKUP_FORMAT;
  readonly version: typeof WORKUP_VERSION;
  /** The traveler as it was read, in SI. */
  readonly inquiry: ResolvedTraveler;
  readonly assumed: readonly Assumed[];
  readonly ground: GroundStation;
  readonly advice: AdviceStation;
  readonly bit: BitStation;
  readonly cut: CutStation;
  /** Absent where the bit drills nothing of the hole. */
  readonly string?: StringStation;
  readonly stability: StabilityStation;
  readonly flow: FlowStation;
  /** Absent where the bit drills nothing of the hole. */
  readonly power?: PowerStation;
  readonly life: LifeStation;
  readonly card: CardContent;
  /** All findings, the gravest first. */
  readonly findings: readonly StationFinding[];
}
