import type { Band, PistonPump, PumpPoint } from "@bitwright/engine";

/** What the driller needs and with what, in SI. */
export interface ResolvedInquiry {
  /** At least one, in the order entered. */
  readonly holes: readonly ResolvedHole[];
  /** The hole this bit drills: one of `holes`. */
  readonly bitHole: ResolvedHole;
  /** Stretches of it that are wider than it is drilled, from the top down; absent where none is known. */
  readonly washouts?: readonly ResolvedWashout[];
  /** Depth of the finished job, the deepest of the holes and of the depth entered [m]. */
  readonly depth: number;
  readonly rig: ResolvedRig;
  readonly pump: ResolvedPump;
  readonly compressor?: ResolvedCompressor;
  readonly pipe: ResolvedPipe;
  /** From the bit upward; empty where none are run. */
  readonly collars: readonly ResolvedCollar[];
  readonly fluid: ResolvedFluid;
  /** Depth of the standing ground water [m]. */
  readonly waterLevel: number;
  readonly presentTool?: ResolvedPresentTool;
  readonly targets: ResolvedTargets;
  /** Height of the site above sea level [m]. */
  readonly altitude: number;
}

export interface ResolvedHole {
  readonly name: string;
  /** Path of the hole in the document: `inquiry.holes[0]`. */
  readonly path: string;
  /** Nominal diameter [m]. */
  readonly diameter: number;
  /** Diameter as it was typed: `6 1/8 in`. */
  readonly diameterAsTyped: string;
  /** Depth where this hole begins [m]. */
  readonly from: number;
  /** Depth where it ends [m]. */
  readonly to: number;
  /** Bore of the casing set in it; of holes above that of the bit it is taken where nobody gave it [m]. */
  readonly casingBore?: number;
}

/** A stretch of hole that has washed out. */
export interface ResolvedWashout {
  /** Depth where it begins [m]. */
  readonly from: number;
  /** Depth where it ends [m]. */
  readonly to: number;
  /** Diameter that it has washed out to [m]. */
  readonly diameter: number;
}

export interface ResolvedRig {
  /** Id of the rig of the lists that the numbers started from. */
  readonly preset?: string;
  readonly name: string;
  /** Largest push on the string [N]. */
  readonly pullDown: number;
  /** Largest hold-back or pull of the hoist [N]. */
  readonly hoist: number;
  /** Weight of the top head that rests on the string when not held [N]. */
  readonly topHeadWeight: number;
  /** Largest torque of the rotary [N m]. */
  readonly torque: number;
  /** Slowest steady rotary speed [rad/s]. */
  readonly rotarySpeedMin: number;
  /** Fastest rotary speed [rad/s]. */
  readonly rotarySpeedMax: number;
  /** The fixed speeds of a geared rotary, ascending [rad/s]; absent where any speed between the two can be held. */
  readonly rotarySpeeds?: readonly number[];
  /** Most rotary power [W]; absent where only torque and speed limit it. */
  readonly power?: number;
  /** Rated power of the engine that drives rotary, feed, hoist and pump [W]. */
  readonly enginePower: number;
  /** What is burnt at the hole, all engines together [m³/s]; absent where nobody gave it. */
  readonly fuelBurn?: number;
  /** Force at the string for each pascal on the feed gauge [N/Pa]; absent where nobody gave it. */
  readonly gaugeForceFactor?: number;
  /** The same while the rig holds back [N/Pa]; absent where it is that of pushing. */
  readonly holdBackGaugeForceFactor?: number;
  /** Reading of the feed gauge that gives no push: the pressure that just moves the empty feed [Pa]. */
  readonly feedGaugeZero: number;
  /** Drag of the string on the wall while feeding [N]. */
  readonly drag: number;
}

export interface ResolvedPump {
  /** Id of the pump of the lists that the numbers started from. */
  readonly preset?: string;
  readonly name: string;
  /** Flow at the bit [m³/s]. */
  readonly flow: number;
  /** Pressure that the pump can hold all day [Pa]. */
  readonly pressureRating: number;
  /** The fluid end and its strokes; absent where nobody gave it. */
  readonly piston?: ResolvedPiston;
  /** Curve of a centrifugal pump by rising flow; absent where nobody gave it. */
  readonly pumpCurve?: readonly PumpPoint[];
  /** Whether a valve holds the pump to its flow: a curve was given and a flow beside it. */
  readonly throttled?: true;
  /** Largest lump that the suction and the valves let through [m]; absent where nobody gave it. */
  readonly lumpSize?: number;
  /** Hose, swivel and pipework on the surface as a length of the drill pipe with the same loss [m]. */
  readonly surfaceGear: number;
}

