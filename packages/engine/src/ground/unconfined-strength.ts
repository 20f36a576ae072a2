import { requireBetween, requireNotNegative } from "../quantity/index.ts";

/** A straight strength line fitted to triaxial tests. */
export interface MohrLine {
  /** Cohesion, where the line cuts the axis of no normal stress [Pa]. */
  readonly cohesion: number;
  /** Internal friction angle, the slope of the line [rad]. */
  readonly frictionAngle: number;
}

/**
 * Unconfined strength at which a Mohr circle touches a straight strength line.
 *
 * UCS = 2 c cos φ / (1 - sin φ); for friction angles from 0 to under 90 degrees. A line fitted to triaxial tests
 * over-reads the strength measured without confinement.
 *
 * @returns unconfined compressive strength [Pa]
 * @throws RangeError when the cohesion is negative or the angle is outside 0 to 89 degrees
 * @source (d) geometry of the Mohr circle; c, φ of rocks as in Goodman 1989 table 3.3
 * @example
 * unconfinedStrengthFromMohr({ cohesion: 27.2e6, frictionAngle: 0.485202 }) // → 90.18e6
 */
export function unconfinedStrengthFromMohr({ cohesion, frictionAngle }: MohrLine): number {
  requireNotNegative({ cohesion });
  requireBetween("frictionAngle", frictionAngle, 0, STEEPEST_FRICTION);
  return (2 * cohesion * Math.cos(frictionAngle)) / (1 - Math.sin(frictionAngle));
}

/** Friction angles past this are no rock; the relations blow up at 90 degrees [rad]. */
const STEEPEST_FRICTION = (89 * Math.PI) / 180;
