import { bracketedRoot, largest, requirePositive } from "../quantity/index.ts";
import { rateOfPenetration } from "./advance.ts";
import { contactTemperatures } from "./cutter-heat.ts";
import { type DrilledState, drillAtAdvance } from "./drilled-state.ts";
import type { RateBound, RateLimitName } from "./largest-rate.ts";
import { LIMITS_OF_SPEED, limitsPassed } from "./running-map-limits.ts";
import { advanceBounds, type LimitedBit, type RunningMapPoint, speedBounds } from "./running-map-lines.ts";

/** Speeds that a rotary can hold. */
export interface SpeedRange {
  /** Slowest steady speed [rad/s]. */
  readonly slowest: number;
  /** Fastest speed [rad/s]. */
  readonly fastest: number;
  /** The only speeds there are, ascending, where the rotary is geared [rad/s]. */
  readonly fixed?: readonly number[];
}

/** Speeds to keep out of, as where the string would swing. */
export interface SpeedWindow {
  /** Slowest speed inside [rad/s]. */
  readonly from: number;
  /** Fastest speed inside [rad/s]. */
  readonly to: number;
  /** Why, in a few words. */
  readonly why: string;
}

/** The point of the map with the largest rate inside all limits. */
export interface BestRun extends RunningMapPoint {
  /** Torque at the bit [N·m]. */
  readonly torque: number;
  /** The limit that lets no more weight on. */
  readonly binds: RateLimitName;
  /** Why not faster: the rotary's fastest speed, speeds to keep out of, or that the rate would not rise. */
  readonly fasterEndsAt: "rotary" | "avoided" | "rate";
  /** All limits at this speed, tightest first. */
  readonly bounds: readonly RateBound[];
}

const SPEEDS_LOOKED_AT = 40;
const NARROWING = 60;
/** Rates that differ by less than this share of themselves count as equal; of equal ones the slowest turning is best. */
const SAME_RATE = 1e-6;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The speed and weight with the largest rate inside all limits; undefined where every speed of the rotary is to be kept out of.
 *
 * At one speed the tightest limit sets the advance. The limits that know no speed set one advance d for all; the rate then
 * rises with speed until power, cleaning or heat takes over, at speeds that follow in closed form (P/T(d), 2π v/d) or, for heat, from
 * one root. Those, the ends of the speed range and of the windows, and an even row of speeds are tried, and the neighbourhood of the best is
 * narrowed by golden sections. Of equal rates the slowest turning is taken.
 *
 * @throws RangeError when a speed or a limit is not positive
 * @source (d) largest rate over speed, each by `largestRate`
 */
export function bestRun(bit: LimitedBit, rotary: SpeedRange, avoid: readonly SpeedWindow[] = []): BestRun | undefined {
  requirePositive({ slowest: rotary.slowest, ...bit.limits });
  if (!(rotary.fastest >= rotary.slowest)) {
    throw new RangeError(`the fastest speed must not be under the slowest, got ${rotary.fastest}`);
  }
  const level = advanceBounds(bit, rotary.slowest);
  const allowed = (speed: number) =>
    speed >= rotary.slowest && speed <= rotary.fastest && !avoid.some(({ from, to }) => speed > from && speed < to);
  // What the limits that know no speed leave: only a limit that this state passes at a speed needs to be solved there.
  const loosest = level[0] && drillAtAdvance(bit, level[0].advance);
  const at = (rotarySpeed: number) => runAt(bit, level, loosest, rotarySpeed);
  const speeds = rotary.fixed ?? speedsToTry(bit, level, rotary, avoid);
  const tried = [...new Set(speeds)]
    .filter(allowed)
    .sort((a, b) => a - b)
    .map(at);
  if (tried.length === 0) return undefined;
  const best = slowestOfTheFastest(tried);
  const finer = rotary.fixed ? [] : narrowed(best, tried, at, allowed);
  const better = finer.filter(({ rate }) => rate > best.rate * (1 + SAME_RATE));
  const found = better.length > 0 ? slowestOfTheFastest(better) : best;
  const { torque, weight } = drillAtAdvance(bit, found.advance).bit;
  // Past full contact an edge cools by a hair as the cut deepens, so a temperature may be met at a lesser advance and yet be
  // kept at this one: such a bound says nothing here.
  const bounds = [...level.map((bound) => rated(bound, found.rotarySpeed)), ...speedBounds(bit, found.rotarySpeed)]
    .filter(({ advance }) => advance >= found.advance * (1 - SAME_RATE))
    .sort((a, b) => a.advance - b.advance);
  return { ...found, weight, torque, bounds, fasterEndsAt: fasterEndsAt(found.rotarySpeed, rotary, avoid) };
}

type Tried = Omit<BestRun, "bounds" | "fasterEndsAt" | "torque" | "weight">;

