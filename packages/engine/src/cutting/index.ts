export { advancePerRevolution, rateOfPenetration } from "./advance.ts";
export {
  type Bands,
  type BandsInput,
  type BandsProgress,
  type BandsSample,
  bandsInSteps,
  bandsOf,
  type FigureBands,
  type OutcomeShare,
  type UncertainInput,
} from "./bands.ts";
export { bandsDraws } from "./bands-draws.ts";
export { type BandDriver, bandDrivers, rankCorrelation } from "./bands-drivers.ts";
export { type HeldRun, heldRate } from "./bands-held-rate.ts";
export { type BitLoads, bitLoads, type SideForce, sideForce } from "./bit-loads.ts";
export { compiledKernel } from "./compiled-kernel.ts";
export { type ContactShape, contactShapeOf } from "./contact-shape.ts";
export { type CutSection, cutSections } from "./cut-sections.ts";
export { contactTemperatures, type HeatConditions } from "./cutter-heat.ts";
export { type CutterState, cutterState, frictionLineOrigin } from "./cutter-law.ts";
export { type CutterLoad, cutterLoads } from "./cutter-load.ts";
export { type CuttingKernel, plainKernel } from "./cutting-kernel.ts";
export { cuttingRatio } from "./cutting-ratio.ts";
export {
  advanceWhere,
  type BitInRock,
  type DrilledState,
  drillAtAdvance,
  drillAtPower,
  drillAtTorque,
  drillAtWeight,
  type StateMeasure,
} from "./drilled-state.ts";
export {
  ACCEPTED_LATERAL_SHARE,
  drillingFindings,
  GOOD_LATERAL_SHARE,
  UNEVEN_VOLUME_MULTIPLE,
} from "./drilling-findings.ts";
export { type DrillingFigures, drillingWorkings } from "./drilling-workings.ts";
export { type EdgeLoads, edgeLoads, emptyEdgeLoads } from "./edge-loads.ts";
export { edgeReach } from "./edge-reach.ts";
export { type EdgeResponse, edgeResponse } from "./edge-response.ts";
export type { EdgeWear } from "./edge-samples.ts";
export type { EdgeTrace } from "./edge-trace.ts";
export { type Engagement, emptyEngagement, engage } from "./engage.ts";
export {
  CARBIDE_CONDUCTIVITY,
  COBALT_TABLE_LIMIT,
  type CoolingFilm,
  criticalFlatLoad,
  cutterThermalResponse,
  type FlatHeat,
  flatHeat,
  flatTemperatureRise,
  LEACHED_TABLE_LIMIT,
  type RockHeat,
  type SlidingFlat,
  WEAR_QUICKENS_TEMPERATURE,
} from "./flat-temperature.ts";
export { laboratoryRegression, type RegressionBit, type RegressionRate } from "./laboratory-regression.ts";
export {
  type LargestRate,
  largestRate,
  type RateBound,
  type RateLimitName,
  type RateLimits,
} from "./largest-rate.ts";
export { layoutFindings, ORDINARY_GAUGE_GRIND } from "./layout-findings.ts";
export { limitMeasures } from "./limit-measures.ts";
export {
  type HeatLine,
  type RunningCell,
  type RunningMap,
  type RunningMapInput,
  runningMap,
  runningTable,
} from "./running-map.ts";
export { type BestRun, bestRun, type SpeedRange, type SpeedWindow } from "./running-map-best.ts";
export { type AdvanceRung, advanceLadder, ladderWeight } from "./running-map-ladder.ts";
export { LIMITS_OF_ADVANCE, LIMITS_OF_SPEED, limitsPassed } from "./running-map-limits.ts";
export {
  advanceBounds,
  type LimitedBit,
  type LimitLine,
  limitLines,
  type RunningMapPoint,
  rateLine,
  speedBounds,
} from "./running-map-lines.ts";
export { sideForceJudge } from "./side-force-judge.ts";
export * from "./solver/index.ts";
export {
  adjustedSpecificEnergy,
  bitFrictionNumber,
  drillingSpecificEnergy,
  drillingStrength,
  energyFromFriction,
  mechanicalSpecificEnergy,
  PEAK_EFFICIENCY,
} from "./specific-energy.ts";
export * from "./stability/index.ts";
export { type SteadyDrilling, type SteadyDrillingInput, steadyDrilling } from "./steady-drilling.ts";
export { type TraceGrid, traceEdges, USUAL_CELL_WIDTH } from "./trace-edges.ts";
export { FILM_COEFFICIENT_RANGE, usualCoolingFilm } from "./usual-cooling-film.ts";
export {
  type BitLaw,
  type BitLawPoint,
  type BluntBit,
  bitConstantOfSpread,
  bitLaw,
  bitLawAtWeight,
  rubbingFrictionNumber,
  sharpFrictionNumber,
} from "./whole-bit-law.ts";
