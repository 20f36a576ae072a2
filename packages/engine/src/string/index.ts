export { balanceDepth } from "./balance-depth.ts";
export { buoyancyFactor } from "./buoyancy-factor.ts";
export { type CollarForShortfallInput, collarForShortfall } from "./collar-for-shortfall.ts";
export { type CollarLengthNeededInput, collarLengthNeeded, USABLE_COLLAR_SHARE } from "./collar-length.ts";
export { REGULAR_CONNECTIONS, type RegularConnection, type RegularThread } from "./connection-list.ts";
export { type CriticalRotarySpeedInput, criticalRotarySpeed } from "./critical-rotary-speed.ts";
export { type DraggingTorqueInput, draggingTorque } from "./dragging-torque.ts";
export { DRILL_COLLARS, type DrillCollar } from "./drill-collar-list.ts";
export { DRILL_PIPES, type DrillPipe, JOINT_LENGTHS, type JointLength } from "./drill-pipe-list.ts";
export { type HoistingWorkInput, hoistingWork } from "./hoisting-work.ts";
export { type BitJoint, MAKE_UP_TORQUES, type MakeUpTorque, makeUpTorque } from "./make-up-torque.ts";
export { type PinChoice, pinForBitSize } from "./pin-for-bit-size.ts";
export { JOINTED_OVER_PLAIN, jointedPipeWeight, plainEndWeight, STEEL_DENSITY } from "./plain-end-weight.ts";
export { RATED_RIGS, type RatedRig, RIG_CLASSES, type RigClass } from "./rig-class-list.ts";
export { type RotaryPowerInput, rotaryPower } from "./rotary-power.ts";
export {
  type CollarRun,
  type HangingString,
  type HangingWeightInput,
  hangingWeight,
  type LengthThatWeighsInput,
  lengthThatWeighs,
  type PipeRun,
  type StringMakeUp,
} from "./string-make-up.ts";
export type {
  CollarNeeded,
  CollarsForWeight,
  NeutralPart,
  NeutralPoint,
  PipeSize,
  StringStation,
  StringStationInput,
} from "./string-state.ts";
export { stringStation } from "./string-station.ts";
export { type StringTwistInput, stringTwist } from "./string-twist.ts";
export { type TorsionalYieldInput, torsionalYield, USUAL_PIPE_YIELD } from "./torsional-yield.ts";
export {
  type FeedForceInput,
  type FeedGauge,
  type FeedGaugeReadingInput,
  feedForce,
  feedGaugeReading,
  type RestingLoads,
  type WeightOnBitInput,
  weightOnBit,
} from "./weight-balance.ts";
export {
  type FeedLimits,
  type JointRow,
  type JointVerdict,
  type WeightByDepthInput,
  weightByDepth,
} from "./weight-by-depth.ts";
