import { readIn, recalledFrom, type Source } from "../quantity/index.ts";
import { inches } from "./field-sizes.ts";

/** The regular rotary threads that carry bits of this trade. */
export type RegularThread = "2 3/8 REG" | "2 7/8 REG" | "3 1/2 REG" | "4 1/2 REG" | "6 5/8 REG";

/**
 * A regular rotary shouldered connection. Not for machining: the figures are recalled, the shop reads the standard and
 * gauges its threads.
 */
export interface RegularConnection {
  readonly thread: RegularThread;
  /** Form of the thread. */
  readonly form: string;
  /** Distance from thread to thread [m]. */
  readonly lead: number;
  /** Growth of diameter for each length of pin [-]. */
  readonly taper: number;
  /** Pitch diameter at the gauge point [m]. */
  readonly pitchDiameter: number;
  /** Diameter of the pin at its base [m]. */
  readonly pinLargeDiameter?: number;
  /** Diameter of the pin at its nose [m]. */
  readonly pinSmallDiameter?: number;
  /** Length of the pin [m]. */
  readonly pinLength: number;
  /** Diameter of the box counterbore [m]. */
  readonly boxCounterbore?: number;
  /** Bevel diameter of the bit's shoulder [m]. */
  readonly bitBevelDiameter: number;
  readonly source: Source;
}

const STANDARD = recalledFrom("API Spec 7-2 and 7-1 dimensions; not for machining until read in the standard");

/** Form V-040: five threads to the inch, taper 3 in/ft. Sizes in inches: pitch, large, small, length, counterbore, bevel. */
function v040(
  thread: RegularThread,
  sizes: readonly [
    pitch: number,
    large: number,
    small: number,
    length: number,
    counterbore: number,
    bevelSixtyFourths: number,
  ],
): RegularConnection {
  const [pitch, large, small, length, counterbore, bevelSixtyFourths] = sizes;
  return {
    thread,
    form: "V-040",
    lead: inches(1 / 5),
    taper: 3 / 12,
    pitchDiameter: inches(pitch),
    pinLargeDiameter: inches(large),
    pinSmallDiameter: inches(small),
    pinLength: inches(length),
    boxCounterbore: inches(counterbore),
    bitBevelDiameter: inches(bevelSixtyFourths / 64),
    source: STANDARD,
  };
}

/** Regular connections of small bits. */
export const REGULAR_CONNECTIONS: readonly RegularConnection[] = [
  v040("2 3/8 REG", [2.36537, 2.625, 1.875, 3, 2.6875, 3 * 64 + 3]),
  v040("2 7/8 REG", [2.74037, 3, 2.125, 3.5, 3.0625, 3 * 64 + 39]),
  v040("3 1/2 REG", [3.23987, 3.5, 2.5625, 3.75, 3.5625, 4 * 64 + 7]),
  v040("4 1/2 REG", [4.36487, 4.625, 3.5625, 4.25, 4.6875, 5 * 64 + 19]),
  {
    thread: "6 5/8 REG",
    form: "V-050",
    lead: inches(1 / 4),
    taper: 2 / 12,
    pitchDiameter: inches(5.7578),
    pinLength: inches(5),
    bitBevelDiameter: inches(7.375),
    source: STANDARD,
  },
];

/** Bevel diameter of a collar's shoulder for a thread and a collar size. */
export interface CollarBevel {
  readonly thread: RegularThread;
  /** Outer diameter of the collar [m]. */
  readonly collarDiameter: number;
  /** Bevel diameter [m]. */
  readonly bevelDiameter: number;
  readonly source: Source;
}

function bevel(thread: RegularThread, collar: number, diameter: number): CollarBevel {
  return {
    thread,
    collarDiameter: inches(collar),
    bevelDiameter: inches(diameter),
    source: readIn("trade sheet after the API standard, the standard itself not read"),
  };
}

/** Bevel diameters of collars. */
export const COLLAR_BEVELS: readonly CollarBevel[] = [
  bevel("2 3/8 REG", 3.125, 3.016),
  bevel("2 3/8 REG", 3.375, 3.203),
  bevel("2 7/8 REG", 3.875, 3.578),
  bevel("3 1/2 REG", 4.375, 4.125),
  bevel("3 1/2 REG", 4.5, 4.266),
  bevel("4 1/2 REG", 5.5, 5.422),
  bevel("4 1/2 REG", 5.75, 5.484),
  bevel("4 1/2 REG", 6, 5.672),
];
