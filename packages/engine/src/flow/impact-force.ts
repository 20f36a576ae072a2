import { requirePositive } from "../quantity/index.ts";

/** What `impactForce` needs. */
export interface ImpactForceInput {
  /** Density of the fluid ρ [kg/m³]. */
  readonly density: number;
  /** Pump flow Q [m³/s]. */
  readonly flow: number;
  /** Pressure drop over the ports Δp [Pa]. */
  readonly pressureDrop: number;
  /** Discharge coefficient Cd [-]. */
  readonly dischargeCoefficient: number;
}

/**
 * Force of the port jets on the hole bottom: the momentum they carry.
 *
 * F = Cd Q √(2 ρ Δp), which is ρ Q v when Δp is the ports' own drop.
 *
 * @returns force [N]
 * @throws RangeError when an input is not positive
 * @source (a) Guo & Liu 2011, Applied Drilling Circulation Systems
 * @example
 * impactForce({ density: 1030, flow: 0.0095, pressureDrop: 356648, dischargeCoefficient: 0.95 }) // → 244.63
 */
export function impactForce({ density, flow, pressureDrop, dischargeCoefficient }: ImpactForceInput): number {
  requirePositive({ density, flow, pressureDrop, dischargeCoefficient });
  return dischargeCoefficient * flow * Math.sqrt(2 * density * pressureDrop);
}
