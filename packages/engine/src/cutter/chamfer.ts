import { requireBetween, requireFinite, requireNotNegative } from "../quantity/index.ts";

const DEGREE = Math.PI / 180;

/**
 * Chamfer width along the face where none is named [m].
 *
 * @source (c) common practice, no source: 0.25 to 0.46 mm, in hard rock up to 0.64 mm
 */
export const DEFAULT_CHAMFER_WIDTH = 0.4e-3;

/**
 * The chamfer that balances speed and toughness, from the plane of the diamond face [rad].
 *
 * @source (c) common practice, no source: 16 degrees
 */
export const USUAL_CHAMFER_ANGLE = 16 * DEGREE;

/**
 * The bevel that cutters are commonly supplied with, from the plane of the diamond face [rad].
 *
 * @source (c) common practice, no source: 45 degrees
 */
export const SUPPLIED_CHAMFER_ANGLE = 45 * DEGREE;

/** A bevel that the trade grinds and what it is for. */
export interface TradeChamfer {
  /** Angle from the plane of the diamond face; 0 for a sharp edge [rad]. */
  readonly angle: number;
  /** Width along the face; 0 for a sharp edge [m]. */
  readonly width: number;
  readonly name: string;
  /** What the trade says of it. */
  readonly meaning: string;
}

/**
 * The bevels of the trade, sharpest first. The angle counts from the plane of the diamond face, so that more is blunter. They are ground
 * 0.25 to 0.5 mm wide, wider in harder ground.
 *
 * @source (c) common practice, no source
 */
export const TRADE_CHAMFERS: readonly TradeChamfer[] = [
  { angle: 0, width: 0, name: "no bevel", meaning: "sharpest; soft ground only, chips at the first hard spot" },
  { angle: 12 * DEGREE, width: 0.25e-3, name: "12 degree bevel", meaning: "fast; chips where the ground strikes" },
  {
    angle: USUAL_CHAMFER_ANGLE,
    width: DEFAULT_CHAMFER_WIDTH,
    name: "16 degree bevel",
    meaning: "the usual balance of speed and toughness",
  },
  { angle: 20 * DEGREE, width: 0.5e-3, name: "20 degree bevel", meaning: "tough and slower, for harder ground" },
];

/** A bevel and the lean of the face that carries it. */
export interface Chamfer {
  /** Width along the face [m]. */
  readonly width: number;
  /** Angle from the plane of the diamond face [rad]. */
  readonly angle: number;
  /** Back rake of the face [rad]. */
  readonly backRake: number;
}

/**
 * Rake that the bevel itself offers to the rock.
 *
 * β_ch = β + χ; at 90 degrees and more the bevel no longer meets the rock.
 *
 * @returns rake of the bevel [rad]
 * @throws RangeError when an angle is not finite
 * @source (d) geometry of the bevel
 * @example
 * chamferRake({ angle: Math.PI / 4, backRake: Math.PI / 12 }) // → 1.047198
 */
export function chamferRake({ angle, backRake }: Omit<Chamfer, "width">): number {
  requireFinite({ angle, backRake });
  return backRake + angle;
}

/**
 * Height of the bevel over the hole bottom: while the depth of cut is less, the bevel alone works.
 *
 * h = c (cos β - tan χ sin β); for χ from 0 to under 90 degrees. A sharp edge (χ = 0 or c = 0) has no bevel and gives 0,
 * as does one that leans past the vertical (β + χ ≥ 90 degrees).
 *
 * @returns height along the profile normal [m]
 * @throws RangeError when the width is negative or the angle leaves 0 to 90 degrees
 * @source (d) geometry of a bevel of width c along the face
 * @example
 * chamferHeight({ width: 4e-4, angle: Math.PI / 4, backRake: Math.PI / 12 }) // → 2.828427e-4
 */
export function chamferHeight({ width, angle, backRake }: Chamfer): number {
  requireNotNegative({ width });
  requireFinite({ backRake });
  requireBetween("angle", angle, 0, Math.PI / 2);
  if (angle === 0 || angle + backRake >= Math.PI / 2) return 0;
  return width * (Math.cos(backRake) - Math.tan(angle) * Math.sin(backRake));
}

/**
 * Length along travel over which the bevel touches the rock when it is buried to a height.
 *
 * l = h tan(β + χ), h at most the height of the bevel.
 *
 * @returns length along travel [m]
 * @throws RangeError when the depth or width is negative, or the angle leaves 0 to 90 degrees
 * @source (d) geometry of the bevel
 * @example
 * chamferContactLength({ depth: 1e-4, width: 4e-4, angle: Math.PI / 4, backRake: Math.PI / 12 }) // → 1.732051e-4
 */
export function chamferContactLength({
  depth,
  ...chamfer
}: Chamfer & {
  /** Depth of cut normal to the edge [m]. */
  readonly depth: number;
}): number {
  requireNotNegative({ depth });
  const height = Math.min(depth, chamferHeight(chamfer));
  return height > 0 ? height * Math.tan(chamferRake(chamfer)) : 0;
}
