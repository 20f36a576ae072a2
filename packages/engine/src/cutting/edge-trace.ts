import type { BitLayout } from "../bit/index.ts";

/**
 * The edges of a bit laid on a radial grid: for every radius, which cutters pass it, how deep they stand and in which
 * order they come by. It depends on the geometry alone, so one trace serves every advance, rock and weight.
 *
 * A pass is one cutter going by one radius. The passes of all cells lie in one row of arrays, cell after cell; the
 * passes of cell `c` are those from `firstPass[c]` up to `firstPass[c + 1]`, the one that comes by first in front.
 */
export interface EdgeTrace {
  readonly layout: BitLayout;
  /** Hole radius [m]. */
  readonly holeRadius: number;
  /** Width of a radial cell [m]. */
  readonly cellWidth: number;
  /** Middle of each cell [m]. */
  readonly cellRadius: Float64Array;
  /** Index of the first pass of each cell; one longer than the cells [-]. */
  readonly firstPass: Int32Array;
  /** Index of the cutter in the layout, for each pass [-]. */
  readonly cutter: Int32Array;
  /** Height of the edge, positive down-hole, for each pass [m]. */
  readonly height: Float64Array;
  /** Azimuth of the edge point itself, 0 to 2π, for each pass [rad]. */
  readonly azimuth: Float64Array;
  /** Cosine of the azimuth, for each pass [-]. */
  readonly cosAzimuth: Float64Array;
  /** Sine of the azimuth, for each pass [-]. */
  readonly sinAzimuth: Float64Array;
  /** Slope of the edge dz/dr, for each pass [-]. */
  readonly slope: Float64Array;
  /** Cosine of the angle whose tangent is the slope, for each pass [-]. */
  readonly cosSlope: Float64Array;
  /** Length of the wear flat along travel, for each pass [m]. */
  readonly flatLength: Float64Array;
  /** Height of the chamfer that the flat has left, for each pass [m]. */
  readonly chamferHeight: Float64Array;
  /** Where on its face the cutter touches that radius: φ from the across to the down of the face, for each pass [rad]. */
  readonly edgeAngle: Float64Array;
  /** How far each cutter's disc reaches past the hole radius before it is ground to gauge [m]. */
  readonly overreach: Float64Array;
}
