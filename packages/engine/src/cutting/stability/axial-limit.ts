import { requirePositive } from "../../quantity/index.ts";

/** The two numbers that the axial limit hangs on. */
export interface AxialLimitInput {
  /** ψ [-]. */
  readonly cutStiffness: number;
  /** n [-]. */
  readonly wings: number;
}

/**
 * Time between two wings, beyond which a sharp bit begins to bounce on its own cut, in units of t*.
 *
 * τ_c = π/√(2 n ψ): the least delay at which s² + n ψ (1 - e^(-s τ)) = 0 has a root on the imaginary axis, s = i √(2 n ψ).
 *
 * @returns delay [-]
 * @throws RangeError when an input is not positive
 * @source (d) from the characteristic equation of u'' = -n ψ (u - u(t - τ))
 * @example
 * criticalDelay({ cutStiffness: 14.1417, wings: 4 }) // → 0.295359
 */
export function criticalDelay({ cutStiffness, wings }: AxialLimitInput): number {
  requirePositive({ cutStiffness, wings });
  return Math.PI / Math.sqrt(2 * wings * cutStiffness);
}

/**
 * Rotary speed under which a sharp bit begins to bounce on its own cut, in units of 1/t*.
 *
 * ω0 = 2π/(n τ_c) = √(8 ψ/n). Contact that is not lost changes nothing; the string is free to move along the hole.
 *
 * @returns rotary speed [-]
 * @throws RangeError when an input is not positive
 * @source (d) from the characteristic equation of u'' = -n ψ (u - u(t - τ))
 * @example
 * scaledAxialLimit({ cutStiffness: 14.1417, wings: 4 }) // → 5.318215
 */
export function scaledAxialLimit({ cutStiffness, wings }: AxialLimitInput): number {
  requirePositive({ cutStiffness, wings });
  return Math.sqrt((8 * cutStiffness) / wings);
}

/**
 * Rotary speed under which a bit begins to bounce on its own cut.
 *
 * ω = √(8 (dW/dd)/(n M)): the same limit with its scales put in; inertia and stiffness in twist drop out.
 *
 * @returns rotary speed [rad/s]
 * @throws RangeError when an input is not positive
 * @source (d) from the characteristic equation of u'' = -n ψ (u - u(t - τ))
 * @example
 * axialLimitSpeed({ weightSlope: 3.888e6, wings: 4, mass: 34000 }) // → 15.123
 */
export function axialLimitSpeed({
  weightSlope,
  wings,
  mass,
}: {
  /** Weight that cuts for each metre of advance [N/m]. */
  readonly weightSlope: number;
  /** Wings [-]. */
  readonly wings: number;
  /** Mass that moves with the bit [kg]. */
  readonly mass: number;
}): number {
  requirePositive({ weightSlope, wings, mass });
  return Math.sqrt((8 * weightSlope) / (wings * mass));
}
