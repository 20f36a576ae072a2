import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import { buoyancyFactor } from "./buoyancy-factor.ts";

/** What `collarForShortfall` needs. */
export interface CollarForShortfallInput {
  /** Weight that rig and string together lack [N]. */
  readonly missingWeight: number;
  /** Weight of the collars in air for each length w_c [N/m]. */
  readonly collarWeight: number;
  /** Weight of the pipe whose place they take w_p [N/m]. */
  readonly pipeWeight: number;
  /** Density of the fluid [kg/m³]. */
  readonly fluidDensity: number;
}

/**
 * Length of collar that makes up a missing weight when it takes the place of pipe.
 *
 * L = ΔW/(BF (w_c - w_p)).
 *
 * @returns length [m]
 * @throws RangeError when the collar is no heavier than the pipe or the missing weight is negative
 * @source (d) balance of forces along the string
 * @example
 * collarForShortfall({ missingWeight: 5000, collarWeight: 683, pipeWeight: 194.1, fluidDensity: 1030.5 }) // → 11.7718
 */
export function collarForShortfall(input: CollarForShortfallInput): number {
  const { missingWeight, collarWeight, pipeWeight, fluidDensity } = input;
  requireNotNegative({ missingWeight, pipeWeight });
  requirePositive({ "weight of collar over pipe": collarWeight - pipeWeight });
  return missingWeight / (buoyancyFactor(fluidDensity) * (collarWeight - pipeWeight));
}
