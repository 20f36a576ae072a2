import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/** What `stringTwist` needs. */
export interface StringTwistInput {
  /** Torque at the bit T [N·m]. */
  readonly torque: number;
  /** Stiffness of the string in twist C = 1/Σ L/(G J) [N·m/rad]. */
  readonly torsionalStiffness: number;
}

/**
 * Angle by which the bit lags behind the top of the string under a torque; it comes back all at once when the bit lets go.
 *
 * θ = T/C; drag along the hole left out.
 *
 * @returns angle [rad]
 * @throws RangeError when the torque is negative or the stiffness is not positive
 * @source (d) strength of materials
 * @example
 * stringTwist({ torque: 1500, torsionalStiffness: 2700 }) // → 0.55556
 */
export function stringTwist({ torque, torsionalStiffness }: StringTwistInput): number {
  requireNotNegative({ torque });
  requirePositive({ torsionalStiffness });
  return torque / torsionalStiffness;
}
