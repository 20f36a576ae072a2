import type { Band, Finding } from "@bitwright/engine";

/**
 * The traveler as the engine needs it: SI numbers, named defaults filled in, ids checked against the lists (the
 * program's and the shop's own). Made by `parseTraveler`; never stored.
 */
export interface ResolvedTraveler {
  readonly job: ResolvedJob;
  readonly inquiry: ResolvedInquiry;
  readonly ground: ResolvedGround;
  readonly bit: ResolvedBit;
  readonly overrides: ResolvedOverrides;
  readonly lists: ResolvedLists;
  /** Remarks found while reading that are no errors: a gap between beds, a speed over the rig's highest. */
  readonly findings: readonly Finding[];
}

export interface ResolvedJob {
  readonly name: string;
  readonly number?: string;
  readonly customer: string;
  readonly shop: string;
  readonly date?: string;
  readonly notes?: string;
  /** Currency of every price on the document, for example `USD`. */
  readonly currency: string;
}

export interface ResolvedInquiry {
  /** At least one, in the order entered. */
  readonly holes: readonly ResolvedHole[];
  /** The hole this bit drills: one of `holes`. */
  readonly bitHole: ResolvedHole;
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
  /** Force at the string for each pascal on the feed gauge [N/Pa]; absent where nobody gave it. */
  readonly gaugeForceFactor?: number;
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
  /** Largest lump that the suction and the valves let through [m]; absent where nobody gave it. */
  readonly lumpSize?: number;
  /** Hose, swivel and pipework on the surface as a length of the drill pipe with the same loss [m]. */
  readonly surfaceGear: number;
}

