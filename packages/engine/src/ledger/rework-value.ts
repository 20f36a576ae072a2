import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/** A bit, and what rebuilding it brings. */
export interface ReworkValueInput {
  /** Price of the bit when new [money]. */
  readonly newPrice: number;
  /** Hole it makes when new [m]. */
  readonly newFootage: number;
  /** Price of one rework [money]. */
  readonly reworkPrice: number;
  /** Hole that a reworked bit makes, as share of a new one [-]. */
  readonly lifeShare: number;
}

/** What a rework is worth. */
export interface ReworkValue {
  /** Price of the bit laid on the hole of its first life [money/m]. */
  readonly newCost: number;
  /** Price of a rework laid on the hole that it brings [money/m]. */
  readonly reworkCost: number;
  /** Both laid on the hole of both [money/m]. */
  readonly blendedCost: number;
  /** Price of a rework above which a new bit is cheaper [money]. */
  readonly mostToPay: number;
  readonly pays: boolean;
}

/**
 * What a rework is worth beside a new bit: it pays while its price for a length of hole is under that of a new one.
 *
 * b_n = B/F, b_r = C_r/(s F), b = (B + C_r)/(F (1 + s)), C_r,most = s B.
 *
 * @throws RangeError when the footage or the share is not positive or a price is negative
 * @source (d) prices laid on the hole they bring
 * @example
 * reworkValue({ newPrice: 1400, newFootage: 1828.8, reworkPrice: 650, lifeShare: 0.85 }).mostToPay // → 1190
 */
export function reworkValue({ newPrice, newFootage, reworkPrice, lifeShare }: ReworkValueInput): ReworkValue {
  requirePositive({ newFootage, lifeShare });
  requireNotNegative({ newPrice, reworkPrice });
  const reworkFootage = lifeShare * newFootage;
  const mostToPay = lifeShare * newPrice;
  return {
    newCost: newPrice / newFootage,
    reworkCost: reworkPrice / reworkFootage,
    blendedCost: (newPrice + reworkPrice) / (newFootage + reworkFootage),
    mostToPay,
    pays: reworkPrice < mostToPay,
  };
}
