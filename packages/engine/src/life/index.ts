export { type CriticalWeight, type CriticalWeightInput, criticalWeights } from "./critical-weight.ts";
export { type CutterFilms, type CutterWash, cutterFilms } from "./cutter-films.ts";
export { deepestWear, levelEdgeWear, wornVolume } from "./edge-wear.ts";
export { type EdgeWearRates, edgeWearRates, WEAR_POINTS } from "./edge-wear-rates.ts";
export * from "./film-coefficient.ts";
export { grindingRatio } from "./grinding-ratio.ts";
export { type Life, life, lifeOf } from "./life.ts";
export type { LifeFigures } from "./life-figures.ts";
export * from "./life-input.ts";
export * from "./life-limits.ts";
export { lifeMarch, type MarchedLife } from "./life-march.ts";
export type { LifeEnd, LifeEndName, LifeStep } from "./life-step.ts";
export { type StateInBed, stateInBed, type WornBit } from "./state-in-bed.ts";
export {
  EDGE_ROUNDING,
  EDGE_SHARE_OF_CUTTING,
  REFERENCE_CERCHAR,
  type RubbedEdge,
  relativeAbrasivity,
  WEAR_COEFFICIENT,
  WEAR_MULTIPLE_AT_TABLE_LIMIT,
  wearHeatFactor,
  wearPressure,
} from "./wear-law.ts";
export { type WearState, wearStateOf } from "./wear-state.ts";
