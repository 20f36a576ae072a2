/**
 * Normal over tangential force of a sharp cutter.
 *
 * ζ = tan(β + ψ), β the back rake and ψ the friction angle on the face. Holds for a face that pushes chips ahead of it;
 * β + ψ must stay under 90°. With β + χ in place of β it is the ratio of a chamfer that cuts.
 *
 * @returns ζ [-]
 * @throws RangeError when the face leans so far that β + ψ reaches 90° either way
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled
 * @example
 * cuttingRatio({ backRake: (15 * Math.PI) / 180, faceFriction: (18 * Math.PI) / 180 }) // → 0.6494076
 */
export function cuttingRatio({
  backRake,
  faceFriction,
}: {
  /** Back rake of the face [rad]. */
  readonly backRake: number;
  /** Friction angle on the face [rad]. */
  readonly faceFriction: number;
}): number {
  const lean = backRake + faceFriction;
  if (!(Math.abs(lean) < Math.PI / 2)) {
    throw new RangeError(`back rake plus face friction must stay under a right angle, got ${lean} rad`);
  }
  return Math.tan(lean);
}
