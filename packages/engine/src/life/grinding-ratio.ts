import { requirePositive } from "../quantity/index.ts";

/**
 * Rock drilled for each volume of cutter worn off: how hard the ground is on the diamond.
 *
 * G = V_rock/V_worn. In granite early cutters are recalled at 1e5 to 5e5, deeply leached ones at 1e6 to 1e7 (weak memory).
 *
 * @returns ratio [-]
 * @throws RangeError when a volume is not positive
 * @source (d) quotient of two volumes
 * @example
 * grindingRatio({ rockVolume: 2e-6 * 3600, wornVolume: 0.05e-6 }) // → 144000
 */
export function grindingRatio({
  rockVolume,
  wornVolume,
}: {
  /** Volume of rock drilled [m³]. */
  readonly rockVolume: number;
  /** Volume worn off the cutters [m³]. */
  readonly wornVolume: number;
}): number {
  requirePositive({ rockVolume, wornVolume });
  return rockVolume / wornVolume;
}
