import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import type { PriceSheet } from "./price-sheet.ts";

/** One length of hole with what it took. */
export interface CostedLength {
  /** The bit, or the share of its price that is laid on this length [money]. */
  readonly bitPrice: number;
  /** Rig, crew and fuel for each time [money/s]. */
  readonly timePrice: number;
  /** Time on bottom [s]. */
  readonly timeOnBottom: number;
  /** Trips, connections and handling [s]. */
  readonly handlingTime: number;
  /** Mud, water, chemicals and the like; none where not given [money/m]. */
  readonly otherPrice?: number;
  /** Hole made [m]. */
  readonly length: number;
}

/**
 * Cost of a length of hole.
 *
 * C = (B + R (t + t_h))/F + c_o; B the bit, R rig and fuel, t time on bottom, t_h trips and connections, F the hole made, c_o
 * what goes with the length.
 *
 * @returns cost for each length of hole [money/m]
 * @throws RangeError when the length is not positive or another input is negative
 * @source (b) Bourgoyne et al. 1986, Applied Drilling Engineering, recalled
 * @example
 * costPerLength({ bitPrice: 27000, timePrice: 0.9722222, timeOnBottom: 180000, handlingTime: 43200, length: 1524 }) // → 160.105
 */
export function costPerLength({
  bitPrice,
  timePrice,
  timeOnBottom,
  handlingTime,
  otherPrice = 0,
  length,
}: CostedLength): number {
  requireNotNegative({ bitPrice, timePrice, timeOnBottom, handlingTime, otherPrice });
  requirePositive({ length });
  return (bitPrice + timePrice * (timeOnBottom + handlingTime)) / length + otherPrice;
}

/**
 * What a time at the hole costs: rig and crew, and the fuel burnt in it.
 *
 * R = R_rig + p Q.
 *
 * @returns price of time [money/s]
 * @throws RangeError when a price or the flow is negative
 * @source (d) sum of the two
 * @example
 * timePrice({ rigPrice: 0.1, fuelPrice: 1000, fuelFlow: 7e-6 }) // → 0.107
 */
export function timePrice({
  rigPrice,
  fuelPrice,
  fuelFlow,
}: Pick<PriceSheet, "rigPrice" | "fuelPrice" | "fuelFlow">): number {
  requireNotNegative({ rigPrice, fuelPrice, fuelFlow });
  return rigPrice + fuelPrice * fuelFlow;
}

/**
 * Time beside drilling that goes with each length of hole: the trip spread over one hole, the connection over one joint.
 *
 * t_h/F = t_t/L + t_c/l.
 *
 * @returns time for each length [s/m]
 * @throws RangeError when a length is not positive or a time is negative
 * @source (d) algebra
 * @example
 * handlingPerLength({ tripTime: 5400, holeLength: 90, connectionTime: 120, jointLength: 6 }) // → 80
 */
export function handlingPerLength({
  tripTime,
  holeLength,
  connectionTime,
  jointLength,
}: Pick<PriceSheet, "tripTime" | "connectionTime"> & {
  /** Hole that is made from one trip to the next [m]. */
  readonly holeLength: number;
  /** Length of a joint of pipe [m]. */
  readonly jointLength: number;
}): number {
  requireNotNegative({ tripTime, connectionTime });
  requirePositive({ holeLength, jointLength });
  return tripTime / holeLength + connectionTime / jointLength;
}
