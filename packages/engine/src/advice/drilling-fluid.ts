import type { CirculationMedium } from "../fluid/index.ts";

/** What carries the cuttings, as a driller would name it. */
export type AdvisedFluid = CirculationMedium | "foam" | "mist";

/** Whether the fluid is mostly gas, so that the relations of a liquid say nothing about it. */
export function isGasFluid(fluid: AdvisedFluid): boolean {
  return fluid === "foam" || fluid === "stiff-foam" || fluid === "mist" || fluid === "air";
}
