import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/**
 * Least yield strength of the usual drill pipe, grade E, 75,000 psi [Pa].
 *
 * @source (b) API Spec 5DP, recalled
 */
export const USUAL_PIPE_YIELD = 75_000 * 6894.757293168;

/**
 * Shear strength of steel over its strength in tension [-]: 0.577, by Mises' law.
 *
 * @source (b) API RP 7G, recalled
 */
const SHEAR_OVER_TENSION = 1 / Math.sqrt(3);

/** What `torsionalYield` needs. */
export interface TorsionalYieldInput {
  /** Outer diameter of the tube D [m]. */
  readonly outerDiameter: number;
  /** Bore of the tube d [m]. */
  readonly bore: number;
  /** Yield strength of the steel in tension Y [Pa]. */
  readonly yieldStrength: number;
}

/**
 * Torque at which the tube of a new pipe begins to stay twisted; tool joints and threads are often weaker.
 *
 * T = (Y/√3) (π/16) (D⁴ - d⁴)/D; no tension. A pipe worn by a fifth of its wall keeps about three quarters.
 *
 * @returns torque [N·m]
 * @throws RangeError when a diameter or the strength is not positive, or the bore is negative or leaves no wall
 * @source (b) API RP 7G, recalled
 * @example
 * torsionalYield({ outerDiameter: 0.0889, bore: 0.0702056, yieldStrength: 517106797 }) // → 25167.5
 */
export function torsionalYield({ outerDiameter, bore, yieldStrength }: TorsionalYieldInput): number {
  requirePositive({ outerDiameter, yieldStrength, wall: outerDiameter - bore });
  requireNotNegative({ bore });
  return (SHEAR_OVER_TENSION * yieldStrength * (Math.PI / 16) * (outerDiameter ** 4 - bore ** 4)) / outerDiameter;
}
