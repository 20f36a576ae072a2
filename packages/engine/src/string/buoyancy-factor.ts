import { requireBetween } from "../quantity/index.ts";
import { STEEL_DENSITY } from "./plain-end-weight.ts";

/**
 * Share of its weight in air that steel keeps in a fluid of a density [kg/m³].
 *
 * BF = 1 - ρ/ρ_steel; pipe full of and surrounded by the same fluid.
 *
 * @returns buoyancy factor [-]
 * @throws RangeError when the density lies outside 0 to 4000 kg/m³
 * @source (a) Lyons, Carter & Lapeyrouse 2012, p. 24
 * @example
 * buoyancyFactor(1557.74) // → 0.80154
 */
export function buoyancyFactor(fluidDensity: number): number {
  requireBetween("fluidDensity", fluidDensity, 0, 4000);
  return 1 - fluidDensity / STEEL_DENSITY;
}