/** A piston pump by its fluid end. */
export interface ResolvedPiston extends PistonPump {
  /** Strokes of one piston, out and back [1/s]. */
  readonly strokeRate: number;
  /** Share of the swept volume that is delivered [-]. */
  readonly volumetricEfficiency: number;
  /** Flow that these give [m³/s]. */
  readonly flow: number;
}

export interface ResolvedCompressor {
  /** Free air that it takes in at the site [m³/s]. */
  readonly flow: number;
  /** Delivery pressure, gauge [Pa]. */
  readonly pressure: number;
  /** Whether an engine of its own drives it, and not that of the rig. */
  readonly ownEngine: boolean;
  /** Rated power of an engine of its own [W]; absent where nobody gave it. */
  readonly enginePower?: number;
}

export interface ResolvedPipe {
  /** Id of the pipe of the lists that the numbers started from. */
  readonly preset?: string;
  readonly name: string;
  /** Outside diameter of the tube [m]. */
  readonly outsideDiameter: number;
  /** Bore of the tube [m]. */
  readonly bore: number;
  /** Mass of a length with its joints, in air [kg/m]. */
  readonly linearMass: number;
  /** Length of one joint [m]. */
  readonly jointLength: number;
  /** Its thick ends; absent where nobody measured them, and then taken as wide as the tube. */
  readonly joint?: ResolvedJoint;
  /** Yield strength of the tube's steel [Pa]. */
  readonly yieldStrength: number;
  /** Id or name of the connection; absent where nobody gave it and sources part over the size of the bit. */
  readonly connection?: string;
  /** Outside diameter of the bit sub or of the box above the bit's pin [m]; absent where no listed thread is known. */
  readonly subDiameter?: number;
}

/** Pin and box of a joint of pipe. */
export interface ResolvedJoint {
  /** Outside diameter [m]. */
  readonly outsideDiameter: number;
  /** [m] */
  readonly bore: number;
  /** Length of both together [m]. */
  readonly length: number;
}

export interface ResolvedCollar {
  /** Outside diameter [m]. */
  readonly outsideDiameter: number;
  /** Bore [m]. */
  readonly bore: number;
  /** Length of this piece or stack [m]. */
  readonly length: number;
  /** Mass of a length, in air [kg/m]. */
  readonly linearMass: number;
}

/** What the hole is drilled with. */
export type FluidKind = "water" | "bentonite" | "polymer" | "foam" | "mist" | "air";

export interface ResolvedFluid {
  readonly kind: FluidKind;
  /** Density [kg/m³]. */
  readonly density: number;
  /** Plastic viscosity of the Bingham law; the plain viscosity where the yield point is 0 [Pa s]. */
  readonly plasticViscosity: number;
  /** Yield point of the Bingham law, 0 for a Newtonian fluid [Pa]. */
  readonly yieldPoint: number;
  /** Dial readings of the rotational viscometer, where given. */
  readonly dialReadings?: ResolvedDialReadings;
  /** The law that the dial readings are read by; the fullest that they allow where not given. */
  readonly law?: "Bingham" | "power law" | "Herschel-Bulkley";
  /** Viscosity guessed from the mud funnel, half to double the middle, where nothing better is given [Pa s]. */
  readonly funnelViscosity?: Band;
  /** Water and soap injected with the air; only of mist and foam [m³/s]. */
  readonly injection?: number;
  /** Temperature of the fluid going down, of the air at the site [K]. */
  readonly temperature: number;
}

/** Readings of the rotational viscometer of the trade (bob 1, spring 1), by its speed in turns per minute. */
export interface ResolvedDialReadings {
  /** Reading at 600 turns a minute [-]. */
  readonly at600: number;
  /** Reading at 300 turns a minute [-]. */
  readonly at300: number;
  /** Reading at 6 turns a minute [-]. */
  readonly at6?: number;
  /** Reading at 3 turns a minute [-]. */
  readonly at3?: number;
}

/** What the driller uses now. */
export type PresentToolKind = "hammer" | "roller" | "drag blade" | "PDC" | "auger" | "other";

export interface ResolvedPresentTool {
  readonly kind: PresentToolKind;
  /** Rate it makes [m/s]. */
  readonly rate?: number;
  readonly notes?: string;
}

/** What the driller means to run, where they said so. */
export interface ResolvedTargets {
  /** Weight on the bit, pipe weight included [N]. */
  readonly weight?: number;
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed?: number;
  /** Rate of drilling hoped for [m/s]. */
  readonly rate?: number;
}
