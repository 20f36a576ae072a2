import { requirePositive } from "../quantity/index.ts";

/** What `hydraulicPower` needs. */
export interface HydraulicPowerInput {
  /** Pressure drop Δp [Pa]. */
  readonly pressureDrop: number;
  /** Pump flow Q [m³/s]. */
  readonly flow: number;
}

/**
 * Hydraulic power spent over a pressure drop.
 *
 * P = Δp Q.
 *
 * @returns power [W]
 * @throws RangeError when an input is not positive
 * @source (a) Lapeyrouse 2002, Formulas and Calculations for Drilling
 * @example
 * hydraulicPower({ pressureDrop: 357000, flow: 0.0095 }) // → 3391.5
 */
export function hydraulicPower({ pressureDrop, flow }: HydraulicPowerInput): number {
  requirePositive({ pressureDrop, flow });
  return pressureDrop * flow;
}

/** What `hydraulicPowerPerHoleArea` needs. */
export interface HydraulicPowerPerHoleAreaInput {
  /** Hydraulic power at the bit P [W]. */
  readonly power: number;
  /** Diameter of the hole D [m]. */
  readonly holeDiameter: number;
}

/**
 * Hydraulic power at the bit for each area of hole bottom; the trade's "HSI" in its own units.
 *
 * P/(π D²/4). Water-well pumps give 0.06 to 0.7 MW/m², oilfield practice 2 to 6.
 *
 * @returns power per area [W/m²]
 * @throws RangeError when an input is not positive
 * @source (a) Lapeyrouse 2002, Formulas and Calculations for Drilling
 * @example
 * hydraulicPowerPerHoleArea({ power: 3391.5, holeDiameter: 0.155575 }) // → 178410
 */
export function hydraulicPowerPerHoleArea({ power, holeDiameter }: HydraulicPowerPerHoleAreaInput): number {
  requirePositive({ power, holeDiameter });
  return power / ((Math.PI / 4) * holeDiameter ** 2);
}
