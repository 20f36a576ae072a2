import { DIAL_300_SHEAR_RATE } from "./dial-readings.ts";
import type { BinghamFluid, DrillingFluid } from "./drilling-fluid.ts";
import { shearStress } from "./shear-stress.ts";

/**
 * The plastic viscosity and yield point that the standard viscometer would show for a fluid of any law.
 *
 * PV = (τ(1022) - τ(511))/511, YP = τ(511) - 511 PV, the rates in 1/s. For relations that were fitted to PV and YP.
 *
 * @throws RangeError when a fluid property is out of range
 * @source (d) the Bingham law through the fluid's stress at the two viscometer rates
 * @example
 * binghamEquivalent({ model: "newtonian", density: 999, viscosity: 0.0011 }).plasticViscosity // → 0.0011
 */
export function binghamEquivalent(fluid: DrillingFluid): BinghamFluid {
  const at300 = shearStress({ fluid, shearRate: DIAL_300_SHEAR_RATE });
  const at600 = shearStress({ fluid, shearRate: 2 * DIAL_300_SHEAR_RATE });
  return {
    model: "bingham",
    density: fluid.density,
    plasticViscosity: (at600 - at300) / DIAL_300_SHEAR_RATE,
    yieldPoint: Math.max(0, 2 * at300 - at600),
  };
}
