import type { PadProtection } from "@bitwright/engine";

/** Either a bit to be laid out from a specification or a bit that was measured. */
export type ResolvedBit = ResolvedBitSpec | ResolvedMeasuredBit;

/** A rake that runs evenly over the radius, from the centre to the gauge. */
export interface ResolvedRake {
  /** Rake of a cutter at the bit axis [rad]. */
  readonly centre: number;
  /** Rake of a cutter at the gauge [rad]. */
  readonly gauge: number;
}

/** Shapes of the profile, named as in the engine's bit room. */
export type ProfileShapeName = "flat" | "step" | "short parabolic" | "medium parabolic" | "long parabolic";

/** The profile as far as the person asked for it. */
export interface ResolvedProfile {
  readonly shape?: ProfileShapeName;
  /** Angle of the cone from the level, 0 for a flat centre [rad]. */
  readonly coneAngle?: number;
  /** Radius of the nose from the bit axis as a share of the bit radius [-]. */
  readonly noseRadiusShare?: number;
  /** Radius of the curve over the nose [m]. */
  readonly noseCurve?: number;
  /** Radius of the curve from the face into the gauge [m]. */
  readonly shoulderCurve?: number;
  /** Height from the nose to the start of the gauge [m]. */
  readonly height?: number;
  /** Steps between centre and gauge, of the step shape [-]. */
  readonly steps?: number;
  /** Height of one step [m]. */
  readonly stepHeight?: number;
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
  /** What the gauge pads are set or faced with. */
  readonly gaugeProtection?: PadProtection;
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
  /** What radius and height of the table stand for. */
  readonly measuredAt: "face centre" | "cutting tip";
  /** What is known of the maker, in the words of the document. */
  readonly maker?: string;
  readonly body?: BitBody;
  readonly ports?: ResolvedPorts;
  /** Length of the gauge pads [m]. */
  readonly gaugeLength?: number;
  /** What the gauge pads are set or faced with. */
  readonly gaugeProtection?: PadProtection;
  readonly leached?: boolean;
}

/** One row of the table of an as-measured bit. */
export interface MeasuredCutter {
  /** Distance of the point measured from the bit axis [m]. */
  readonly radius: number;
  /** Azimuth of the face centre, growing in the sense of rotation [rad]. */
  readonly azimuth: number;
  /** Height of the point measured along the bit axis, positive down-hole [m]. */
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
