import { FILM_COEFFICIENT_RANGE } from "../cutting/index.ts";
import { requirePositive } from "../quantity/index.ts";

/**
 * Thermal conductivity of water and thin mud [W/(m·K)].
 *
 * @source (b) recalled from property tables of water near 20 °C
 */
export const WATER_CONDUCTIVITY = 0.6;

/**
 * Heat that water and thin mud take up [J/(kg·K)].
 *
 * @source (b) recalled from property tables of water near 20 °C
 */
export const WATER_HEAT_CAPACITY = 4180;

/** A fluid as it streams past a cutter. */
export interface WashingFluid {
  /** Density [kg/m³]. */
  readonly density: number;
  /** Viscosity at the shear of the slot [Pa·s]. */
  readonly viscosity: number;
  /** Thermal conductivity; of water where not given [W/(m·K)]. */
  readonly conductivity?: number;
  /** Heat capacity; of water where not given [J/(kg·K)]. */
  readonly heatCapacity?: number;
}

/**
 * Nusselt number of developed laminar flow under even heat [-].
 *
 * @source (b) recalled from heat-transfer texts
 */
export const LAMINAR_NUSSELT = 4.36;

/**
 * Film coefficient on the wall of a slot from the speed of the fluid in it.
 *
 * h = Nu k/D, Nu = 0.023 Re^0.8 Pr^0.4, not under the 4.36 of laminar flow, D the hydraulic diameter; held to
 * `FILM_COEFFICIENT_RANGE`. For long smooth pipes with Re over 10⁴: a slot is short and a jet strikes it, so it is on the
 * low side near a port.
 *
 * @returns film coefficient [W/(m²·K)]
 * @throws RangeError when an input is not positive
 * @source (b) Dittus & Boelter 1930, recalled; that it holds in a slot: (c) no source
 * @example
 * filmCoefficient({ speed: 3, hydraulicDiameter: 0.02, density: 1000, viscosity: 0.001 }) // → 9967.36
 */
export function filmCoefficient({
  speed,
  hydraulicDiameter,
  density,
  viscosity,
  conductivity = WATER_CONDUCTIVITY,
  heatCapacity = WATER_HEAT_CAPACITY,
}: WashingFluid & {
  /** Speed of the fluid [m/s]. */
  readonly speed: number;
  /** Hydraulic diameter of the slot [m]. */
  readonly hydraulicDiameter: number;
}): number {
  requirePositive({ speed, hydraulicDiameter, density, viscosity, conductivity, heatCapacity });
  const reynolds = (density * speed * hydraulicDiameter) / viscosity;
  const prandtl = (heatCapacity * viscosity) / conductivity;
  const nusselt = Math.max(LAMINAR_NUSSELT, 0.023 * reynolds ** 0.8 * prandtl ** 0.4);
  const { low, high } = FILM_COEFFICIENT_RANGE;
  return Math.min(high, Math.max(low, (nusselt * conductivity) / hydraulicDiameter));
}
