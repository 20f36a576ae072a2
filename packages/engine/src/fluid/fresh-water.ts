import type { NewtonianFluid } from "./drilling-fluid.ts";
import { waterDensity } from "./water-density.ts";
import { waterViscosity } from "./water-viscosity.ts";

/**
 * Fresh water as a drilling fluid at a temperature [K], 273.15 to 373.15.
 *
 * @throws RangeError when the temperature lies outside that range
 * @source (b) Kell 1975 for density and IAPWS SR6-08 for viscosity, recalled
 * @example
 * freshWater(288.15).density // → 999.10
 */
export function freshWater(temperature: number): NewtonianFluid {
  return { model: "newtonian", density: waterDensity(temperature), viscosity: waterViscosity(temperature) };
}
