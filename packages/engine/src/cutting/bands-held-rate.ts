import { requirePositive } from "../quantity/index.ts";
import { rateOfPenetration } from "./advance.ts";
import type { HeatConditions } from "./cutter-heat.ts";
import { type BitInRock, type DrilledState, drillAtWeight } from "./drilled-state.ts";
import { largestRate, type RateLimitName, type RateLimits } from "./largest-rate.ts";
import { limitsPassed } from "./running-map-limits.ts";

/** What a bit does under a weight when the driller eases off before a limit is passed. */
export interface HeldRun {
  /** The bit with all of the weight on it, no limit looked at. */
  readonly free: DrilledState;
  /** The bit as it is run: free, or eased to the first limit. */
  readonly held: DrilledState;
  /** Rate as it is run [m/s]. */
  readonly rate: number;
  /** `weight` where the bit runs free, else the limit it is eased to. */
  readonly heldBy: RateLimitName;
}

/**
 * The rate under a weight, eased to the first limit that the weight would pass.
 *
 * The same as the largest rate inside the weight and all limits, but a limit is only solved for where the free run passes
 * it: the figures rise with advance, so one that the free run keeps, every easier run keeps as well. (Heat alone is level past
 * full contact and may fall by a hair; a temperature that the free run keeps counts as kept.)
 *
 * @throws RangeError when weight, speed or a limit is not positive, or a limit on temperature comes without heat conditions
 * @source (d) see `largestRate`
 */
export function heldRate({
  trace,
  response,
  kernel,
  rotarySpeed,
  weight,
  limits,
  heat,
}: BitInRock & {
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
  /** Weight on bit, pipe weight included [N]. */
  readonly weight: number;
  readonly limits: RateLimits;
  readonly heat?: HeatConditions;
}): HeldRun {
  requirePositive({ rotarySpeed, weight, ...limits });
  const free = drillAtWeight({ trace, response, kernel }, weight);
  const given = { response, rotarySpeed, limits, ...(heat ? { heat } : {}) };
  const passed = limitsPassed({ state: free, ...given });
  if (passed.length === 0) {
    return { free, held: free, rate: rateOfPenetration({ advance: free.advance, rotarySpeed }), heldBy: "weight" };
  }
  const broken = Object.fromEntries(passed.map((name) => [name, limits[name]])) as RateLimits;
  const { state, rate, binds } = largestRate({ trace, kernel, ...given, limits: broken });
  return { free, held: state, rate, heldBy: binds };
}
