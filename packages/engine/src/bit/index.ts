export {
  BACKING_SHARE,
  type BitBody,
  type BodyInput,
  bitBody,
  CORE_SHARE,
  PORT_WALL,
  SMALLEST_SOUND_PORT,
  WING_LIP,
} from "./bit-body.ts";
export type { BitMaterial } from "./bit-material.ts";
export { type BitSpec, ORDINARY_GAUGE_ANGLE, ORDINARY_OVERLAP } from "./bit-spec.ts";
export {
  type ClassifiedBit,
  classificationCode,
  classificationMeaning,
  densityDigit,
  halfInchEquivalents,
} from "./classification-code.ts";
export {
  CORE_THAT_BREAKS,
  type Coverage,
  coverage,
  cuttersSweeping,
  NARROWEST_RING,
  uncutRings,
} from "./coverage.ts";
export { type CutterFrame, cutterFrame, edgePoint } from "./cutter-frame.ts";
export { estimatedProfileAngles, type TrackPoint } from "./estimated-profile-angle.ts";
export { type CutterExposure, type Exposure, exposure, ORDINARY_EXPOSURE_SHARE } from "./exposure.ts";
export { cuttingTip, type FaceTilt, faceAcrossAxis, faceAtGauge, faceWithTipAt } from "./face-on-profile.ts";
export { type FaceStock, faceStock, type StationedFace } from "./face-stock.ts";
export { type GaugePads, gaugePadArea, type PadProtection } from "./gauge-pads.ts";
export { type CasingPass, casingPass, type GrindWindow, gaugeTolerance, grindWindow } from "./gauge-tolerance.ts";
export { generateLayout, type LayoutJudge } from "./generate-layout.ts";
export type { CutterPlace, GeneratedBit } from "./generated-bit.ts";
export { type LayoutPlan, type PlannedCutter, planOfBit } from "./layout-plan.ts";
export type { CutterRole } from "./layout-setting.ts";
export { type MeasuredBit, type MeasuredPoint, type MeasuredRow, measuredLayout } from "./measured-layout.ts";
export { placedCutter } from "./new-cutter-on-bit.ts";
export type { BitLayout, CutterPose, PlacedCutter } from "./placed-cutter.ts";
export { faceOf, plannedBit } from "./planned-bit.ts";
export {
  cutterCylinder,
  LEAST_POCKET_WALL,
  POCKET_CLEARANCE,
  type PocketWall,
  type PocketWallInput,
  type PocketWalls,
  pocketWall,
  pocketWalls,
} from "./pocket-wall.ts";
export { type BitProfile, bitProfile, type ProfileShape, type ProfileSpec, USUAL_GAUGE_LENGTH } from "./profile.ts";
export type { ProfilePiece, ProfilePlace } from "./profile-piece.ts";
export { type ProfilePoint, profileAtArc, profileAtRadius } from "./profile-place.ts";
export { profileShapeOf } from "./profile-shape-of.ts";
export { NOSE_HALF_SPAN, type ProfileZone, profileZone } from "./profile-zone.ts";
export {
  CENTRE_SIDE_RAKE,
  type EvenRakes,
  type RakedCutter,
  type RakeGround,
  type RakeSchedule,
  type Rakes,
  rakeFindings,
  rakesAt,
  usualRakes,
  type ZoneRakes,
} from "./rake-schedule.ts";
export { NO_RAKE_SHIFTS, type RakeShifts, shiftedRakes } from "./rake-shifts.ts";
export { type BitReview, type BitReviewInput, reviewBit } from "./review-bit.ts";
export {
  type RingSizes,
  type RungBit,
  ringGap,
  ringSizes,
  type ThermalGrowthInput,
  thermalGrowth,
  undergaugeOverGap,
} from "./ring-gauge.ts";
export { PORT_SHARE_OF_CORE, portRoom, slotArea, type WingedCore } from "./slot-area.ts";
export { equalAreaRadii, type StationSpread, spreadExponent, spreadStations } from "./station-spread.ts";
export { type SweepingFace, sweptInterval } from "./swept-interval.ts";
export {
  cuttersOnWings,
  ORDINARY_SWEEP,
  ORDINARY_UNEVENNESS,
  sweptAzimuth,
  type WingPlan,
  wingAngles,
} from "./wing-plan.ts";
export { type WingSlot, wingAzimuths, wingSlots } from "./wing-slots.ts";
export { gapsBetweenWings, wingsAround } from "./wings-around.ts";
export { zonesOfLayout } from "./zones-of-layout.ts";
