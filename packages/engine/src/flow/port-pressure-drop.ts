import { requirePositive } from "../quantity/index.ts";

/**
 * Discharge coefficient of a rounded port or nozzle in everyday reckoning [-].
 *
 * @source (a) Guo & Liu 2011, Applied Drilling Circulation Systems: 0.95 in practice, up to 0.98 measured
 */
export const USUAL_DISCHARGE_COEFFICIENT = 0.95;

/**
 * Discharge coefficient found for shaped jet nozzles, in which some pressure is won back [-].
 *
 * @source (a) Ramsey 1983 and Warren 1989 as confirmed in Robinson, AADE-10-DF-HO-26
 */
export const SHAPED_NOZZLE_DISCHARGE_COEFFICIENT = 1.03;

/** What `portPressureDrop` needs. */
export interface PortPressureDropInput {
  /** Density of the fluid ρ [kg/m³]. */
  readonly density: number;
  /** Pump flow Q [m³/s]. */
  readonly flow: number;
  /** Total port area A [m²]. */
  readonly area: number;
  /** Discharge coefficient Cd; a plain drilled, sharp-edged port lies near 0.6 to 0.8 [-]. */
  readonly dischargeCoefficient: number;
}

/**
 * Pressure lost through the bit's ports.
 *
 * Δp = ρ Q²/(2 Cd² A²); turbulent flow of a liquid through ports that all feel the same pressure. Viscosity does not
 * enter; for a plain drilled hole a flow test gives Cd.
 *
 * @returns pressure drop [Pa]
 * @throws RangeError when an input is not positive
 * @source (b) Bourgoyne et al. 1986, Applied Drilling Engineering ch. 4, recalled
 * @example
 * portPressureDrop({ density: 1030, flow: 0.0095, area: 3.8e-4, dischargeCoefficient: 0.95 }) // → 356648
 */
export function portPressureDrop({ density, flow, area, dischargeCoefficient }: PortPressureDropInput): number {
  requirePositive({ density, flow, area, dischargeCoefficient });
  return (density / 2) * (flow / (dischargeCoefficient * area)) ** 2;
}
