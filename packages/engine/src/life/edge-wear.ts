import type { PlacedCutter } from "../bit/index.ts";
import type { EdgeWear } from "../cutting/index.ts";
import { largest, requireBetween, requirePositive } from "../quantity/index.ts";
import { WEAR_POINTS } from "./edge-wear-rates.ts";

/**
 * The wear of an edge that is ground level up to a height: what a caliper on the flat tells.
 *
 * h(φ) = max(0, R sin φ - (R - h)).
 *
 * @throws RangeError when the diameter is not positive or the height leaves 0 to D
 * @source (d) geometry of the circle
 */
export function levelEdgeWear({
  faceDiameter,
  wornHeight,
}: Pick<PlacedCutter, "faceDiameter" | "wornHeight">): EdgeWear {
  requirePositive({ faceDiameter });
  requireBetween("wornHeight", wornHeight, 0, faceDiameter);
  const radius = faceDiameter / 2;
  return Float64Array.from({ length: WEAR_POINTS }, (_, j) =>
    Math.max(0, radius * Math.sin((Math.PI * j) / (WEAR_POINTS - 1)) - (radius - wornHeight)),
  );
}

/**
 * Height worn off an edge where it has lost most: what the dull grade reads across the face.
 *
 * @returns height, no more than the face [m]
 * @throws RangeError when the diameter is not positive
 * @source (b) IADC dull grading 1992 (SPE/IADC 23939), recalled: measured across the diamond face
 * @example
 * deepestWear({ faceDiameter: 0.013, wear: levelEdgeWear({ faceDiameter: 0.013, wornHeight: 0.001 }) }) // → 0.001
 */
export function deepestWear({
  faceDiameter,
  wear,
}: {
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
  readonly wear: EdgeWear;
}): number {
  requirePositive({ faceDiameter });
  return Math.min(faceDiameter, largest(wear));
}

/**
 * Volume of a cutter that wear has taken.
 *
 * V = ∫ h²/(2 tan β) dx over the face, where the flat runs off the cylinder's end h L - L² tan β/2; L h for a face that does
 * not lean back; no more than stands at that place. For level wear this is the wedge that `wearFlat` gives exactly.
 *
 * @returns volume [m³]
 * @throws RangeError when the diameter or the length is not positive
 * @source (d) geometry of a cylinder cut by lines along travel
 * @example
 * wornVolume({ faceDiameter: 0.016, length: 0.008, backRake: Math.PI / 9, wear: levelEdgeWear({ faceDiameter: 0.016, wornHeight: 0.001 }) }) * 1e9 // → 5.782
 */
export function wornVolume({
  faceDiameter,
  length,
  backRake,
  wear,
}: Pick<PlacedCutter, "faceDiameter" | "length" | "backRake"> & { readonly wear: EdgeWear }): number {
  requirePositive({ faceDiameter, length });
  const lean = Math.tan(backRake);
  const behind = (height: number) => {
    const longest = length * lean;
    if (!(lean > 0)) return height * length;
    return height <= longest ? height ** 2 / (2 * lean) : length * (height - longest / 2);
  };
  const last = wear.length - 1;
  const angle = (j: number) => (Math.PI * j) / last;
  // No more can be gone at a place than stands above it, from the edge to the other side of the face.
  const gone = (j: number) => behind(wear[j]) - behind(Math.max(0, wear[j] - faceDiameter * Math.sin(angle(j))));
  const across = (j: number) => (-faceDiameter / 2) * Math.cos(angle(j));
  let sum = 0;
  for (let j = 0; j < last; j++) sum += ((gone(j) + gone(j + 1)) / 2) * (across(j + 1) - across(j));
  return sum;
}
