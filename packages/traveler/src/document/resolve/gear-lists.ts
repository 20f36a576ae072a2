import { commonPractice, recalledFrom, type Source } from "@bitwright/engine";

/** A pipe of the list. */
export interface ListedPipe {
  readonly id: string;
  readonly name: string;
  /** Outside diameter [m]. */
  readonly outsideDiameter: number;
  /** Bore [m]. */
  readonly bore: number;
  /** Mass of a length with joints [kg/m]. */
  readonly linearMass: number;
  /** Length of a joint [m]. */
  readonly jointLength: number;
  readonly connection?: string;
  readonly source: Source;
}

/** A rig of the list. */
export interface ListedRig {
  readonly id: string;
  readonly name: string;
  /** Largest push [N]. */
  readonly pullDown: number;
  /** Largest pull [N]. */
  readonly hoist: number;
  /** Weight of the top head [N]. */
  readonly topHeadWeight: number;
  /** Largest torque [N m]. */
  readonly torque: number;
  /** Slowest speed [rad/s]. */
  readonly rotarySpeedMin: number;
  /** Fastest speed [rad/s]. */
  readonly rotarySpeedMax: number;
  readonly source: Source;
}

/** A pump of the list. */
export interface ListedPump {
  readonly id: string;
  readonly name: string;
  /** Flow at the bit [m³/s]. */
  readonly flow: number;
  /** Pressure it holds all day [Pa]. */
  readonly pressureRating: number;
  readonly source: Source;
}

const inch = 0.0254;
const lbPerFt = 0.45359237 / 0.3048;
const klbf = 4448.2216152605;
const ftLbf = 1.3558179483314;
const rpm = Math.PI / 30;
const gpm = 6.30901964e-5;
const psi = 6894.757293168;
const API = recalledFrom("API Spec 5DP and RP 7G");

const pipe = (id: string, name: string, od: number, bore: number, plainEnd: number): ListedPipe => ({
  id,
  name,
  outsideDiameter: od * inch,
  bore: bore * inch,
  linearMass: plainEnd * 1.08 * lbPerFt,
  jointLength: 6.096,
  source: API,
});

export const pipeList: readonly ListedPipe[] = [
  pipe("2-3/8-6.65", "2 3/8 in 6.65 lb/ft", 2.375, 1.815, 6.26),
  pipe("2-7/8-10.40", "2 7/8 in 10.40 lb/ft", 2.875, 2.151, 9.72),
  pipe("3-1/2-13.30", "3 1/2 in 13.30 lb/ft", 3.5, 2.764, 12.31),
  pipe("4-1/2-16.60", "4 1/2 in 16.60 lb/ft", 4.5, 3.826, 14.98),
];

const rig = (id: string, name: string, pull: number, torque: number): ListedRig => ({
  id,
  name,
  pullDown: (pull / 2) * klbf,
  hoist: pull * klbf,
  topHeadWeight: 1 * klbf,
  torque: torque * ftLbf,
  rotarySpeedMin: 0,
  rotarySpeedMax: 180 * rpm,
  source: commonPractice("class of rig, no source"),
});

export const rigList: readonly ListedRig[] = [
  rig("small", "small loop rig", 14, 2500),
  rig("medium", "medium water-well rig", 30, 5500),
  rig("large", "large water-well rig", 70, 12000),
];

export const pumpList: readonly ListedPump[] = [
  {
    id: "small",
    name: "pump of a small rig",
    flow: 120 * gpm,
    pressureRating: 200 * psi,
    source: commonPractice("class of rig, no source"),
  },
  {
    id: "medium",
    name: "pump of a medium rig",
    flow: 200 * gpm,
    pressureRating: 300 * psi,
    source: commonPractice("class of rig, no source"),
  },
];

export const connectionIds: readonly string[] = ["2-3/8 REG", "2-7/8 REG", "3-1/2 REG", "4-1/2 REG", "6-5/8 REG"];
