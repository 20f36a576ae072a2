import { requireBetween } from "../quantity/index.ts";

/**
 * Density of fresh, air-free water at atmospheric pressure.
 *
 * ρ = (999.83952 + 16.945176 t - 7.9870401e-3 t² - 46.170461e-6 t³ + 105.56302e-9 t⁴ - 280.54253e-12 t⁵)
 *     / (1 + 16.879850e-3 t), t in °C; holds from 0 to 150 °C, kept here to 0 to 100 °C.
 *
 * @returns density [kg/m³]
 * @throws RangeError when the temperature lies outside 273.15 to 373.15 K
 * @source (b) Kell 1975, J. Chem. Eng. Data 20:97, recalled; agrees with 999.10 at 15 °C and 997.05 at 25 °C
 * @example
 * waterDensity(288.15) // → 999.10
 */
export function waterDensity(temperature: number): number {
  requireBetween("temperature", temperature, CELSIUS_ZERO, CELSIUS_ZERO + 100);
  const t = temperature - CELSIUS_ZERO;
  const polynomial =
    999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
  return polynomial / (1 + 16.87985e-3 * t);
}

/** Ice point, zero of the Celsius scale [K]. Exact by definition. */
const CELSIUS_ZERO = 273.15;
