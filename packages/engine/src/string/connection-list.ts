import { recalledFrom, type Source } from "../quantity/index.ts";
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
