import { requirePositive } from "../quantity/index.ts";
import { advancePerRevolution, rateOfPenetration } from "./advance.ts";
import type { HeatConditions } from "./cutter-heat.ts";
import { type BitInRock, drillAtAdvance } from "./drilled-state.ts";
import { type RateBound, type RateLimitName, type RateLimits, rateBounds } from "./largest-rate.ts";
import { type AdvanceRung, ladderWeight } from "./running-map-ladder.ts";
import { LIMITS_OF_ADVANCE, LIMITS_OF_SPEED } from "./running-map-limits.ts";

/** One way to run the bit: a point of the map. */
export interface RunningMapPoint {
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed: number;
  /** Weight on bit, pipe weight included [N]. */
  readonly weight: number;
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Rate of penetration [m/s]. */
  readonly rate: number;
}

/** Where one limit is met, over the speeds of the map. */
export interface LimitLine {
  readonly limit: RateLimitName;
  /** Whether it lies at one weight for every speed. */
  readonly level: boolean;
  /** By rising speed; a speed is left out where no weight meets the limit. */
  readonly points: readonly RunningMapPoint[];
}

/** What limits a bit in a rock. */
export interface LimitedBit extends BitInRock {
  readonly limits: RateLimits;
  readonly heat?: HeatConditions;
}

/**
 * The limits that do not depend on speed, each at the advance where it is met, tightest first.
 *
 * @source (d) see `rateBounds`; solved once for all speeds
 */
export function advanceBounds(bit: LimitedBit, anySpeed: number): RateBound[] {
  return boundsOf(bit, anySpeed, LIMITS_OF_ADVANCE);
}

/**
 * The limits that depend on speed, each at the advance where it is met at this one, tightest first; `among` leaves out
 * those that are known not to matter.
 *
 * @source (d) see `rateBounds`
 */
export function speedBounds(
  bit: LimitedBit,
  rotarySpeed: number,
  among: readonly RateLimitName[] = LIMITS_OF_SPEED,
): RateBound[] {
  return boundsOf(bit, rotarySpeed, among);
}

function boundsOf(bit: LimitedBit, rotarySpeed: number, names: readonly RateLimitName[]): RateBound[] {
  const limits = Object.fromEntries(
    names.flatMap((name) => (bit.limits[name] === undefined ? [] : [[name, bit.limits[name]]])),
  ) as RateLimits;
  return rateBounds({ ...bit, rotarySpeed, limits });
}

/**
 * The lines of all limits over the speeds of a map.
 *
 * Weight, torque, advance and exposure are solved once and lie level; power, cleaning and heat are solved at each speed.
 *
 * @throws RangeError when there is no speed, one is not positive, or a limit is not positive
 * @source (d) see `rateBounds`
 */
export function limitLines(bit: LimitedBit, rotarySpeeds: readonly number[]): LimitLine[] {
  requirePositive({ "number of speeds": rotarySpeeds.length });
  const pointAt = (rotarySpeed: number, advance: number, weight: number): RunningMapPoint => ({
    rotarySpeed,
    weight,
    advance,
    rate: rateOfPenetration({ advance, rotarySpeed }),
  });
  const level = advanceBounds(bit, rotarySpeeds[0]).map(({ limit, advance }): LimitLine => {
    const { weight } = drillAtAdvance(bit, advance).bit;
    return { limit, level: true, points: rotarySpeeds.map((speed) => pointAt(speed, advance, weight)) };
  });
  const sloping = new Map<RateLimitName, RunningMapPoint[]>();
  // Power and heat grow with speed: a limit that no advance meets at the fastest speed is met at none.
  const met = speedBounds(bit, Math.max(...rotarySpeeds)).map(({ limit }) => limit);
  for (const rotarySpeed of rotarySpeeds) {
    for (const { limit, advance } of speedBounds(bit, rotarySpeed, met)) {
      const point = pointAt(rotarySpeed, advance, drillAtAdvance(bit, advance).bit.weight);
      sloping.set(limit, [...(sloping.get(limit) ?? []), point]);
    }
  }
  return [...level, ...[...sloping].map(([limit, points]): LimitLine => ({ limit, level: false, points }))];
}

/**
 * The line along which a bit makes one rate: less weight where it turns faster.
 *
 * d = 2π v / ω, and the weight that makes that advance.
 *
 * @throws RangeError when the rate or a speed is not positive
 * @source (d) kinematics over the ladder of advances
 */
export function rateLine({
  ladder,
  rate,
  rotarySpeeds,
}: {
  readonly ladder: readonly AdvanceRung[];
  /** Rate of penetration along the line [m/s]. */
  readonly rate: number;
  /** Speeds at which to give a point, ascending [rad/s]. */
  readonly rotarySpeeds: readonly number[];
}): RunningMapPoint[] {
  requirePositive({ rate });
  return rotarySpeeds.flatMap((rotarySpeed) => {
    const advance = advancePerRevolution({ rate, rotarySpeed });
    const weight = ladderWeight(ladder, advance);
    return weight === undefined ? [] : [{ rotarySpeed, weight, advance, rate }];
  });
}
