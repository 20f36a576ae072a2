import { requirePositive } from "../quantity/index.ts";

/** What `compressorFuelFlow` needs. */
export interface CompressorFuelFlowInput {
  /** Fuel burnt, mass a second [kg/s]. */
  readonly fuelMassFlow: number;
  /** Density of the fuel [kg/m³]. */
  readonly fuelDensity: number;
}

/**
 * Volume of fuel that a compressor's engine burns a second; connections and idling come on top.
 *
 * Q = w/ρ.
 *
 * @returns fuel flow [m³/s]
 * @throws RangeError when an input is not positive
 * @source (a) Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual; they add 20 % for connections
 * @example
 * compressorFuelFlow({ fuelMassFlow: 0.01042, fuelDensity: 814.9 }) // → 1.27869e-5
 */
export function compressorFuelFlow({ fuelMassFlow, fuelDensity }: CompressorFuelFlowInput): number {
  requirePositive({ fuelMassFlow, fuelDensity });
  return fuelMassFlow / fuelDensity;
}
