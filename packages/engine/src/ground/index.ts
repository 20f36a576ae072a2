export type { Bed } from "./bed.ts";
export {
  bottomHolePressureDifference,
  DEFAULT_WATER_LEVEL,
  type FluidColumns,
} from "./bottom-hole-pressure-difference.ts";
export {
  type ClassifiedGround,
  type ClassifiedWord,
  classifyGround,
  type ReadingConfidence,
  type WordRole,
} from "./classify-ground.ts";
export { type ConfinedRock, confinedStrength } from "./confined-strength.ts";
export type { GroundModifier } from "./driller-lexicon.ts";
export type { Abrasivity, GroundBed, Stringer } from "./ground-bed.ts";
export { type GroundColumn, type GroundColumnInput, groundColumn } from "./ground-column.ts";
export { HAZARD_WORDS, type Hazard } from "./hazard.ts";
export type { Rock, RockExtraProperties, RockFamily, RockProperties } from "./rock.ts";
export {
  type AbrasiveRock,
  type AbrasivityClass,
  abrasivityClass,
  type CercharClass,
  cercharClass,
  rockAbrasivityIndex,
} from "./rock-abrasivity.ts";
export {
  type RockResponse,
  type RockResponseBands,
  type RockResponseInput,
  type RockResponseResult,
  rockResponse,
} from "./rock-response.ts";
export { rockById, rockIds, rockTable } from "./rock-table.ts";
export { type ShopRockInput, shopRock } from "./shop-rock.ts";
export {
  LOG_INPUT_UNITS,
  type LogInputKind,
  type LogReading,
  type StrengthCorrelation,
  strengthCorrelations,
} from "./strength-correlations.ts";
export {
  LOG_STRENGTH_SPREAD,
  type StrengthFromLog,
  type StrengthFromLogInput,
  strengthCorrelationById,
  strengthFromLog,
} from "./strength-from-log.ts";
export {
  CEMENTED_SOIL_STRENGTH,
  DECOMPOSED_SHARE,
  type RockInState,
  strengthInState,
  WEATHERED_SHARE,
} from "./strength-in-state.ts";
export { type MohrLine, unconfinedStrengthFromMohr } from "./unconfined-strength.ts";
export { unnamedGround } from "./unnamed-ground.ts";
export { LEAST_STRENGTH } from "./worked-bed.ts";
