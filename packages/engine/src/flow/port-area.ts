import { requirePositive } from "../quantity/index.ts";

/**
 * Flow area of a set of ports, given their diameters [m].
 *
 * A = Σ π d²/4; round openings.
 *
 * @returns total area [m²]
 * @throws RangeError when there is no port or a diameter is not positive
 * @source (d) area of a circle
 * @example
 * portArea([0.0127, 0.0127, 0.0127]) // → 3.8003e-4
 */
export function portArea(diameters: readonly number[]): number {
  requirePositive({ "number of ports": diameters.length });
  let area = 0;
  for (const portDiameter of diameters) {
    requirePositive({ portDiameter });
    area += (Math.PI / 4) * portDiameter ** 2;
  }
  return area;
}
