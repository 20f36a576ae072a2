export * from "./document/index.ts";
export * from "./import/index.ts";
export * from "./layout-file/index.ts";
export * from "./quantity/index.ts";
export type { HeatCurve, HeatCurves } from "./stations/heat-curves.ts";
export {
  type LifeOptions,
  type LifeQuestion,
  type LifeStation,
  lifeStation,
  lifeStationInSteps,
  MOST_HOLES,
} from "./stations/life-station.ts";
export type { PowerStation } from "./stations/power-station.ts";
export type { BedStability, StabilityStation } from "./stations/stability-station.ts";
export * from "./studies/index.ts";
export { workUp } from "./work-up.ts";
export * from "./workup.ts";
export { workupJson } from "./workup-json.ts";
