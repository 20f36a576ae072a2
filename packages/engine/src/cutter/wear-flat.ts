import { segmentArea, segmentChord, segmentHalfAngle } from "../geometry/index.ts";
import { requireBetween, requirePositive } from "../quantity/index.ts";
import type { Cutter } from "./cutter.ts";

/** How a cutter is worn: a flat along travel, up to a height on the face. */
export interface WornCutter extends Pick<Cutter, "faceDiameter" | "length"> {
  /** Height worn off the edge, along the face [m]. */
  readonly wornHeight: number;
  /** Back rake of the face [rad]. */
  readonly backRake: number;
}

/** The flat that wear has cut on a cylinder, exactly. */
export interface WearFlat {
  /** Area lost off the diamond face [m²]. */
  readonly faceAreaLost: number;
  /** Area of the flat itself [m²]. */
  readonly area: number;
  /** Volume of cutter worn away [m³]. */
  readonly volume: number;
  /** Width of the flat at the face [m]. */
  readonly width: number;
  /** Length of the flat along the cylinder's axis, at its longest [m]. */
  readonly axialLength: number;
  /** Length of the flat along travel, at its longest, for a face without side rake [m]. */
  readonly travelLength: number;
}

/** Volume of a wedge cut off an endless cylinder, times tan β [m³]. */
function wedge(radius: number, height: number): number {
  const phi = segmentHalfAngle({ radius, height });
  const sine = Math.sin(phi);
  return radius ** 3 * (sine - sine ** 3 / 3 - phi * Math.cos(phi));
}

/** Back rake under which a flat over the whole cylinder is computed as level; the difference is below 1e-6 of it [rad]. */
const LEVEL = 1e-6;

/**
 * The flat on a round cutter worn to a height, cut by a plane along travel.
 *
 * With R = D/2 and cos φ = 1 - h/R: area lost off the face A = R² (φ - sin φ cos φ); flat A/sin β; volume
 * R³/tan β (sin φ - sin³φ/3 - φ cos φ); width 2 R sin φ; length along the axis h/tan β, along travel h/sin β. Where the
 * flat runs off the back of the cylinder, what lies beyond it is taken off again, so that a cutter that leans little or
 * not at all wears along its whole length.
 *
 * @throws RangeError when a size is not positive, the height leaves 0 to D, or the back rake reaches 90 degrees
 * @source (d) geometry of a cylinder cut by a plane
 */
export function wearFlat({ faceDiameter, length, wornHeight, backRake }: WornCutter): WearFlat {
  requirePositive({ faceDiameter, length });
  requireBetween("wornHeight", wornHeight, 0, faceDiameter);
  requireBetween("backRake", backRake, -Math.PI / 2, Math.PI / 2 - 1e-6);
  const radius = faceDiameter / 2;
  const face = segmentArea({ radius, height: wornHeight });
  const width = segmentChord({ radius, height: wornHeight });
  if (wornHeight === 0) return { faceAreaLost: 0, area: 0, volume: 0, width: 0, axialLength: 0, travelLength: 0 };
  if (!(backRake > LEVEL)) {
    return {
      faceAreaLost: face,
      area: width * length,
      volume: face * length,
      width,
      axialLength: length,
      travelLength: length,
    };
  }
  const slope = Math.tan(backRake);
  const pastBack = Math.max(0, wornHeight - length * slope);
  const axialLength = Math.min(length, wornHeight / slope);
  return {
    faceAreaLost: face,
    area: (face - segmentArea({ radius, height: pastBack })) / Math.sin(backRake),
    volume: (wedge(radius, wornHeight) - wedge(radius, pastBack)) / slope,
    width,
    axialLength,
    travelLength: axialLength / Math.cos(backRake),
  };
}

/**
 * Part of the flat that is carbide: what lies behind the diamond table.
 *
 * Zero while the flat's length along the axis, h/tan β, is within the table.
 *
 * @returns area of carbide in the flat [m²]
 * @throws RangeError as `wearFlat`; also when the table is not positive
 * @source (d) geometry of a cylinder cut by a plane
 * @example
 * carbideFlatArea({ faceDiameter: 0.016, length: 0.008, tableThickness: 0.002, wornHeight: 0.001, backRake: Math.PI / 9 }) // → 2.201685e-6
 */
export function carbideFlatArea({
  tableThickness,
  ...worn
}: WornCutter & {
  /** Thickness of the diamond table [m]. */
  readonly tableThickness: number;
}): number {
  requirePositive({ tableThickness });
  if (tableThickness >= worn.length) return 0;
  return wearFlat(worn).area - wearFlat({ ...worn, length: tableThickness }).area;
}

/**
 * Whether the flat has passed the diamond table, so that carbide rubs on the rock.
 *
 * @source (d) h/tan β against the table thickness
 */
export function carbideRubs(worn: WornCutter & { readonly tableThickness: number }): boolean {
  return wearFlat(worn).axialLength > worn.tableThickness;
}

/**
 * Wear grade of a worn height, in eighths of the face.
 *
 * g = 8 h/D, 0 for a new cutter, 8 for none left; not rounded.
 *
 * @returns grade [-]
 * @throws RangeError when the diameter is not positive or the height leaves 0 to D
 * @source (b) IADC dull grading 1992 (SPE/IADC 23939), scale recalled: linear, measured across the diamond face
 * @example
 * wearGrade({ wornHeight: 0.00132, faceDiameter: 0.01344 }) // → 0.7857
 */
export function wearGrade({
  wornHeight,
  faceDiameter,
}: {
  /** Height worn off the edge, along the face [m]. */
  readonly wornHeight: number;
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
}): number {
  requirePositive({ faceDiameter });
  requireBetween("wornHeight", wornHeight, 0, faceDiameter);
  return (8 * wornHeight) / faceDiameter;
}

/**
 * Worn height from a caliper laid across the flat at the face.
 *
 * h = (D - √(D² - w²))/2; only while less than half the face is gone, since past half the flat gets narrower again.
 *
 * @returns height worn off the edge [m]
 * @throws RangeError when the diameter is not positive or the width leaves 0 to D
 * @source (d) geometry of the circle
 * @example
 * wornHeightOfFlat({ flatWidth: 0.008, faceDiameter: 0.01344 }) // → 1.320185e-3
 */
export function wornHeightOfFlat({
  flatWidth,
  faceDiameter,
}: {
  /** Width of the flat at the face [m]. */
  readonly flatWidth: number;
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
}): number {
  requirePositive({ faceDiameter });
  requireBetween("flatWidth", flatWidth, 0, faceDiameter);
  return (faceDiameter - Math.sqrt((faceDiameter - flatWidth) * (faceDiameter + flatWidth))) / 2;
}
