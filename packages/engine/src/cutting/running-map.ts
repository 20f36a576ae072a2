import { requirePositive } from "../quantity/index.ts";
import { rateOfPenetration } from "./advance.ts";
import { drillAtWeight } from "./drilled-state.ts";
import type { RateLimitName } from "./largest-rate.ts";
import { type BestRun, bestRun, type SpeedRange, type SpeedWindow } from "./running-map-best.ts";
import { type AdvanceRung, advanceLadder } from "./running-map-ladder.ts";
import { limitsPassed } from "./running-map-limits.ts";
import { type LimitedBit, type LimitLine, limitLines, type RunningMapPoint } from "./running-map-lines.ts";

/** What a map of weight against speed is made for. */
export interface RunningMapInput extends LimitedBit {
  readonly rotary: SpeedRange;
  /** Speeds to draw the map over, ascending; they may pass what the rotary turns [rad/s]. */
  readonly rotarySpeeds: readonly number[];
  /** Weight up to which to draw it [N]. */
  readonly mostWeight: number;
  /** Speeds to keep out of. */
  readonly avoid?: readonly SpeedWindow[];
  /** Temperatures of the hottest edge to draw beside the limit, where heat conditions are given [K]. */
  readonly heatMarks?: readonly number[];
  /** The best point where the caller already has it. */
  readonly best?: BestRun | undefined;
}

/** Where the hottest edge reaches a temperature that is no limit of the map but worth a line. */
export interface HeatLine {
  /** Temperature of the hottest rubbing surface along the line [K]. */
  readonly contactTemperature: number;
  readonly points: readonly RunningMapPoint[];
}

/** What a bit does in one rock over weight and speed. */
export interface RunningMap {
  readonly rotary: SpeedRange;
  /** Speeds it was made for [rad/s]. */
  readonly rotarySpeeds: readonly number[];
  /** Weight up to which it was made [N]. */
  readonly mostWeight: number;
  readonly avoid: readonly SpeedWindow[];
  readonly ladder: readonly AdvanceRung[];
  readonly lines: readonly LimitLine[];
  readonly heatLines: readonly HeatLine[];
  /** The best point inside all limits; absent where the rotary has no speed outside those to keep out of. */
  readonly best?: BestRun;
}

/**
 * The map of weight against speed of a bit in a rock: rate everywhere, where each limit binds, and the best point.
 *
 * In the cutting law weight and torque follow from the advance per turn alone, so a map needs one ladder of advances and not a
 * grid: the rate at a point is its advance times its speed, and the limits on weight, torque, advance and exposure are level
 * lines solved once. Power, cleaning and heat are solved speed by speed.
 *
 * @throws RangeError when there is no speed, or a weight, speed or limit is not positive
 * @source (d) see `largestRate` and `bestRun`
 */
export function runningMap(input: RunningMapInput): RunningMap {
  const { trace, response, kernel, limits, heat, rotary, rotarySpeeds, mostWeight, avoid = [], heatMarks = [] } = input;
  const bit: LimitedBit = { trace, response, kernel, limits, ...(heat ? { heat } : {}) };
  const best = input.best ?? bestRun(bit, rotary, avoid);
  const heatLines = heat
    ? heatMarks.flatMap((contactTemperature): HeatLine[] =>
        limitLines({ ...bit, limits: { contactTemperature } }, rotarySpeeds).map(({ points }) => ({
          contactTemperature,
          points,
        })),
      )
    : [];
  return {
    rotary,
    rotarySpeeds,
    mostWeight,
    avoid,
    ladder: advanceLadder(bit, mostWeight),
    lines: limitLines(bit, rotarySpeeds),
    heatLines,
    ...(best ? { best } : {}),
  };
}

/** One point of a table of weight against speed. */
export interface RunningCell extends RunningMapPoint {
  /** Torque at the bit [N·m]. */
  readonly torque: number;
  /** The limits it passes; none where the bit may run so. */
  readonly passes: readonly RateLimitName[];
}

/**
 * A table of rates over weights and speeds, with the limits that each point passes.
 *
 * Each weight is solved once for its advance and serves every speed.
 *
 * @throws RangeError when a weight or a speed is not positive
 * @source (d) see `drillAtWeight`
 */
export function runningTable(
  bit: LimitedBit,
  {
    weights,
    rotarySpeeds,
  }: {
    /** Weights on bit [N]. */
    readonly weights: readonly number[];
    /** Speeds [rad/s]. */
    readonly rotarySpeeds: readonly number[];
  },
): RunningCell[] {
  for (const [weight, rotarySpeed] of [...weights.map((w) => [w, 1]), ...rotarySpeeds.map((s) => [1, s])]) {
    requirePositive({ weight, rotarySpeed });
  }
  return weights.flatMap((weight) => {
    const state = drillAtWeight(bit, weight);
    const { advance } = state;
    return rotarySpeeds.map((rotarySpeed) => ({
      rotarySpeed,
      weight,
      advance,
      rate: rateOfPenetration({ advance, rotarySpeed }),
      torque: state.bit.torque,
      passes: limitsPassed({ ...bit, state, rotarySpeed }),
    }));
  });
}
