import { type Band, mapBand, requirePositive } from "../quantity/index.ts";

/**
 * Flow below which a diamond bit is not turned on bottom at all, 10 US gpm [m³/s]. It cools; it does not clean.
 *
 * @source (c) common practice, no source
 */
export const COOLING_FLOW_FLOOR = 6.309e-4;

/**
 * Flow for each length of bit diameter that practice asks for on water or mud, 12 to 15 US gpm per inch [m²/s].
 *
 * @source (c) common practice, no source
 */
export const COOLING_FLOW_PER_DIAMETER: Band = { low: 0.029806, mid: 0.033532, high: 0.037258 };

/**
 * Flow that practice asks for to cool a diamond bit, by its diameter [m].
 *
 * Q = q D, q from 12 to 15 US gpm per inch.
 *
 * @returns flow [m³/s]
 * @throws RangeError when the diameter is not positive
 * @source (c) common practice, no source
 * @example
 * coolingFlow(0.155575).low // → 0.0046371
 */
export function coolingFlow(bitDiameter: number): Band {
  requirePositive({ bitDiameter });
  return mapBand(COOLING_FLOW_PER_DIAMETER, (flowPerDiameter) => flowPerDiameter * bitDiameter);
}
