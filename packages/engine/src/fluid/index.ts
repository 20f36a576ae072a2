export {
  type ActualAirFlowInput,
  AIR_GAS_CONSTANT,
  type AirState,
  actualAirFlow,
  airDensity,
  atmosphericPressure,
  STANDARD_AIR_TEMPERATURE,
  STANDARD_PRESSURE,
} from "./air.ts";
export { binghamEquivalent } from "./bingham-equivalent.ts";
export {
  binghamFromDial,
  DIAL_300_SHEAR_RATE,
  DIAL_DEGREE_STRESS,
  type FourDialReadings,
  herschelBulkleyFromDial,
  powerLawFromDial,
  type TwoDialReadings,
} from "./dial-readings.ts";
export type {
  BinghamFluid,
  CirculationMedium,
  DrillingFluid,
  HerschelBulkleyFluid,
  NewtonianFluid,
  PowerLawFluid,
} from "./drilling-fluid.ts";
export { freshWater } from "./fresh-water.ts";
export { type FunnelViscosityInput, funnelViscosity } from "./funnel-viscosity.ts";
export { herschelBulkleyForm } from "./herschel-bulkley-form.ts";
export { type ShearStressInput, shearStress } from "./shear-stress.ts";
export { waterDensity } from "./water-density.ts";
export { waterViscosity } from "./water-viscosity.ts";
