import { requireBetween } from "../quantity/index.ts";

/**
 * Dynamic viscosity of fresh water at atmospheric pressure.
 *
 * μ = Σ aᵢ (T/300 K)^bᵢ in µPa s, four terms; holds from 253.15 to 383.15 K, kept here to 273.15 to 373.15 K.
 *
 * @returns dynamic viscosity [Pa s]
 * @throws RangeError when the temperature lies outside 273.15 to 373.15 K
 * @source (b) IAPWS supplementary release SR6-08 on liquid water at 0.1 MPa, recalled; agrees with 0.8900 mPa s at 25 °C
 * @example
 * waterViscosity(298.15) // → 8.9e-4
 */
export function waterViscosity(temperature: number): number {
  requireBetween("temperature", temperature, 273.15, 373.15);
  const reduced = temperature / 300;
  return 1e-6 * TERMS.reduce((sum, [factor, power]) => sum + factor * reduced ** power, 0);
}

/** Factors [µPa s] and powers [-] of the four terms. */
const TERMS: readonly (readonly [factor: number, power: number])[] = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
];
