import { requirePositive } from "../quantity/index.ts";

/** What `portSpeed` needs. */
export interface PortSpeedInput {
  /** Pump flow Q [m³/s]. */
  readonly flow: number;
  /** Total port area A [m²]. */
  readonly area: number;
}

/**
 * Mean speed of the fluid in the ports.
 *
 * v = Q/A.
 *
 * @returns speed [m/s]
 * @throws RangeError when flow or area is not positive
 * @source (a) Guo & Liu 2011, Applied Drilling Circulation Systems
 * @example
 * portSpeed({ flow: 0.0095, area: 3.8e-4 }) // → 25
 */
export function portSpeed({ flow, area }: PortSpeedInput): number {
  requirePositive({ flow, area });
  return flow / area;
}
