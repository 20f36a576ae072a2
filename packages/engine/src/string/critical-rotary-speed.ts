import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/**
 * Speed of sound along a bar of steel, from 30·10⁶ psi and 489.5 lb/ft³ [m/s].
 *
 * @source (d) √(E/ρ)
 */
const BAR_SPEED = Math.sqrt(206.843e9 / 7841);

/** What `criticalRotarySpeed` needs. */
export interface CriticalRotarySpeedInput {
  /** Outer diameter of the pipe D [m]. */
  readonly outerDiameter: number;
  /** Bore of the pipe d [m]. */
  readonly bore: number;
  /** Length of a joint L [m]. */
  readonly jointLength: number;
}

/**
 * Rotary speed at which a joint of pipe whips between its tool joints.
 *
 * ω = π² √(E/ρ) √(D² + d²)/(4 L²); in field units 4.76·10⁶ √(D² + d²)/l² rpm, l in inches. One span held by pins at either
 * end, in air, without tension; a pressed or worn joint whips sooner, fluid and tension move it. A note, not a limit.
 *
 * @returns rotary speed [rad/s]
 * @throws RangeError when the diameter or length is not positive, or the bore is negative or leaves no wall
 * @source (b) API RP 7G, recalled; constant derived again from the bending of a pinned beam
 * @example
 * criticalRotarySpeed({ outerDiameter: 0.0889, bore: 0.0702056, jointLength: 6.096 }) // → 38.62
 */
export function criticalRotarySpeed({ outerDiameter, bore, jointLength }: CriticalRotarySpeedInput): number {
  requirePositive({ outerDiameter, jointLength, wall: outerDiameter - bore });
  requireNotNegative({ bore });
  return (Math.PI ** 2 * BAR_SPEED * Math.hypot(outerDiameter, bore)) / (4 * jointLength ** 2);
}
