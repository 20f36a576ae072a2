import { requireBetween, requireNotNegative, requirePositive } from "../quantity/index.ts";

/**
 * Ratio of specific heats of air [-].
 *
 * @source (b) any table of gases, recalled
 */
const AIR_RATIO = 1.4;

/**
 * Stages of a compressor of this trade [-].
 *
 * @source (c) common practice, no source
 */
export const USUAL_COMPRESSOR_STAGES = 2;

/**
 * Adiabatic power over the power at the shaft of a compressor, all losses together [-].
 *
 * @source (c) common practice, no source
 */
export const USUAL_COMPRESSOR_EFFICIENCY = 0.75;

/** What `compressorPower` needs. */
export interface CompressorPowerInput {
  /** Delivery as air at the inlet q [m³/s]. */
  readonly freeAirFlow: number;
  /** Delivery pressure over that of the inlet p [Pa]. */
  readonly deliveryPressure: number;
  /** Pressure of the air at the inlet p_a [Pa]. */
  readonly inletPressure: number;
  /** Stages n, cooled between each other [-]. */
  readonly stageCount: number;
  /** Adiabatic power over power at the shaft η [-]. */
  readonly efficiency: number;
}

/**
 * Power at the shaft of a compressor at full delivery.
 *
 * P = p_a q n k/(k - 1) (r^((k - 1)/(k n)) - 1)/η, r = (p + p_a)/p_a, k 1.4; every stage takes the same ratio and is cooled
 * back to the inlet's temperature. Moisture and the idling of a compressor that is throttled are left out.
 *
 * @returns power [W]
 * @throws RangeError when an input is out of range
 * @source (d) adiabatic compression of an ideal gas in even stages
 * @example
 * compressorPower({ freeAirFlow: 0.353961, deliveryPressure: 2413165, inletPressure: 101353, stageCount: 2, efficiency: 0.75 }) // → 194903
 */
export function compressorPower(input: CompressorPowerInput): number {
  const { freeAirFlow, deliveryPressure, inletPressure, stageCount, efficiency } = input;
  requirePositive({ freeAirFlow, inletPressure, stageCount, efficiency });
  requireNotNegative({ deliveryPressure });
  requireBetween("efficiency", efficiency, 0, 1);
  const ratio = (deliveryPressure + inletPressure) / inletPressure;
  const exponent = (AIR_RATIO - 1) / (AIR_RATIO * stageCount);
  const work = (stageCount * AIR_RATIO * (ratio ** exponent - 1)) / (AIR_RATIO - 1);
  return (inletPressure * freeAirFlow * work) / efficiency;
}
