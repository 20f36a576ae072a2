import { binghamLoss } from "./bingham-loss.ts";
import type { ConduitLoss, ConduitLossInput } from "./conduit-state.ts";
import { herschelBulkleyLoss } from "./herschel-bulkley-loss.ts";
import { newtonianLoss } from "./newtonian-loss.ts";

/**
 * Pressure lost along a pipe bore or annulus, by the law of the fluid in it.
 *
 * @throws RangeError when the flow, a fluid property or a diameter is out of range, or length or roughness is negative
 * @source (b) the laws of newtonianLoss, binghamLoss and herschelBulkleyLoss, recalled
 * @example
 * conduitLoss({ fluid: { model: "newtonian", density: 999.1, viscosity: 0.0011375 }, conduit: { shape: "pipe", bore: 0.0702056 }, flow: 0.00946353, length: 91.44 }).pressureDrop // → 77917
 */
export function conduitLoss(input: ConduitLossInput): ConduitLoss {
  const { fluid, ...rest } = input;
  switch (fluid.model) {
    case "newtonian":
      return newtonianLoss({ ...rest, fluid });
    case "bingham":
      return binghamLoss({ ...rest, fluid });
    case "power-law":
    case "herschel-bulkley":
      return herschelBulkleyLoss({ ...rest, fluid });
  }
}
