import { requireNotNegative, requirePositive } from "../../quantity/index.ts";

/** A bit with blocks, or wings, that stop it from cutting deeper: a straight line with a bend. */
export interface DepthLimit {
  /** Weight for each metre of advance while only the cutters bear, ζ ε a [N/m]. */
  readonly cutterSlope: number;
  /** Advance per revolution at which the blocks come to bear [m]. */
  readonly limitAdvance: number;
  /** What the blocks add to the slope [N/m]. */
  readonly blockSlope: number;
}

/**
 * Weight that a bit with depth-limiting blocks asks for.
 *
 * W = ζ ε a d up to d_lim, beyond it W = ζ ε a d + k_b (d - d_lim).
 *
 * @returns weight [N]
 * @throws RangeError when the slope of the cutters is not positive or another input is negative
 * @source (c) common practice, no source
 * @example
 * depthLimitedWeight({ cutterSlope: 5e6, limitAdvance: 2e-3, blockSlope: 4e7 }, 2.5e-3) // → 32500
 */
export function depthLimitedWeight(
  { cutterSlope, limitAdvance, blockSlope }: DepthLimit,
  /** Advance per revolution [m]. */
  advance: number,
): number {
  requirePositive({ cutterSlope });
  requireNotNegative({ limitAdvance, blockSlope, advance });
  return cutterSlope * advance + blockSlope * Math.max(0, advance - limitAdvance);
}

/**
 * Advance of a bit with depth-limiting blocks under a weight.
 *
 * d = W/(ζ ε a) up to d_lim, beyond it d = (W + k_b d_lim)/(ζ ε a + k_b).
 *
 * @returns advance per revolution [m]
 * @throws RangeError when the slope of the cutters is not positive or another input is negative
 * @source (d) the law of `depthLimitedWeight` read the other way
 * @example
 * depthLimitedAdvance({ cutterSlope: 5e6, limitAdvance: 2e-3, blockSlope: 4e7 }, 32500) // → 2.5e-3
 */
export function depthLimitedAdvance(
  { cutterSlope, limitAdvance, blockSlope }: DepthLimit,
  /** Weight on bit [N]. */
  weight: number,
): number {
  requirePositive({ cutterSlope });
  requireNotNegative({ limitAdvance, blockSlope, weight });
  const alone = weight / cutterSlope;
  return alone <= limitAdvance ? alone : (weight + blockSlope * limitAdvance) / (cutterSlope + blockSlope);
}
