import { largest, requirePositive } from "../quantity/index.ts";
import { advancePerRevolution, rateOfPenetration } from "./advance.ts";
import { type HeatConditions, hottestContact } from "./cutter-heat.ts";
import { advanceWhere, type BitInRock, type DrilledState, drillAtAdvance, type StateMeasure } from "./drilled-state.ts";

/** Limits on a rate; any may be left out, one at least must stand. */
export interface RateLimits {
  /** Weight on bit the rig can give or the string may carry [N]. */
  readonly weight?: number;
  /** Torque at the bit [N·m]. */
  readonly torque?: number;
  /** Rotary power at the bit [W]. */
  readonly power?: number;
  /** Advance per revolution [m]. */
  readonly advance?: number;
  /** Deepest cut of any cutter before the wing behind it rubs [m]. */
  readonly exposure?: number;
  /** Rate that the flow can clean [m/s]. */
  readonly rate?: number;
  /** Temperature of the hottest rubbing surface; needs `heat` [K]. */
  readonly contactTemperature?: number;
}

/** Name of a limit. */
export type RateLimitName = keyof RateLimits;

/** The rate at which one limit is met. */
export interface RateBound {
  readonly limit: RateLimitName;
  /** Advance per revolution at which it is met [m]. */
  readonly advance: number;
  /** Rate at which it is met [m/s]. */
  readonly rate: number;
}

/** The largest rate inside all limits. */
export interface LargestRate {
  /** The limit that binds. */
  readonly binds: RateLimitName;
  /** Rate of penetration [m/s]. */
  readonly rate: number;
  readonly state: DrilledState;
  /** Every limit that some rate meets, tightest first. */
  readonly bounds: readonly RateBound[];
}

/** A bit in a rock at one speed, and what limits it. */
interface LimitedRate extends BitInRock {
  /** Rotary speed of the bit [rad/s]. */
  readonly rotarySpeed: number;
  readonly limits: RateLimits;
  readonly heat?: HeatConditions;
}

/**
 * The rate at which each limit given is met, tightest first; a limit that no rate meets is left out.
 *
 * Each figure rises with advance, so each limit is met at one advance, or at none. A limit that is past before the bit moves
 * bounds the rate to zero.
 *
 * @throws RangeError when the speed or a limit is not positive, or a limit on temperature comes without heat conditions
 * @source (d) the advances at which the limits are met
 */
export function rateBounds({ trace, response, kernel, rotarySpeed, limits, heat }: LimitedRate): RateBound[] {
  requirePositive({ rotarySpeed });
  requirePositive({ ...limits });
  const where = (measure: StateMeasure, target: number) => advanceWhere({ trace, response, kernel }, measure, target);
  const fluidTemperature = heat?.fluidTemperature ?? 0;
  const heatRise: StateMeasure = ({ loads }) =>
    hottestContact(loads, { response, rotarySpeed, heat }) - fluidTemperature;
  const met: Readonly<Record<RateLimitName, (limit: number) => number | undefined>> = {
    weight: (limit) => where(({ bit }) => bit.weight, limit),
    torque: (limit) => where(({ bit }) => bit.torque, limit),
    power: (limit) => where(({ bit }) => bit.torque, limit / rotarySpeed),
    advance: (limit) => limit,
    exposure: (limit) => where(({ loads }) => largest(loads.deepest), limit),
    rate: (limit) => advancePerRevolution({ rate: limit, rotarySpeed }),
    contactTemperature: (limit) => where(heatRise, limit - fluidTemperature),
  };
  const bounds: RateBound[] = [];
  for (const limit of Object.keys(met) as RateLimitName[]) {
    const value = limits[limit];
    const advance = value === undefined ? undefined : met[limit](value);
    if (advance !== undefined) bounds.push({ limit, advance, rate: rateOfPenetration({ advance, rotarySpeed }) });
  }
  return bounds.sort((a, b) => a.advance - b.advance);
}

/**
 * The largest rate that keeps inside every limit given, and which of them binds.
 *
 * @throws RangeError when no limit is given, none is ever met, or as `rateBounds` does
 * @source (d) least of the advances at which the limits are met
 */
export function largestRate(limited: LimitedRate): LargestRate {
  const bounds = rateBounds(limited);
  const tightest = bounds[0];
  if (!tightest) throw new RangeError("no limit given is met at any rate");
  return { binds: tightest.limit, rate: tightest.rate, state: drillAtAdvance(limited, tightest.advance), bounds };
}
