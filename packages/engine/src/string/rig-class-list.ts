import { type Band, band, commonPractice, readIn, type Source } from "../quantity/index.ts";
import { footPounds, gallonsPerMinute, horsepower, inches, poundsForce, poundsPerSquareInch } from "./field-sizes.ts";

/** What rigs of a class have; the middle of each band is the middle of the range, not a measured mean. */
export interface RigClass {
  readonly name: string;
  /** Pull of the hoist [N]. */
  readonly hoist: Band;
  /** Torque of the rotary [N·m]. */
  readonly torque: Band;
  /** Rated power of the engine that drives rotary, feed, hoist and pump [W]. */
  readonly enginePower: Band;
  /** The usual mud pump, in words. */
  readonly pump: string;
  /** Pump flow [m³/s]. */
  readonly flow: Band;
  /** Pump pressure, where custom gives one [Pa]. */
  readonly pumpPressure?: Band;
  readonly source: Source;
}

function range(low: number, high: number, convert: (value: number) => number): Band {
  return band(convert(low), convert((low + high) / 2), convert(high));
}

/** Classes of rigs of this trade. */
export const RIG_CLASSES: readonly RigClass[] = [
  {
    name: "small, loop holes",
    hoist: range(8_000, 20_000, poundsForce),
    torque: range(1_000, 4_000, footPounds),
    enginePower: range(60, 130, horsepower),
    pump: "3 x 4 to 5 x 6 in duplex, or 2 to 3 in centrifugal",
    flow: range(60, 250, gallonsPerMinute),
    pumpPressure: range(100, 300, poundsPerSquareInch),
    source: commonPractice(),
  },
  {
    name: "medium",
    hoist: range(25_000, 45_000, poundsForce),
    torque: range(4_000, 8_000, footPounds),
    enginePower: range(150, 300, horsepower),
    pump: "5 x 6 to 5 x 8 in",
    flow: range(150, 450, gallonsPerMinute),
    pumpPressure: range(200, 500, poundsPerSquareInch),
    source: commonPractice(),
  },
  {
    name: "large",
    hoist: range(50_000, 100_000, poundsForce),
    torque: range(8_000, 20_000, footPounds),
    enginePower: range(300, 600, horsepower),
    pump: "5 1/2 x 8 to 7 1/2 x 10 in",
    flow: range(300, 700, gallonsPerMinute),
    source: commonPractice(),
  },
];

/** One rig whose ratings a source gives. */
export interface RatedRig {
  readonly name: string;
  /** Largest pull-down [N]. */
  readonly pullDownRating: number;
  /** Largest pull of the hoist [N]. */
  readonly hoistRating: number;
  /** Largest rotary speed [rad/s]. */
  readonly rotarySpeed: number;
  /** Outer diameter of its drill pipe [m]. */
  readonly pipeDiameter: number;
  readonly source: Source;
}

/** Rigs with published ratings. */
export const RATED_RIGS: readonly RatedRig[] = [
  {
    name: "military top-head rig",
    pullDownRating: poundsForce(15_000),
    hoistRating: poundsForce(30_000),
    rotarySpeed: (200 * 2 * Math.PI) / 60,
    pipeDiameter: inches(4.5),
    source: readIn("US Navy training manual 14080"),
  },
];
