export * from "./advised-bed.ts";
export * from "./bit-choices.ts";
export { type BodyMaterial, bodyForGround, MATRIX_SHARE } from "./body-for-ground.ts";
export * from "./break-in.ts";
export type { CandidateBit, CandidateBlow, CandidateFigures, SoundCandidate } from "./candidate-bit.ts";
export * from "./card-content.ts";
export { type CardFeed, type CardFeedInput, FEED_DEAD_BAND } from "./card-feed.ts";
export type { CardFigure, CardFigureKind } from "./card-figure.ts";
export type { CardFuel, CardFuelInput, CardMakeUp, CardMakeUpInput } from "./card-gear.ts";
export * from "./casing-point.ts";
export * from "./chamfer-for-ground.ts";
export * from "./choose-bit.ts";
export * from "./cutter-size-for-ground.ts";
export type { AdvisedFluid } from "./drilling-fluid.ts";
export * from "./fit-limits.ts";
export * from "./fit-of-bed.ts";
export * from "./gauge-for-ground.ts";
export * from "./ground-kind.ts";
export * from "./ground-mix.ts";
export { AUGER_DEPTH, type InsteadUse, type OtherTool } from "./instead-of-pdc.ts";
export * from "./leached-for-ground.ts";
export {
  type PickedPorts,
  type PickPortsInput,
  PORT_GOALS,
  type PortGoal,
  pickPorts,
} from "./pick-ports.ts";
export type { PortsChoice } from "./port-candidates.ts";
export * from "./port-limits.ts";
export * from "./ports-for-pump.ts";
export * from "./practice-rate.ts";
export * from "./practice-weight-and-speed.ts";
export * from "./profile-for-ground.ts";
export * from "./rakes-for-ground.ts";
export * from "./rank-candidates.ts";
export type { Alternative, Choice, Reason } from "./reason.ts";
export {
  type MovedFigure,
  type ReasonFigure,
  type RuleCheck,
  type RuleChecksInput,
  ruleChecks,
} from "./rule-checks.ts";
export * from "./running-point.ts";
export * from "./safety-cautions.ts";
export * from "./staged-choice.ts";
export * from "./stop-signs.ts";
export * from "./sweep-of-wings.ts";
export { VERDICT_WORDS, type Verdict } from "./verdict.ts";
export * from "./wings-for-ground.ts";
