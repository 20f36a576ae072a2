import { requireNotNegative } from "../quantity/index.ts";

/** What `rotaryPower` needs. */
export interface RotaryPowerInput {
  /** Torque at the top of the string T [N·m]. */
  readonly torque: number;
  /** Rotary speed ω [rad/s]. */
  readonly rotarySpeed: number;
}

/**
 * Power that turning the string takes.
 *
 * P = T ω.
 *
 * @returns power [W]
 * @throws RangeError when an input is negative
 * @source (d) work of a torque
 * @example
 * rotaryPower({ torque: 2033.7, rotarySpeed: 9.42478 }) // → 19167
 */
export function rotaryPower({ torque, rotarySpeed }: RotaryPowerInput): number {
  requireNotNegative({ torque, rotarySpeed });
  return torque * rotarySpeed;
}
