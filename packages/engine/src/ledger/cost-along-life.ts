import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import { costPerLength } from "./cost-per-length.ts";

/** A bit at one point of its life. */
export interface LifePoint {
  /** Hole drilled by then [m]. */
  readonly footage: number;
  /** Time on bottom by then [s]. */
  readonly timeOnBottom: number;
}

/** A bit, the way it wears, and what its time costs. */
export interface CostAlongLifeInput {
  /** Price of the bit [money]. */
  readonly bitPrice: number;
  /** Rig, crew and fuel for each time [money/s]. */
  readonly timePrice: number;
  /** Trips and connections for each length of hole [s/m]. */
  readonly handlingPerLength: number;
  /** Mud, water, chemicals and the like; none where not given [money/m]. */
  readonly otherPrice?: number;
  /** The bit along its life, from the first stretch on. */
  readonly points: readonly LifePoint[];
  /** Wear against that which the points were marched with; 1 where not given [-]. */
  readonly wearFactor?: number;
}

/** The point of a life at which hole has been cheapest. */
export interface CheapestPull extends LifePoint {
  /** Cost for each length of hole up to there [money/m]. */
  readonly costPerLength: number;
  /** Which point it is, from 0 [-]. */
  readonly pointIndex: number;
}

/**
 * Where to pull a bit whose rate falls as it wears: the hole gets cheaper while the bit's price spreads over more of it, and
 * dearer again once the worn bit is slow; cheapest where the cost of the next length is the mean so far.
 *
 * C(F) = (B + R (t(F) + h F))/F + c_o, the least over the points. Wear is the product of coefficient and way, so that a bit
 * that wears w times as fast comes to each state of wear, and to the rate that goes with it, on 1/w of the way.
 *
 * Undefined where there is no point with any hole drilled.
 *
 * @throws RangeError when a price or a time is negative, or the factor is not positive
 * @source (d) the cost relation along the march; the best point by its derivative
 */
export function cheapestPull({
  points,
  handlingPerLength: handling,
  wearFactor = 1,
  ...prices
}: CostAlongLifeInput): CheapestPull | undefined {
  requireNotNegative({ handlingPerLength: handling });
  requirePositive({ wearFactor });
  let best: CheapestPull | undefined;
  for (const [pointIndex, point] of points.entries()) {
    if (!(point.footage > 0)) continue;
    const footage = point.footage / wearFactor;
    const timeOnBottom = point.timeOnBottom / wearFactor;
    const cost = costPerLength({ ...prices, timeOnBottom, handlingTime: handling * footage, length: footage });
    if (!best || cost < best.costPerLength) best = { footage, timeOnBottom, costPerLength: cost, pointIndex };
  }
  return best;
}
