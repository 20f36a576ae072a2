import { requireBetween, requirePositive } from "../quantity/index.ts";

/**
 * Gas constant of dry air [J/(kg K)].
 *
 * @source (b) ISO 2533:1975, Standard atmosphere, recalled
 */
export const AIR_GAS_CONSTANT = 287.05;

/**
 * Pressure of the standard atmosphere at sea level [Pa].
 *
 * @source (a) exact by definition, 10th General Conference on Weights and Measures 1954
 */
export const STANDARD_PRESSURE = 101325;

/**
 * Temperature at which compressor ratings count standard air, 60 °F [K].
 *
 * @source (a) Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual
 */
export const STANDARD_AIR_TEMPERATURE = 288.706;

/** State of a body of air. */
export interface AirState {
  /** Absolute pressure [Pa]. */
  readonly pressure: number;
  /** Temperature [K]. */
  readonly temperature: number;
}

/**
 * Density of dry air.
 *
 * ρ = p/(R T); ideal gas, good to 1 % at the pressures of drilling compressors.
 *
 * @returns density [kg/m³]
 * @throws RangeError when pressure or temperature is not positive
 * @source (a) Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual
 * @example
 * airDensity({ pressure: 101325, temperature: 288.706 }) // → 1.2227
 */
export function airDensity({ pressure, temperature }: AirState): number {
  requirePositive({ pressure, temperature });
  return pressure / (AIR_GAS_CONSTANT * temperature);
}

/**
 * Atmospheric pressure at a height [m] above the sea.
 *
 * p = p₀ (1 - 2.25577e-5 h)^5.25588; standard atmosphere, -500 to 11,000 m.
 *
 * @returns absolute pressure [Pa]
 * @throws RangeError when the height lies outside -500 to 11,000 m
 * @source (b) ISO 2533:1975, Standard atmosphere, recalled
 * @example
 * atmosphericPressure(1828.8) // → 81200
 */
export function atmosphericPressure(altitude: number): number {
  requireBetween("altitude", altitude, -500, 11_000);
  return STANDARD_PRESSURE * (1 - 2.25577e-5 * altitude) ** 5.25588;
}

/** What `actualAirFlow` needs. */
export interface ActualAirFlowInput {
  /** Flow counted as standard air (sea level, 60 °F) [m³/s]. */
  readonly standardFlow: number;
  /** Density of the air at the compressor's inlet [kg/m³]. */
  readonly inletDensity: number;
}

/**
 * Volume of thin air that a compressor must swallow to deliver a flow of standard air.
 *
 * Q = Q₀ ρ₀/ρ.
 *
 * @returns flow at the inlet [m³/s]
 * @throws RangeError when flow or density is not positive
 * @source (a) Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual
 * @example
 * actualAirFlow({ standardFlow: 0.1784, inletDensity: 0.9611 }) // → 0.2270
 */
export function actualAirFlow({ standardFlow, inletDensity }: ActualAirFlowInput): number {
  requirePositive({ standardFlow, inletDensity });
  return (
    standardFlow * (airDensity({ pressure: STANDARD_PRESSURE, temperature: STANDARD_AIR_TEMPERATURE }) / inletDensity)
  );
}
