import { requireNotNegative } from "../quantity/index.ts";
import type { DrillingFluid } from "./drilling-fluid.ts";
import { herschelBulkleyForm } from "./herschel-bulkley-form.ts";

/** What `shearStress` needs. */
export interface ShearStressInput {
  readonly fluid: DrillingFluid;
  /** Rate of shear γ [1/s]. */
  readonly shearRate: number;
}

/**
 * Shear stress of a drilling fluid at a rate of shear.
 *
 * τ = τy + K γⁿ, with τy = 0 and n = 1 where the fluid's law has none.
 *
 * @returns shear stress [Pa]
 * @throws RangeError when the rate is negative or a fluid property is out of range
 * @source (d) definition of the four fluid laws
 * @example
 * shearStress({ fluid: { model: "bingham", density: 1050, plasticViscosity: 0.008, yieldPoint: 4 }, shearRate: 511 }) // → 8.088
 */
export function shearStress({ fluid, shearRate }: ShearStressInput): number {
  requireNotNegative({ shearRate });
  const { yieldStress, consistency, flowIndex } = herschelBulkleyForm(fluid);
  return yieldStress + consistency * shearRate ** flowIndex;
}
