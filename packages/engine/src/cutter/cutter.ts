/** A PDC cutter as bought: a cylinder of carbide with a diamond table on one end. Sizes are real ones, never the code's. */
export interface Cutter {
  /** Label of the trade, for example `1308`; nothing is computed from it. */
  readonly code: string;
  /** Diameter of the diamond face and of the cylinder [m]. */
  readonly faceDiameter: number;
  /** Length of the cylinder, diamond table included [m]. */
  readonly length: number;
  /** Thickness of the diamond table [m]. */
  readonly tableThickness: number;
  /** Chamfer width along the face, 0 for a sharp edge [m]. */
  readonly chamferWidth: number;
  /** Chamfer angle from the plane of the diamond face [rad]. */
  readonly chamferAngle: number;
  /** Depth to which the binder metal was leached out of the table, 0 for none [m]. */
  readonly leachedDepth: number;
}
