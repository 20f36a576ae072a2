import { requirePositive } from "../../quantity/index.ts";

/**
 * Lobes that a bit in backward whirl leaves in the bottom of the hole.
 *
 * k n + 1 for n wings, k = 1, 2, 3 …
 *
 * @returns number of lobes [-]
 * @throws RangeError when a count is not a whole number of at least 1
 * @source (a) teaching article on bit whirl, read
 * @example
 * whirlLobes({ wings: 5, number: 2 }) // → 11
 */
export function whirlLobes({
  wings,
  number,
}: {
  /** Wings of the bit [-]. */
  readonly wings: number;
  /** Which of the patterns, from 1 [-]. */
  readonly number: number;
}): number {
  for (const [name, value] of Object.entries({ wings, number })) {
    if (!(Number.isInteger(value) && value >= 1))
      throw new RangeError(`${name} must be a whole number from 1, got ${value}`);
  }
  return number * wings + 1;
}

/**
 * Speed at which the axis of a bit runs round backward when the bit rolls without slip along the wall of a larger hole.
 *
 * Ω_w = Ω R_bit/(R_hole - R_bit). An ideal: cutters that bite slip, and a whirling bit does not keep to it.
 *
 * @returns whirling speed, against the sense of rotation [rad/s]
 * @throws RangeError when a size or speed is not positive, or the hole is not wider than the bit
 * @source (d) rolling of a circle inside a circle
 * @example
 * backwardWhirlSpeed({ rotarySpeed: 9.424778, bitDiameter: 0.155575, holeDiameter: 0.161925 }) // → 230.907
 */
export function backwardWhirlSpeed({
  rotarySpeed,
  bitDiameter,
  holeDiameter,
}: {
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
  /** Diameter of the bit [m]. */
  readonly bitDiameter: number;
  /** Diameter of the hole as drilled [m]. */
  readonly holeDiameter: number;
}): number {
  requirePositive({ rotarySpeed, bitDiameter, clearance: holeDiameter - bitDiameter });
  return (rotarySpeed * bitDiameter) / (holeDiameter - bitDiameter);
}
