import { type Band, requireNotNegative, requirePositive } from "../quantity/index.ts";

/** A pound of fuel for each horsepower and hour [kg/J]. */
const POUND_PER_HORSEPOWER_HOUR = 0.45359237 / (550 * 0.45359237 * 9.80665 * 0.3048 * 3600);

/**
 * Fuel that a diesel burns for each work at its shaft [kg/J]: 0.36 lb/(hp·h), a good engine well loaded to a worn one.
 *
 * @source (c) common practice, no source
 */
export const SPECIFIC_CONSUMPTION: Band = {
  low: 0.34 * POUND_PER_HORSEPOWER_HOUR,
  mid: 0.36 * POUND_PER_HORSEPOWER_HOUR,
  high: 0.42 * POUND_PER_HORSEPOWER_HOUR,
};

/**
 * Density of diesel fuel [kg/m³]: 7.1 lb/gal.
 *
 * @source (c) common practice, no source
 */
export const USUAL_FUEL_DENSITY = (7.1 * 0.45359237) / (231 * 0.0254 ** 3);

/** What `engineFuelFlow` needs. */
export interface EngineFuelFlowInput {
  /** Power at the shaft P [W]. */
  readonly enginePower: number;
  /** Fuel for each work at the shaft b [kg/J]. */
  readonly specificConsumption: number;
  /** Density of the fuel ρ [kg/m³]. */
  readonly fuelDensity: number;
}

/**
 * Fuel that an engine burns at a load.
 *
 * Q = P b/ρ.
 *
 * @returns fuel flow [m³/s]
 * @throws RangeError when the power is negative or another input not positive
 * @source (d) work over the fuel for each work
 * @example
 * engineFuelFlow({ enginePower: 74570, specificConsumption: 6.0828e-8, fuelDensity: 850.77 }) // → 5.3316e-6
 */
export function engineFuelFlow({ enginePower, specificConsumption, fuelDensity }: EngineFuelFlowInput): number {
  requireNotNegative({ enginePower });
  requirePositive({ specificConsumption, fuelDensity });
  return (enginePower * specificConsumption) / fuelDensity;
}
