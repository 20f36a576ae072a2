import { segmentArea } from "../geometry/index.ts";
import { requireBetween, requirePositive } from "../quantity/index.ts";

/**
 * How wide a tilted face stands across its travel: the projection of its diameter that lies level with the hole bottom.
 *
 * R cos σ.
 *
 * @returns half width along the profile [m]
 * @throws RangeError when the diameter is not positive
 * @source (d) projection of a disc along its travel
 * @example
 * faceHalfWidth({ faceDiameter: 0.01344, sideRake: Math.PI / 36 }) // → 6.694428e-3
 */
export function faceHalfWidth({
  faceDiameter,
  sideRake,
}: {
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
  /** Side rake [rad]. */
  readonly sideRake: number;
}): number {
  requirePositive({ faceDiameter });
  return (faceDiameter / 2) * Math.cos(sideRake);
}

/**
 * How far a tilted face reaches from its centre into the rock.
 *
 * R cos β.
 *
 * @returns half height along the profile normal [m]
 * @throws RangeError when the diameter is not positive
 * @source (d) projection of a disc along its travel
 * @example
 * faceHalfHeight({ faceDiameter: 0.01344, backRake: Math.PI / 9 }) // → 6.314734e-3
 */
export function faceHalfHeight({
  faceDiameter,
  backRake,
}: {
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
  /** Back rake [rad]. */
  readonly backRake: number;
}): number {
  requirePositive({ faceDiameter });
  return (faceDiameter / 2) * Math.cos(backRake);
}

/**
 * Area of the groove that one cutter alone cuts at a depth.
 *
 * The slice of the tilted disc below the surface, seen along travel: cos β times the slice of height h/cos β off the
 * circle. With no rake it is R² (φ - sin φ cos φ), cos φ = 1 - h/R.
 *
 * @returns area across travel [m²]
 * @throws RangeError when the diameter is not positive or the depth leaves 0 to D cos β
 * @source (d) geometry of the circle and its projection
 * @example
 * grooveArea({ faceDiameter: 0.01344, depth: 0.002, backRake: 0 }) // → 1.319094e-5
 */
export function grooveArea({
  faceDiameter,
  depth,
  backRake,
}: {
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
  /** Depth of cut along the profile normal [m]. */
  readonly depth: number;
  /** Back rake [rad]. */
  readonly backRake: number;
}): number {
  requirePositive({ faceDiameter });
  const lean = Math.cos(backRake);
  requireBetween("depth", depth, 0, faceDiameter * lean * (1 + 1e-12));
  return lean * segmentArea({ radius: faceDiameter / 2, height: Math.min(faceDiameter, depth / lean) });
}
