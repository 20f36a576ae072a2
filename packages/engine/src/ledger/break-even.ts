import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/** A tool that is held against what a length of hole costs otherwise. */
export interface BreakEvenInput {
  /** What hole costs with the tool it is held against [money/m]. */
  readonly otherCost: number;
  /** Rig, crew and fuel for each time [money/s]. */
  readonly timePrice: number;
  /** Trips and handling that go with the hole [s]. */
  readonly handlingTime: number;
}

/** Why a tool can never pay, whatever is drilled with it. */
export type NeverPays =
  /** Its time on bottom alone costs as much as the other tool altogether. */
  | "rate too slow"
  /** The bit and its handling alone cost as much on this length as the other tool altogether. */
  | "bit too dear";

/** That a tool can never pay, and why. */
export interface NeverPaying {
  readonly pays: false;
  readonly because: NeverPays;
}

/** The rate at which two tools cost the same. */
export interface PayingRate {
  readonly pays: true;
  /** [m/s] */
  readonly rate: number;
}

/** The footage at which two tools cost the same. */
export interface PayingFootage {
  readonly pays: true;
  /** [m] */
  readonly footage: number;
}

/**
 * Rate from which a bit is cheaper than another tool on a hole of given length.
 *
 * R_even = R/(C_0 - (R t_h + B)/F); no rate pays where bit and handling alone come to C_0.
 *
 * @throws RangeError when the length or the price of time is not positive, or another figure is negative
 * @source (d) algebra of the cost of a length
 * @example
 * breakEvenRate({ otherCost: 25.853, timePrice: 0.0972222, handlingTime: 5400, bitPrice: 70, length: 91.44 }).rate // → 0.0050254
 */
export function breakEvenRate({
  otherCost,
  timePrice,
  handlingTime,
  bitPrice,
  length,
}: BreakEvenInput & {
  /** Share of the price of the bit that is laid on the hole [money]. */
  readonly bitPrice: number;
  /** Length of the hole [m]. */
  readonly length: number;
}): PayingRate | NeverPaying {
  requirePositive({ timePrice, length });
  requireNotNegative({ otherCost, handlingTime, bitPrice });
  const left = otherCost - (timePrice * handlingTime + bitPrice) / length;
  return left > 0 ? { pays: true, rate: timePrice / left } : { pays: false, because: "bit too dear" };
}

/**
 * Footage from which a bit that keeps its rate is cheaper than another tool, its whole price and one handling laid on it.
 *
 * F_even = (R t_h + B)/(C_0 - R/v); no footage pays where the time on bottom alone costs C_0.
 *
 * @throws RangeError when the rate or the price of time is not positive, or another figure is negative
 * @source (d) algebra of the cost of a length
 * @example
 * breakEvenFootage({ otherCost: 25.853, timePrice: 0.0972222, handlingTime: 5400, bitPrice: 1400, rate: 0.00762 }).footage // → 147.01
 */
export function breakEvenFootage({
  otherCost,
  timePrice,
  handlingTime,
  bitPrice,
  rate,
}: BreakEvenInput & {
  /** Whole price of the bit [money]. */
  readonly bitPrice: number;
  /** Rate of the bit [m/s]. */
  readonly rate: number;
}): PayingFootage | NeverPaying {
  requirePositive({ timePrice, rate });
  requireNotNegative({ otherCost, handlingTime, bitPrice });
  const left = otherCost - timePrice / rate;
  return left > 0
    ? { pays: true, footage: (timePrice * handlingTime + bitPrice) / left }
    : { pays: false, because: "rate too slow" };
}
