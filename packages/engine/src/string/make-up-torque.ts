import { readIn, requirePositive, type Source } from "../quantity/index.ts";
import type { RegularThread } from "./connection-list.ts";
import { footPounds, inches } from "./field-sizes.ts";

/** Torque to which a fixed-cutter bit's pin is made up, for a thread and the outer diameter of the bit sub. */
export interface MakeUpTorque {
  readonly thread: RegularThread;
  /** Outer diameter of the bit sub [m]. */
  readonly subDiameter: number;
  /** Least torque [N·m]. */
  readonly least: number;
  /** Normal torque [N·m]. */
  readonly normal: number;
  /** Largest torque; box connections only to normal [N·m]. */
  readonly most: number;
  /** Whether the row also holds for larger subs. */
  readonly andLarger: boolean;
  readonly source: Source;
}

const REPRINT = readIn("API RP 7G values, seen in a trade reprint, the standard itself not read");

/** Sub diameter in inches, torques in foot-pounds. */
type PrintedRow = readonly [
  thread: RegularThread,
  sub: number,
  least: number,
  normal: number,
  most: number,
  andLarger?: true,
];

const PRINTED: readonly PrintedRow[] = [
  ["2 3/8 REG", 3, 1970, 2280, 2450],
  ["2 3/8 REG", 3.125, 2660, 3100, 3300],
  ["2 3/8 REG", 3.25, 3400, 3950, 4200],
  ["2 7/8 REG", 3.5, 3380, 3950, 4200],
  ["2 7/8 REG", 3.75, 5080, 5900, 6300, true],
  ["3 1/2 REG", 4.125, 5700, 6600, 7000],
  ["3 1/2 REG", 4.25, 6940, 8050, 8550],
  ["3 1/2 REG", 4.5, 8400, 9850, 10500, true],
  // normal of the next row stands unusually close to its largest; so it is printed
  ["4 1/2 REG", 5.5, 13700, 16600, 17000],
  ["4 1/2 REG", 5.75, 18100, 21100, 22400],
  ["4 1/2 REG", 6, 18550, 21600, 22900, true],
  ["6 5/8 REG", 7.5, 40670, 47300, 50200],
  ["6 5/8 REG", 7.75, 41050, 47800, 50750, true],
];

/** Make-up torques of fixed-cutter bits, weakest sub of each thread first. Thread compound required. */
export const MAKE_UP_TORQUES: readonly MakeUpTorque[] = PRINTED.map(([thread, sub, least, normal, most, andLarger]) => {
  return {
    thread,
    subDiameter: inches(sub),
    least: footPounds(least),
    normal: footPounds(normal),
    most: footPounds(most),
    andLarger: andLarger === true,
    source: REPRINT,
  };
});

/** A bit's joint. */
export interface BitJoint {
  readonly thread: RegularThread;
  /** Outer diameter of the bit sub, or of the box above the pin [m]. */
  readonly subDiameter: number;
}

/** Room for the last digits of an inch turned into metres [m]. */
const EDGE = 1e-6;

/**
 * The make-up torque row for a joint: the largest listed sub that is not larger than this one, which errs to the weak
 * side between rows. Undefined where the sub is smaller than any listed.
 *
 * @throws RangeError when the sub diameter is not positive
 * @source (a) API RP 7G values, seen in a trade reprint, the standard itself not read
 * @example
 * makeUpTorque({ thread: "3 1/2 REG", subDiameter: 0.1143 }).normal // → 13354.8
 */
export function makeUpTorque({ thread, subDiameter }: BitJoint): MakeUpTorque | undefined {
  requirePositive({ subDiameter });
  return MAKE_UP_TORQUES.filter((row) => row.thread === thread && row.subDiameter <= subDiameter + EDGE).at(-1);
}
