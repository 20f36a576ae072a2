/** Where a cutter face sits on the bit and how it is tilted, in the bit frame (`docs/nomenclature.md`). */
export interface CutterPose {
  /** Distance of the face centre from the bit axis [m]. */
  readonly radius: number;
  /** Azimuth of the face centre, growing in the sense of rotation [rad]. */
  readonly azimuth: number;
  /** Height of the face centre along the bit axis, positive down-hole [m]. */
  readonly height: number;
  /** Angle of the outward profile normal from down-hole toward outward: 0 at the nose, π/2 at gauge [rad]. */
  readonly profileAngle: number;
  /** Back rake: positive leans the top of the face forward [rad]. */
  readonly backRake: number;
  /** Side rake: positive turns the face outward [rad]. */
  readonly sideRake: number;
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
}

/** A cutter on the bit: its pose and what is ground on or worn off its edge. */
export interface PlacedCutter extends CutterPose {
  /** Number of the wing that carries it, from 1; 0 where the wing is not known (as-measured bits) [-]. */
  readonly wing: number;
  /** Length of the cutter cylinder, diamond table included [m]. */
  readonly length: number;
  /** Chamfer width along the face, 0 for a sharp edge [m]. */
  readonly chamferWidth: number;
  /** Chamfer angle from the plane of the diamond face [rad]. */
  readonly chamferAngle: number;
  /** Height worn off the edge, along the face [m]. */
  readonly wornHeight: number;
}

/** A set of cutters and the hole they are to drill. */
export interface BitLayout {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  readonly cutters: readonly PlacedCutter[];
}
