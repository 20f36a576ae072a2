import { requireBetween, requirePositive } from "../quantity/index.ts";

/** A slice off a circle, from its rim inward. */
export interface CircleSegment {
  /** Radius of the circle [m]. */
  readonly radius: number;
  /** Height of the slice, measured from the rim toward the centre; up to the full diameter [m]. */
  readonly height: number;
}

/**
 * Half the angle a slice spans at the centre of its circle.
 *
 * cos φ = 1 - h/R; 0 for no slice, π for the whole circle.
 *
 * @returns half angle φ [rad]
 * @throws RangeError when the radius is not positive or the height leaves 0 to 2 R
 * @source (d) geometry of the circle
 * @example
 * segmentHalfAngle({ radius: 8, height: 1 }) // → 0.5053605
 */
export function segmentHalfAngle({ radius, height }: CircleSegment): number {
  requirePositive({ radius });
  requireBetween("height", height, 0, 2 * radius);
  // 2 asin keeps its figures for thin slices, where acos(1 - h/R) loses half of them.
  return 2 * Math.asin(Math.min(1, Math.sqrt(height / (2 * radius))));
}

/**
 * Area of a slice off a circle.
 *
 * A = R² (φ - sin φ cos φ), cos φ = 1 - h/R.
 *
 * @returns area [m²]
 * @throws RangeError when the radius is not positive or the height leaves 0 to 2 R
 * @source (d) geometry of the circle
 * @example
 * segmentArea({ radius: 0.008, height: 0.001 }) // → 5.232189e-6
 */
export function segmentArea(segment: CircleSegment): number {
  const halfAngle = segmentHalfAngle(segment);
  return segment.radius ** 2 * (halfAngle - Math.sin(halfAngle) * Math.cos(halfAngle));
}

/**
 * Length of the chord that bounds a slice off a circle.
 *
 * w = 2 R sin φ = 2 √(h (2R - h)).
 *
 * @returns chord length [m]
 * @throws RangeError when the radius is not positive or the height leaves 0 to 2 R
 * @source (d) geometry of the circle
 * @example
 * segmentChord({ radius: 0.008, height: 0.001 }) // → 7.745967e-3
 */
export function segmentChord({ radius, height }: CircleSegment): number {
  requirePositive({ radius });
  requireBetween("height", height, 0, 2 * radius);
  return 2 * Math.sqrt(height * (2 * radius - height));
}
