export {
  type CompressorPowerInput,
  compressorPower,
  USUAL_COMPRESSOR_EFFICIENCY,
  USUAL_COMPRESSOR_STAGES,
} from "./compressor-power.ts";
export {
  COMPRESSOR_CONNECTION_FACTOR,
  ENGINE_OWN_SHARE,
  FULL_ENGINE_SHARE,
  PUMP_EFFICIENCY,
  ROTARY_EFFICIENCY,
} from "./drive-efficiency.ts";
export {
  type EngineFuelFlowInput,
  engineFuelFlow,
  SPECIFIC_CONSUMPTION,
  USUAL_FUEL_DENSITY,
} from "./engine-fuel-flow.ts";
export { rigPower } from "./rig-power.ts";
export type {
  BedDrives,
  BedPower,
  CompressorAtWork,
  EngineParts,
  PumpAtWork,
  RigPower,
  RigPowerInput,
} from "./rig-power-state.ts";