function runAt(
  bit: LimitedBit,
  level: readonly RateBound[],
  loosest: DrilledState | undefined,
  rotarySpeed: number,
): Tried {
  const matter = loosest
    ? limitsPassed({ ...bit, state: loosest, rotarySpeed }).filter((name) => LIMITS_OF_SPEED.includes(name))
    : LIMITS_OF_SPEED;
  const tightest = [...level, ...speedBounds(bit, rotarySpeed, matter)].reduce<RateBound | undefined>(
    (least, bound) => (least === undefined || bound.advance < least.advance ? bound : least),
    undefined,
  );
  if (!tightest) throw new RangeError("no limit given is met at any rate");
  const { limit, advance } = tightest;
  return { rotarySpeed, advance, rate: rateOfPenetration({ advance, rotarySpeed }), binds: limit };
}

const rated = ({ limit, advance }: RateBound, rotarySpeed: number): RateBound => ({
  limit,
  advance,
  rate: rateOfPenetration({ advance, rotarySpeed }),
});

function slowestOfTheFastest(tried: readonly Tried[]): Tried {
  const most = tried.reduce((rate, run) => Math.max(rate, run.rate), 0);
  return tried
    .filter(({ rate }) => rate >= most * (1 - SAME_RATE))
    .reduce((slow, run) => (run.rotarySpeed < slow.rotarySpeed ? run : slow));
}

function speedsToTry(
  bit: LimitedBit,
  level: readonly RateBound[],
  { slowest, fastest }: SpeedRange,
  avoid: readonly SpeedWindow[],
): number[] {
  const even = Array.from(
    { length: SPEEDS_LOOKED_AT + 1 },
    (_, k) => slowest + (k / SPEEDS_LOOKED_AT) * (fastest - slowest),
  );
  return [
    ...even,
    fastest,
    ...avoid.flatMap(({ from, to }) => [from, to]),
    ...takeOverSpeeds(bit, level, slowest, fastest),
  ];
}

/** The speeds at which power, cleaning and heat begin to bind before the limits that know no speed. */
function takeOverSpeeds(bit: LimitedBit, level: readonly RateBound[], slowest: number, fastest: number): number[] {
  const { limits, heat, response } = bit;
  const advance = level[0]?.advance;
  if (advance === undefined || !(advance > 0)) return [];
  const { loads, bit: sums } = drillAtAdvance(bit, advance);
  const speeds: number[] = [];
  if (limits.power !== undefined && sums.torque > 0) speeds.push(limits.power / sums.torque);
  if (limits.rate !== undefined) speeds.push((2 * Math.PI * limits.rate) / advance);
  const hottestAllowed = limits.contactTemperature;
  if (hottestAllowed !== undefined && heat) {
    const excess = (rotarySpeed: number) =>
      largest(contactTemperatures(loads, { response, rotarySpeed, heat })) - hottestAllowed;
    if (excess(slowest) < 0 && excess(fastest) > 0) {
      speeds.push(bracketedRoot({ f: excess, low: slowest, high: fastest, residual: 1e-6 }));
    }
  }
  return speeds;
}

/** Finer speeds about the best one tried, by golden sections over the two gaps beside it. */
function narrowed(
  best: Tried,
  tried: readonly Tried[],
  at: (speed: number) => Tried,
  allowed: (speed: number) => boolean,
): Tried[] {
  const place = tried.indexOf(best);
  let low = tried[Math.max(0, place - 1)].rotarySpeed;
  let high = tried[Math.min(tried.length - 1, place + 1)].rotarySpeed;
  // Across speeds to keep out of there is nothing to narrow; their edges have been tried.
  if (!allowed((low + best.rotarySpeed) / 2)) low = best.rotarySpeed;
  if (!allowed((high + best.rotarySpeed) / 2)) high = best.rotarySpeed;
  if (!(high > low)) return [];
  const looked: Tried[] = [];
  const look = (speed: number) => {
    const run = at(speed);
    if (allowed(speed)) looked.push(run);
    return run.rate;
  };
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [ofLeft, ofRight] = [look(left), look(right)];
  for (let k = 0; k < NARROWING && high - low > SAME_RATE * high; k++) {
    if (ofLeft >= ofRight) {
      high = right;
      [right, ofRight] = [left, ofLeft];
      left = high - GOLDEN * (high - low);
      ofLeft = look(left);
    } else {
      low = left;
      [left, ofLeft] = [right, ofRight];
      right = low + GOLDEN * (high - low);
      ofRight = look(right);
    }
  }
  return looked;
}

function fasterEndsAt(
  speed: number,
  { fastest, fixed }: SpeedRange,
  avoid: readonly SpeedWindow[],
): BestRun["fasterEndsAt"] {
  const top = fixed ? Math.max(...fixed.filter((one) => one <= fastest)) : fastest;
  if (speed >= top * (1 - SAME_RATE)) return "rotary";
  return avoid.some(({ from }) => Math.abs(speed - from) <= SAME_RATE * speed) ? "avoided" : "rate";
}
