import { requireBetween, requireFinite } from "../quantity/index.ts";

const DEGREE = Math.PI / 180;

/** How the wings stand and what each carries. */
export interface WingPlan {
  /** Number of wings [-]. */
  readonly wings: number;
  /** Cutters on a wing: one number for all, or one for each from wing 1 on; left out, they are derived [-]. */
  readonly cuttersPerWing?: number | readonly number[];
  /** Wings that reach for the centre; each of the others carries one cutter less. Left out, all do [-]. */
  readonly centreWings?: number;
  /** How far the gauge end of a wing trails its inner end at the bit axis, against the sense of rotation [rad]. */
  readonly sweep?: number;
  /** How much the widest gap between wings exceeds an even one [rad]. */
  readonly unevenness?: number;
  /** Azimuths of the wings at the bit axis, growing in the sense of rotation; instead of `unevenness` [rad]. */
  readonly angles?: readonly number[];
}

/**
 * Sweep of a wing where none is named [rad].
 *
 * @source (c) common practice, no source: wings are swept to ease the outermost cutters; 20 degrees is our choice
 */
export const ORDINARY_SWEEP = 20 * DEGREE;

/**
 * Unevenness of the wings where none is named [rad].
 *
 * @source (c) common practice, no source: gaps of 360/n give or take 3 to 8 degrees against backward whirl
 */
export const ORDINARY_UNEVENNESS = 4 * DEGREE;

/**
 * Azimuths of the wings at the bit axis, wing 1 at 0 and the others in the sense of rotation.
 *
 * The gaps grow evenly from 2π/n - u to 2π/n + u, so that no two are alike and they add up to a full turn.
 *
 * @throws RangeError when there is no wing, the unevenness is half a gap or more, or the angles are not one for each wing
 * @source (d) geometry; uneven gaps are common practice
 */
export function wingAngles({
  wings,
  unevenness = ORDINARY_UNEVENNESS,
  angles,
}: Pick<WingPlan, "wings" | "unevenness" | "angles">): number[] {
  requireWhole("wings", wings, 1);
  if (angles) {
    if (angles.length !== wings)
      throw new RangeError(`angles must be one for each of ${wings} wings, got ${angles.length}`);
    requireFinite(Object.fromEntries(angles.map((angle, at) => [`angle of wing ${at + 1}`, angle])));
    return [...angles];
  }
  const even = (2 * Math.PI) / wings;
  requireBetween("unevenness", unevenness, 0, even / 2);
  const found: number[] = [0];
  for (let gap = 0; gap + 1 < wings; gap++) {
    const lean = (2 * gap) / (wings - 1) - 1;
    found.push((found[gap] ?? 0) + even + lean * unevenness);
  }
  return found;
}

/**
 * Azimuth of a cutter on a swept wing: it trails the wing's inner end by the sweep times its share of the radius.
 *
 * θ = θ_wing - s r/R; a positive sweep lets the outer cutters meet the rock after the inner ones of their wing.
 *
 * @returns azimuth [rad]
 * @throws RangeError when a value is not finite
 * @source (d) straight line of azimuth over radius
 * @example
 * sweptAzimuth({ wingAngle: 1, sweep: 0.4, radiusShare: 0.5 }) // → 0.8
 */
export function sweptAzimuth({
  wingAngle,
  sweep,
  radiusShare,
}: {
  /** Azimuth of the wing at the bit axis [rad]. */
  readonly wingAngle: number;
  /** Trail of the gauge end behind the axis end [rad]. */
  readonly sweep: number;
  /** Radius as a share of the hole radius [-]. */
  readonly radiusShare: number;
}): number {
  requireFinite({ wingAngle, sweep, radiusShare });
  return wingAngle - sweep * radiusShare;
}

/**
 * Cutters on each wing, from wing 1 on.
 *
 * @throws RangeError when a count is not a whole number of at least 1, or the list is not one for each wing
 * @source (d) bookkeeping of the plan
 */
export function cuttersOnWings(
  { wings, cuttersPerWing, centreWings = wings }: WingPlan,
  /** Cutters per wing where the plan names none [-]. */
  otherwise: number,
): number[] {
  requireWhole("wings", wings, 1);
  requireWhole("centreWings", centreWings, 1);
  const asked = cuttersPerWing ?? otherwise;
  if (typeof asked !== "number") {
    if (asked.length !== wings) {
      throw new RangeError(`cuttersPerWing must be one for each of ${wings} wings, got ${asked.length}`);
    }
    for (const count of asked) requireWhole("cuttersPerWing", count, 1);
    return [...asked];
  }
  requireWhole("cuttersPerWing", asked, 1);
  return Array.from({ length: wings }, (_, at) => (at < centreWings ? asked : Math.max(1, asked - 1)));
}

function requireWhole(name: string, value: number, least: number): void {
  if (!(Number.isInteger(value) && value >= least)) {
    throw new RangeError(`${name} must be a whole number of at least ${least}, got ${value}`);
  }
}
