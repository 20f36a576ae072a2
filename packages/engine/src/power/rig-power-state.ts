import type { Band, Finding, Working } from "../quantity/index.ts";

/** What the rig's drives give in one bed. */
export interface BedDrives {
  /** Name of the bed. */
  readonly name: string;
  /** Length drilled in it [m]. */
  readonly length: number;
  /** Rate of drilling [m/s]. */
  readonly rate: number;
  /** Torque at the bit [N·m]. */
  readonly drillingTorque: number;
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed: number;
  /** Largest push of the feed there; 0 or under where the rig holds back [N]. */
  readonly feedForce: number;
  /** Flow and pressure of the mud pump; left out on air, mist and foam. */
  readonly pump?: PumpAtWork;
}

/** A mud pump at work. */
export interface PumpAtWork {
  /** Flow [m³/s]. */
  readonly flow: number;
  /** Pressure [Pa]. */
  readonly pressure: number;
}

/** A compressor at full delivery. */
export interface CompressorAtWork {
  /** Delivery as air at the inlet [m³/s]. */
  readonly freeAirFlow: number;
  /** Delivery pressure, gauge [Pa]. */
  readonly deliveryPressure: number;
  /** Pressure of the air at the site [Pa]. */
  readonly inletPressure: number;
  /** Whether an engine of its own drives it, and not that of the rig. */
  readonly ownEngine: boolean;
  /** Rated power of the engine of its own, where it is known [W]. */
  readonly enginePower?: number;
}

/** What `rigPower` needs. */
export interface RigPowerInput {
  /** Beds in the order they are drilled. */
  readonly beds: readonly BedDrives[];
  /** Rated power of the engine that drives rotary, feed, hoist and pump [W]. */
  readonly enginePower: number;
  /** What the user burns at the hole, all engines together; worked out from the load where not given [m³/s]. */
  readonly fuelFlow?: number;
  /** The compressor that blows the hole; left out where a liquid is pumped or none is named. */
  readonly compressor?: CompressorAtWork;
  /** Torque that the string takes by itself [N·m]. */
  readonly draggingTorque: number;
  /** Work of pulling the string out once [J]. */
  readonly hoistingWork: number;
  /** Trips, connections and what else is not drilling [s]. */
  readonly handlingTime: number;
}

/** The powers of one bed at the engine's shaft, drives at their middle efficiency. */
export interface EngineParts {
  /** For turning bit and string [W]. */
  readonly rotaryPower: number;
  /** For the mud pump [W]. */
  readonly pumpPower: number;
  /** For pushing; holding back takes a brake and no power [W]. */
  readonly feedPower: number;
  /** For the compressor, where this engine drives it [W]. */
  readonly compressorPower: number;
  /** For the engine's own needs and what it turns along [W]. */
  readonly ownPower: number;
}

/** What one bed asks of the engines. */
export interface BedPower {
  readonly name: string;
  readonly parts: EngineParts;
  /** Load of the rig's engine over what is known of its drives [W]. */
  readonly enginePower: Band;
  /** The same as a share of its rated power [-]. */
  readonly engineShare: Band;
  /** Fuel of all engines while drilling [m³/s]. */
  readonly fuelFlow: Band;
  /** Fuel for each length of hole, connections left out; absent where nothing is drilled [m³/m]. */
  readonly fuelPerLength?: Band;
  /** Time on bottom; absent where nothing is drilled [s]. */
  readonly timeOnBottom?: number;
}

/** The rig's engines over the hole. */
export interface RigPower {
  readonly beds: readonly BedPower[];
  /** Power at the shaft of the compressor at full delivery; absent without one [W]. */
  readonly compressorPower?: number;
  /** Time on bottom over all beds [s]. */
  readonly timeOnBottom: number;
  /** Fuel of the whole hole: drilling, connections and one trip out [m³]. */
  readonly fuelVolume: Band;
  /** Mean over all time at the hole, drilling or not [m³/s]. */
  readonly meanFuelFlow: Band;
  /** The same by the load alone, whatever burn was given [m³/s]. */
  readonly reckonedFuelFlow: Band;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** The figures of `RigPower` before findings and workings are drawn from them. */
export type RigPowerFigures = Omit<RigPower, "findings" | "working">;
