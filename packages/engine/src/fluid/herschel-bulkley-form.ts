import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import type { DrillingFluid, HerschelBulkleyFluid } from "./drilling-fluid.ts";

/**
 * The same fluid written as yield stress, consistency and flow index: the form that holds the other three as
 * special cases (Newtonian: τy = 0, n = 1; Bingham: n = 1; power law: τy = 0).
 *
 * @throws RangeError when a property is negative, or density, consistency or flow index is not positive
 * @source (d) the special cases of τ = τy + K γⁿ
 * @example
 * herschelBulkleyForm({ model: "bingham", density: 1050, plasticViscosity: 0.008, yieldPoint: 4 }).yieldStress // → 4
 */
export function herschelBulkleyForm(fluid: DrillingFluid): HerschelBulkleyFluid {
  const form = rewrite(fluid);
  const { density, yieldStress, consistency, flowIndex } = form;
  requirePositive({ density, consistency, flowIndex });
  requireNotNegative({ yieldStress });
  return form;
}

function rewrite(fluid: DrillingFluid): HerschelBulkleyFluid {
  const { density } = fluid;
  const as = (yieldStress: number, consistency: number, flowIndex: number): HerschelBulkleyFluid => {
    return { model: "herschel-bulkley", density, yieldStress, consistency, flowIndex };
  };
  switch (fluid.model) {
    case "newtonian":
      return as(0, fluid.viscosity, 1);
    case "bingham":
      return as(fluid.yieldPoint, fluid.plasticViscosity, 1);
    case "power-law":
      return as(0, fluid.consistency, fluid.flowIndex);
    case "herschel-bulkley":
      return fluid;
  }
}
