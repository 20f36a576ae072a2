import { binghamFromDial, type DrillingFluid, herschelBulkleyFromDial, powerLawFromDial } from "@bitwright/engine";
import type { ResolvedFluid } from "../document/resolved-traveler.ts";

/** The law of flow that the facts given of a fluid allow: the fuller the readings, the closer the law. */
export function drillingFluidOf({
  density,
  plasticViscosity,
  yieldPoint,
  dialReadings,
  law,
}: ResolvedFluid): DrillingFluid {
  if (dialReadings) {
    const { at600, at300, at6, at3 } = dialReadings;
    if (law === "power law") return powerLawFromDial({ density, at600, at300 });
    if (law !== "Bingham" && at6 !== undefined && at3 !== undefined)
      return herschelBulkleyFromDial({ density, at600, at300, at6, at3 });
    return binghamFromDial({ density, at600, at300 });
  }
  if (yieldPoint > 0) return { model: "bingham", density, plasticViscosity, yieldPoint };
  return { model: "newtonian", density, viscosity: plasticViscosity };
}