export interface ResolvedCompressor {
  /** Delivery as free air at the altitude of the sea [m³/s]. */
  readonly flow: number;
  /** Delivery pressure, gauge [Pa]. */
  readonly pressure: number;
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
  /** Id or name of the connection; absent where nobody gave it. */
  readonly connection?: string;
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
  /** Temperature of the fluid going down [K]. */
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

export interface ResolvedGround {
  /** In order of depth, no overlaps; gaps are possible and are then findings. */
  readonly beds: readonly ResolvedBed[];
  /** Where the column came from, in the words of the document. */
  readonly source?: string;
}

export interface ResolvedBed {
  /** Path of the bed in the document: `ground.beds[2]`. */
  readonly path: string;
  /** A short name for tables: the phrase, else the rock. */
  readonly name: string;
  /** Depth of the top [m]. */
  readonly top: number;
  /** Depth of the bottom [m]. */
  readonly bottom: number;
  /** The driller's words. */
  readonly phrase?: string;
  /** Id of the rock: of the rock table or of the shop's own rocks; absent where neither id nor known words were given. */
  readonly rock?: string;
  /** How the rock was settled: given by id, or read from the phrase. */
  readonly rockFrom?: "entered" | "phrase";
  /** Unconfined strength [Pa]; absent where it is to come from the rock table. */
  readonly strength?: Band;
  /** The log reading that the strength is to be worked from, where one was given. */
  readonly strengthFrom?: ResolvedStrengthReading;
  readonly notes?: string;
}

/** A log reading and the named correlation that turns it into strength. */
export interface ResolvedStrengthReading {
  /** Id of the correlation. */
  readonly correlation: string;
  /** Slowness [s/m], Young's modulus [Pa], porosity [-] or velocity [m/s], as the correlation asks. */
  readonly reading: number;
  /** Share of clay in the rock [-]. */
  readonly clayShare?: number;
  /** Bulk density [kg/m³]. */
  readonly density?: number;
}

/** Either a bit to be laid out from a specification or a bit that was measured. */
export type ResolvedBit = ResolvedBitSpec | ResolvedMeasuredBit;

/** A rake that runs evenly over the radius, from the centre to the gauge. */
export interface ResolvedRake {
  /** Rake of a cutter at the bit axis [rad]. */
  readonly centre: number;
  /** Rake of a cutter at the gauge [rad]. */
  readonly gauge: number;
}

export interface ResolvedProfile {
  /** Shape of the profile: `flat`, `step`, `short parabolic` and so on, as the bit room names them. */
  readonly shape?: string;
  /** Angle of the cone below the level, 0 for a flat centre [rad]. */
  readonly coneAngle?: number;
  /** Radius of the nose from the bit axis as a share of the bit radius [-]. */
  readonly noseRadiusShare?: number;
  /** Height from the nose down-hole end to the gauge [m]. */
  readonly height?: number;
}

/** What the person asked of the bit. Every field may be absent: then the advice decides. */
export interface ResolvedBitSpec {
  readonly kind: "spec";
  /** Diameter [m]; the diameter of `bitHole` where it was not given. */
  readonly diameter: number;
  /** Trade code of the face cutters, of the catalog or the shop's own. */
  readonly cutter?: string;
  /** Chamfer angle from the plane of the diamond face [rad]. */
  readonly chamferAngle?: number;
  /** Chamfer width along the face [m]. */
  readonly chamferWidth?: number;
  readonly backRake?: ResolvedRake;
  readonly sideRake?: ResolvedRake;
  /** Number of wings [-]. */
  readonly wings?: number;
  /** Face cutters on each wing [-]. */
  readonly cuttersPerWing?: number;
  readonly profile?: ResolvedProfile;
  readonly body?: BitBody;
  readonly ports?: ResolvedPorts;
  /** How far a wing's outermost cutter trails its innermost, in the sense against rotation [rad]. */
  readonly sweep?: number;
  /** Length of the gauge pads [m]. */
  readonly gaugeLength?: number;
  /** Whether the diamond is leached. */
  readonly leached?: boolean;
}

export type BitBody = "matrix" | "steel";

/** Round ports of one size. */
export interface ResolvedPorts {
  /** How many [-]. */
  readonly count: number;
  /** Diameter of one [m]. */
  readonly diameter: number;
}

export interface ResolvedMeasuredBit {
  readonly kind: "measured";
  /** Diameter [m]; the diameter of `bitHole` where it was not given. */
  readonly diameter: number;
  /** At least one, in the order of the table. */
  readonly cutters: readonly MeasuredCutter[];
  /** What is known of the maker, in the words of the document. */
  readonly maker?: string;
  readonly body?: BitBody;
  readonly ports?: ResolvedPorts;
  /** Length of the gauge pads [m]. */
  readonly gaugeLength?: number;
  readonly leached?: boolean;
}

/** One row of the table of an as-measured bit. */
export interface MeasuredCutter {
  /** Distance of the face centre from the bit axis [m]. */
  readonly radius: number;
  /** Azimuth of the face centre, growing in the sense of rotation [rad]. */
  readonly azimuth: number;
  /** Height of the face centre along the bit axis, positive down-hole [m]. */
  readonly height: number;
  /** Angle of the outward profile normal [rad]; absent where it is to be worked from the neighbours. */
  readonly profileAngle?: number;
  /** Back rake [rad]. */
  readonly backRake: number;
  /** Side rake [rad]. */
  readonly sideRake: number;
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
  /** Length of the cutter [m]; absent where neither a code nor a length was given. */
  readonly length?: number;
  /** Number of the wing, from 1 [-]; absent where it was not given. */
  readonly wing?: number;
  /** Chamfer width along the face [m]. */
  readonly chamferWidth?: number;
  /** Chamfer angle from the plane of the face [rad]. */
  readonly chamferAngle?: number;
  /** Height worn off the edge, along the face [m]. */
  readonly wornHeight: number;
}

/** Values that a person set over those of the program. */
export interface ResolvedOverrides {
  /** By rock id. */
  readonly rocks: Readonly<Record<string, RockOverride>>;
  /** Weight on the bit to work with [N]. */
  readonly weight?: number;
  /** Rotary speed to work with [rad/s]. */
  readonly rotarySpeed?: number;
  /** Flow to work with [m³/s]. */
  readonly flow?: number;
  readonly limits: LimitOverrides;
}

/**
 * Properties of a rock set by hand, named as in the rock table; a single figure is a band without width.
 */
export interface RockOverride {
  /** Unconfined compressive strength [Pa]. */
  readonly ucs?: Band;
  /** Unconfined strength of the stones in loose or mixed ground [Pa]. */
  readonly clastUcs?: Band;
  /** Specific energy over confined strength [-]. */
  readonly specificEnergyRatio?: Band;
  /** Contact strength under a wear flat over confined strength [-]. */
  readonly contactStressRatio?: Band;
  /** Friction angle at the cutter face [rad]. */
  readonly faceFriction?: Band;
  /** Friction of a wear flat on the rock [-]. */
  readonly flatFriction?: Band;
  /** Growth of the contact length with the depth of cut [-]. */
  readonly kappa?: Band;
  /** Internal friction angle [rad]. */
  readonly frictionAngle?: Band;
  /** Bulk density [kg/m³]. */
  readonly density?: Band;
  /** Quartz share [-]. */
  readonly quartzShare?: Band;
  /** Minerals counted by their grinding hardness against quartz [-]. */
  readonly equivalentQuartz?: Band;
  /** CERCHAR abrasivity index [-]. */
  readonly cerchar?: Band;
}

/** Limits set by hand in place of the program's. */
export interface LimitOverrides {
  /** Least flow that cools the bit [m³/s]. */
  readonly coolingFlow?: number;
  /** Least uphole speed that cleans [m/s]. */
  readonly upholeSpeed?: number;
  /** Largest share of cuttings in the returns [-]. */
  readonly cuttingsShare?: number;
  /** Largest rate allowed [m/s]. */
  readonly rate?: number;
  /** Largest torque allowed at the bit [N m]. */
  readonly torque?: number;
}

/** Lists a shop adds to those of the program, in SI. */
export interface ResolvedLists {
  readonly rocks: readonly OwnRock[];
  readonly cutters: readonly OwnCutter[];
}

/** A rock of the shop's own: what it is like and where it differs. */
export interface OwnRock extends RockOverride {
  readonly id: string;
  readonly name: string;
  /** Id of the rock of the table that fills what is not given here. */
  readonly like: string;
}

/** A cutter of the shop's own. */
export interface OwnCutter {
  readonly code: string;
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
  /** Length, diamond table included [m]. */
  readonly length: number;
  /** Thickness of the diamond table [m]. */
  readonly tableThickness?: number;
}
