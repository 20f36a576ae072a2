export { type AxialLimitInput, axialLimitSpeed, criticalDelay, scaledAxialLimit } from "./axial-limit.ts";
export {
  type BedCrossing,
  type BedCrossingInput,
  bedCrossing,
  type CrossingPlace,
  type CutterPeak,
} from "./bed-crossing.ts";
export { type BedLoads, type BitPlace, bedLoads, emptyBedLoads } from "./bed-loads.ts";
export { type BedLaws, type BitInBeds, bitInBeds } from "./bit-in-beds.ts";
export { bitSlopes } from "./bit-slopes.ts";
export { type CrossedBed, thinBeds } from "./crossed-bed.ts";
export { type CutterGroup, cutterGroups, cuttersAlongProfile } from "./cutter-groups.ts";
export { type DepthLimit, depthLimitedAdvance, depthLimitedWeight } from "./depth-limit.ts";
export { type Imbalance, imbalance, worstGroup } from "./imbalance.ts";
export { marchSelfExcitation } from "./march.ts";
export type { March, MarchInput, MarchRegime, MarchSeries, MarchStart } from "./march-input.ts";
export { type NeededDampingInput, neededDamping } from "./needed-damping.ts";
export { type LengthsInStep, lengthsInStep, RESONANCE_MARGIN, resonanceWindows } from "./resonance.ts";
export { type RubbingBit, type RubbingState, rubbingAtAdvance, rubbingAtWeight } from "./rubbing-bit.ts";
export {
  type BitSlopes,
  type BladeBit,
  bladeSlopes,
  type OneModeString,
  type ScaledBit,
  scaledBit,
} from "./scaled-bit.ts";
export { type WingDirection, wingDirection } from "./side-force-direction.ts";
export type {
  CrossingToReview,
  NamedBed,
  ReviewedCrossing,
  ReviewedRubbing,
  ReviewedString,
  ReviewedWhirl,
  StabilityFigures,
  StabilityInput,
  StabilityReview,
} from "./stability-figures.ts";
export { CROSSING_OVERLOAD, MUCH_STICKING, speedFindings } from "./stability-findings.ts";
export { stabilityReview, USUAL_TWIST_DAMPING } from "./stability-review.ts";
export {
  type SpeedsProgress,
  type SpeedTried,
  type SteadySpan,
  type SteadySpeeds,
  type SteadySpeedsInput,
  steadySpeeds,
  steadySpeedsInSteps,
} from "./steady-speeds.ts";
export {
  STEEL_SHEAR_MODULUS,
  STEEL_YOUNGS_MODULUS,
  type StringMode,
  type StringSection,
  stringMode,
  stringOfLength,
} from "./string-mode.ts";
export { type HeldInBeds, type StateInBeds, throughBeds, type WayThroughBeds } from "./through-beds.ts";
export { backwardWhirlSpeed, whirlLobes } from "./whirl.ts";
export { ROOM_TO_WHIRL, type WhirlJudgement, whirlFindings } from "./whirl-tendency.ts";
export { type WingLands, type WingLandsInput, wingLands } from "./wing-lands.ts";
export { type FirstRub, firstRubs, type WingLoads, wingLoads } from "./wing-rubbing.ts";
