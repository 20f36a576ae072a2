import { requireNotNegative, requirePositive } from "../quantity/index.ts";

/** What `frictionPressureDrop` needs. */
export interface FrictionPressureDropInput {
  /** Fanning friction factor f, a quarter of Darcy's [-]. */
  readonly friction: number;
  /** Density of the fluid ρ [kg/m³]. */
  readonly density: number;
  /** Mean speed v [m/s]. */
  readonly speed: number;
  /** Length of the stretch L [m]. */
  readonly length: number;
  /** Hydraulic diameter d [m]. */
  readonly hydraulicDiameter: number;
}

/**
 * Pressure lost to wall friction along a conduit.
 *
 * Δp = 2 f ρ v² L/d, f the Fanning factor.
 *
 * @returns pressure drop [Pa]
 * @throws RangeError when an input is negative, or density, speed or diameter is zero
 * @source (b) Darcy and Weisbach, any text of fluid mechanics, recalled
 * @example
 * frictionPressureDrop({ friction: 0.005, density: 1000, speed: 2, length: 100, hydraulicDiameter: 0.07 }) // → 57143
 */
export function frictionPressureDrop(input: FrictionPressureDropInput): number {
  const { friction, density, speed, length, hydraulicDiameter } = input;
  requirePositive({ density, speed, hydraulicDiameter });
  requireNotNegative({ friction, length });
  return (2 * friction * density * speed ** 2 * length) / hydraulicDiameter;
}
