import { requireFinite, requirePositive } from "../quantity/index.ts";

const TURN = 2 * Math.PI;

/**
 * Advance per revolution from rate and rotary speed.
 *
 * d = 2π v / ω.
 *
 * @returns advance [m]
 * @throws RangeError when the rotary speed is not positive
 * @source (d) kinematics
 * @example
 * advancePerRevolution({ rate: 0.0030903, rotarySpeed: 10.47198 }) // → 1.8542e-3
 */
export function advancePerRevolution({
  rate,
  rotarySpeed,
}: {
  /** Rate of penetration [m/s]. */
  readonly rate: number;
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
}): number {
  requireFinite({ rate });
  requirePositive({ rotarySpeed });
  return (TURN * rate) / rotarySpeed;
}

/**
 * Rate of penetration from advance per revolution and rotary speed.
 *
 * v = d ω / 2π.
 *
 * @returns rate [m/s]
 * @throws RangeError when an input is not finite
 * @source (d) kinematics
 * @example
 * rateOfPenetration({ advance: 1.8542e-3, rotarySpeed: 10.47198 }) // → 0.0030903
 */
export function rateOfPenetration({
  advance,
  rotarySpeed,
}: {
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
}): number {
  requireFinite({ advance, rotarySpeed });
  return (advance * rotarySpeed) / TURN;
}
