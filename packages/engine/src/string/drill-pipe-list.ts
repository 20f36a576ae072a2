import { commonPractice, readIn, recalledFrom, type Source } from "../quantity/index.ts";
import { feet, inches, poundsPerFoot } from "./field-sizes.ts";
import { plainEndWeight } from "./plain-end-weight.ts";

/** A size of drill pipe. */
export interface DrillPipe {
  /** Outer diameter and nominal weight as the trade calls them. */
  readonly name: string;
  /** Outer diameter [m]. */
  readonly outerDiameter: number;
  /** Bore [m]. */
  readonly bore: number;
  /** Weight in air without joints [N/m]. */
  readonly plainEndWeight: number;
  /** Nominal weight, the label, joints included in a rough way [N/m]. */
  readonly nominalWeight: number;
  /** Weight in air with joints, where a source gives it [N/m]. */
  readonly jointedWeight?: number;
  readonly source: Source;
}

const SIZES = recalledFrom("API Spec 5DP / RP 7G sizes; weight from outer diameter and bore");

function pipe(name: string, outer: number, bore: number, nominal: number): DrillPipe {
  const size = { outerDiameter: inches(outer), bore: inches(bore) };
  return {
    name,
    ...size,
    plainEndWeight: plainEndWeight(size),
    nominalWeight: poundsPerFoot(nominal),
    source: SIZES,
  };
}

/** Drill pipe of small rigs. */
export const DRILL_PIPES: readonly DrillPipe[] = [
  {
    ...pipe("2 3/8 in, 6.65 lb/ft", 2.375, 1.815, 6.65),
    jointedWeight: poundsPerFoot(6.99),
    source: readIn("Lyons, Guo & Seidel 2001: 6.99 lb/ft with NC26 joints 3 3/8 x 1 3/4 in; sizes after API, recalled"),
  },
  pipe("2 7/8 in, 6.85 lb/ft", 2.875, 2.441, 6.85),
  pipe("2 7/8 in, 10.40 lb/ft", 2.875, 2.151, 10.4),
  pipe("3 1/2 in, 9.50 lb/ft", 3.5, 2.992, 9.5),
  pipe("3 1/2 in, 13.30 lb/ft", 3.5, 2.764, 13.3),
  pipe("4 1/2 in, 16.60 lb/ft", 4.5, 3.826, 16.6),
];

/** A length in which drill pipe comes. */
export interface JointLength {
  readonly name: string;
  /** Length [m]. */
  readonly length: number;
  readonly source: Source;
}

/** Lengths of one joint on small rigs. */
export const JOINT_LENGTHS: readonly JointLength[] = [
  { name: "10 ft", length: feet(10), source: commonPractice() },
  { name: "15 ft", length: feet(15), source: commonPractice() },
  { name: "18 1/2 ft", length: feet(18.5), source: readIn("US Navy training manual 14080, top-head rig") },
  { name: "20 ft", length: feet(20), source: commonPractice() },
  { name: "25 ft", length: feet(25), source: commonPractice() },
];
