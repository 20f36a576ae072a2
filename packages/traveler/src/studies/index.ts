export {
  type BandsStudy,
  type BandsStudyOptions,
  type BandsStudyProgress,
  type BedBands,
  bandsStudy,
  bandsStudyInSteps,
  USUAL_SAMPLES,
  USUAL_SEED,
} from "./bands-study.ts";
export type { BedFigure, BedInputs, BedUncertainty } from "./bed-sample.ts";
export type { ChoiceLimits, ChoiceOptions, JobChoices } from "./choice-options.ts";
export {
  type ChoiceStudy,
  type ChoiceStudyOptions,
  type ChoiceStudyProgress,
  choiceStudy,
  choiceStudyInSteps,
} from "./choice-study.ts";
export { type DepthStudy, depthStudy, type JointAtDepth } from "./depth-study.ts";
export {
  type FlowCase,
  type FlowChange,
  type FlowStudy,
  flowStudy,
  lossesInOrder,
  type PartLoss,
} from "./flow-study.ts";
export type { InsidePoint } from "./inside-points.ts";
export {
  type LifeBands,
  type LifeBandsOptions,
  type LifeFigure,
  lifeBands,
  lifeBandsInSteps,
  USUAL_LIVES,
} from "./life-bands.ts";
export {
  type BedMap,
  type MapStudy,
  type MapStudyOptions,
  type MapStudyProgress,
  mapStudy,
  mapStudyInSteps,
} from "./map-study.ts";
export { type PortsStudy, portsStudy, type StudiedSlot } from "./ports-study.ts";
export { type RuleBox, ruleBox } from "./rule-box.ts";
export {
  type LayoutStudy,
  type LayoutStudyOptions,
  type LayoutStudyProgress,
  layoutQuestion,
  layoutStudy,
  layoutStudyInSteps,
  layoutStudyOf,
} from "./solve-layout.ts";
export {
  type StabilityProgress,
  type StabilityStudy,
  type StabilityStudyOptions,
  type StudiedStability,
  stabilityStudy,
  stabilityStudyInSteps,
  USUAL_SPEEDS,
} from "./stability-study.ts";
export { type StudiedBed, type StudiedBit, studiedBeds } from "./studied-beds.ts";
export { studyJson } from "./study-json.ts";
