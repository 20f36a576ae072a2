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
export { type CrossedBed, thinBeds } from "./crossed-bed.ts";
export { type CutterGroup, cutterGroups, cuttersAlongProfile } from "./cutter-groups.ts";
export { type DepthLimit, depthLimitedAdvance, depthLimitedWeight } from "./depth-limit.ts";
export { type Imbalance, imbalance, worstGroup } from "./imbalance.ts";
export { marchSelfExcitation } from "./march.ts";
export type { March, MarchInput, MarchRegime, MarchSeries, MarchStart } from "./march-input.ts";
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
export {
  type SpeedTried,
  type SteadySpan,
  type SteadySpeeds,
  type SteadySpeedsInput,
  steadySpeeds,
} from "./steady-speeds.ts";
export {
  STEEL_SHEAR_MODULUS,
  STEEL_YOUNGS_MODULUS,
  type StringMode,
  type StringSection,
  stringMode,
} from "./string-mode.ts";
export { type StateInBeds, throughBeds, type WayThroughBeds } from "./through-beds.ts";
export { backwardWhirlSpeed, whirlLobes } from "./whirl.ts";
export { type WingLands, type WingLandsInput, wingLands } from "./wing-lands.ts";
export { type FirstRub, firstRubs, type WingLoads, wingLoads } from "./wing-rubbing.ts";
