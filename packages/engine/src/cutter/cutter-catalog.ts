import { DEFAULT_CHAMFER_WIDTH, USUAL_CHAMFER_ANGLE } from "./chamfer.ts";
import type { Cutter } from "./cutter.ts";

const MM = 1e-3;

/**
 * How far the real diameter of a ground cutter may stray from its listed one, either way [m].
 *
 * @source (c) common practice, no source: 0.03 mm
 */
export const CUTTER_DIAMETER_TOLERANCE = 0.03 * MM;

/**
 * How far the real length of a cutter may stray from its listed one, either way [m].
 *
 * @source (c) common practice, no source: 0.1 mm
 */
export const CUTTER_LENGTH_TOLERANCE = 0.1 * MM;

/**
 * Usual thickness of the diamond table [m].
 *
 * @source (c) common practice, no source: 1.5 to 2.5 mm, 2.0 usual
 */
export const USUAL_TABLE_THICKNESS = 2.0 * MM;

/**
 * Depth of a leached table where the supplier says no more than that it is leached [m].
 *
 * @source (c) common practice, no source: 0.1 to 0.3 mm
 */
export const USUAL_LEACHED_DEPTH = 0.2 * MM;

/** One size of the trade. */
export interface CatalogSize {
  /** Label of the trade; nothing is computed from it. */
  readonly code: string;
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
  /** Length of the cylinder, diamond table included [m]. */
  readonly length: number;
}

function size(code: string, diameterMm: number, lengthMm: number): CatalogSize {
  return { code, faceDiameter: diameterMm * MM, length: lengthMm * MM };
}

/**
 * The usual sizes, smallest first. The code names them by nominal millimetres of diameter and length; what is cut and
 * brazed are the real millimetres beside it. Reading `1308` as sixteenths of an inch gives a cutter of 20.6 mm that does
 * not exist.
 *
 * @source (c) common practice, no source: sizes as trade lists print them
 */
export const CUTTER_CATALOG: readonly CatalogSize[] = [
  size("0808", 8.2, 8),
  size("1008", 10, 8),
  size("1308", 13.44, 8),
  size("1313", 13.44, 13.2),
  size("1608", 15.88, 8),
  size("1613", 15.88, 13.2),
  size("1616", 15.88, 16.31),
  size("1908", 19.05, 8),
  size("1913", 19.05, 13.2),
  size("1916", 19.05, 16.31),
];

/** What a shop may order otherwise than usual. */
export type CutterOrder = Partial<Omit<Cutter, "code" | "faceDiameter" | "length">>;

/**
 * The cutter of a trade code with the usual table and bevel, or as ordered.
 *
 * @throws RangeError when the catalog has no such code
 * @source (c) common practice, no source: sizes as trade lists print them
 */
export function catalogCutter(code: string, order: CutterOrder = {}): Cutter {
  const found = CUTTER_CATALOG.find((each) => each.code === code);
  if (!found) {
    throw new RangeError(`cutter must be one of ${CUTTER_CATALOG.map((each) => each.code).join(", ")}, got ${code}`);
  }
  return {
    ...found,
    tableThickness: USUAL_TABLE_THICKNESS,
    chamferWidth: DEFAULT_CHAMFER_WIDTH,
    chamferAngle: USUAL_CHAMFER_ANGLE,
    leachedDepth: 0,
    ...order,
  };
}
