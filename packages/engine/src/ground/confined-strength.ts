import { requireBetween, requireNotNegative } from "../quantity/index.ts";

/** A rock held by the pressure of the drilling fluid. */
export interface ConfinedRock {
  /** Unconfined compressive strength [Pa]. */
  readonly ucs: number;
  /** Pressure of the fluid at the hole bottom above that of the water in the rock [Pa]. */
  readonly pressureDifference: number;
  /** Internal friction angle [rad]. */
  readonly frictionAngle: number;
}

/** Friction angles past this are no rock; the relation blows up at 90 degrees [rad]. */
const STEEPEST_FRICTION = (89 * Math.PI) / 180;

/**
 * Strength of rock under the pressure difference at the hole bottom.
 *
 * CCS = UCS + Δp + 2 Δp sin φ / (1 - sin φ); a straight strength line. Good for rock that lets its pore pressure
 * follow the drilling; tight shale that opens as it is cut is held by more than Δp and comes out harder than this.
 *
 * @returns confined compressive strength [Pa]
 * @throws RangeError when a strength or pressure is negative, or the angle is outside 0 to 89 degrees
 * @source (b) Caicedo, Calhoun & Ewy 2005, recalled
 * @example
 * confinedStrength({ ucs: 50e6, pressureDifference: 2e6, frictionAngle: 0.5235988 }) // → 56e6
 */
export function confinedStrength({ ucs, pressureDifference, frictionAngle }: ConfinedRock): number {
  requireNotNegative({ ucs, pressureDifference });
  requireBetween("frictionAngle", frictionAngle, 0, STEEPEST_FRICTION);
  const sine = Math.sin(frictionAngle);
  return ucs + pressureDifference + (2 * pressureDifference * sine) / (1 - sine);
}
