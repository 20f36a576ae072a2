import type { HeatConditions } from "./cutter-heat.ts";
import type { BitInRock, DrilledState } from "./drilled-state.ts";
import type { RateLimitName, RateLimits } from "./largest-rate.ts";
import { limitMeasures } from "./limit-measures.ts";

/**
 * Limits that a bit meets at one advance whatever its speed, because weight, torque and depth of cut follow from the advance
 * alone.
 *
 * @source (d) the cutting law knows no speed: Detournay & Defourny 1992
 */
export const LIMITS_OF_ADVANCE: readonly RateLimitName[] = ["weight", "torque", "advance", "exposure"];

/**
 * Limits that are met at another advance for every speed: power is torque times speed, what the flow cleans is advance times
 * speed, and heat runs with the speed of the cutters.
 *
 * @source (d) kinematics; Glowka & Stone 1985 for heat
 */
export const LIMITS_OF_SPEED: readonly RateLimitName[] = ["power", "rate", "contactTemperature"];

/**
 * The limits that a state passes at a speed.
 *
 * @throws RangeError when a limit on contact temperature comes without heat conditions
 * @source (d) each figure of the state against its limit
 */
export function limitsPassed({
  state,
  response,
  rotarySpeed,
  limits,
  heat,
}: Pick<BitInRock, "response"> & {
  readonly state: DrilledState;
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
  readonly limits: RateLimits;
  readonly heat?: HeatConditions;
}): RateLimitName[] {
  const measures = limitMeasures({ response, rotarySpeed, ...(heat ? { heat } : {}) });
  return (Object.keys(measures) as RateLimitName[]).filter((name) => {
    const limit = limits[name];
    return limit !== undefined && measures[name](state) > limit;
  });
}
