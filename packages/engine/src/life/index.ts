export { type BearingPads, bearingPads } from "./bearing-pads.ts";
export { type CriticalWeight, type CriticalWeightInput, criticalWeights } from "./critical-weight.ts";
export { type CutterFilms, type CutterWash, cutterFilms } from "./cutter-films.ts";
export { deepestWear, levelEdgeWear, wornVolume } from "./edge-wear.ts";
export { type EdgeWearRates, edgeWearRates, WEAR_POINTS } from "./edge-wear-rates.ts";
export {
  filmCoefficient,
  LAMINAR_NUSSELT,
  WATER_CONDUCTIVITY,
  WATER_HEAT_CAPACITY,
  type WashingFluid,
} from "./film-coefficient.ts";
export { grindingRatio } from "./grinding-ratio.ts";
export { gaugeAfter, type HeldGauge } from "./held-gauge.ts";
export { type Life, life, lifeOf } from "./life.ts";
export type { LifeFigures } from "./life-figures.ts";
export type { HeldLimits, LifeBed, LifeInput, LifeLimits } from "./life-input.ts";
export {
  LEAST_WORTHWHILE_RATE,
  lifeLimitsOf,
  USUAL_END_GRADE,
  USUAL_END_UNDERGAUGE,
  USUAL_LARGEST_CHANGE,
} from "./life-limits.ts";
export { lifeMarch, type MarchedLife } from "./life-march.ts";
export type { LifeEnd, LifeEndName, LifeStep } from "./life-step.ts";
export { PAD_FACES, type ProtectedFace } from "./pad-protection.ts";
export { type StateInBed, stateInBed, type WornBit } from "./state-in-bed.ts";
export { wallLandsOf } from "./wall-lands.ts";
export { type OnWall, type PadWear, padWear, sideLossAtWall } from "./wall-wear.ts";
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
