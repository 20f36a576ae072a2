import { requirePositive, runToEnd } from "../../quantity/index.ts";
import { marchSelfExcitation } from "./march.ts";
import type { March, MarchRegime } from "./march-input.ts";
import type { ScaledBit } from "./scaled-bit.ts";

/** Which speeds to try, and how long to march at each. */
export interface SteadySpeedsInput {
  readonly bit: ScaledBit;
  /** Weight held at the top [N]. */
  readonly weight: number;
  /** Slowest speed to try [rad/s]. */
  readonly slowestSpeed: number;
  /** Fastest speed to try [rad/s]. */
  readonly fastestSpeed: number;
  /** How many speeds to try, evenly apart [-]. */
  readonly count?: number;
  /** How long to march at each, in units of t*; long enough for fifty delays where not given [-]. */
  readonly scaledDuration?: number;
  /** ξ, damping of the string's twisting as a share of critical; none where not given [-]. */
  readonly twistDamping?: number;
  /** Asked now and then; when it says so the scan ends with the speeds it has. */
  readonly shouldStop?: () => boolean;
}

/** What became of the bit at one speed. */
export interface SpeedTried {
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed: number;
  readonly regime: MarchRegime;
  /** Share of the time that the bit stands still [-]. */
  readonly stickShare: number;
  /** Share of the time that the whole bit is off bottom [-]. */
  readonly bounceShare: number;
  /** Share of the time that the flats have lost the rock [-]. */
  readonly liftShare: number;
  /** Highest turning speed of the bit over that of the top [-]. */
  readonly fastestRatio: number;
  /** Mean torque [N·m]. */
  readonly meanTorque: number;
}

/** Speeds next to each other that leave the bit steady. */
export interface SteadySpan {
  /** Slowest of them [rad/s]. */
  readonly slowestSpeed: number;
  /** Fastest of them [rad/s]. */
  readonly fastestSpeed: number;
}

/** The speeds tried and those that are safe. */
export interface SteadySpeeds {
  readonly tried: readonly SpeedTried[];
  readonly steady: readonly SteadySpan[];
  /** Whether all speeds were tried to the end. */
  readonly finished: boolean;
}

/** How far a scan has come. */
export interface SpeedsProgress {
  /** Speeds done [-]. */
  readonly done: number;
  /** Speeds to be tried [-]. */
  readonly of: number;
}

const USUAL_COUNT = 16;
/** Least time to march, and least number of delays: growth and decay go by the one or by the other [-]. */
const LEAST_DURATION = 100;
const LEAST_DELAYS = 50;
/** A hundredth off steady drilling at the start: enough for what grows to grow, little enough to count as steady. */
export const SLIGHT_KICK = { axialSpeedRatio: 1.01, turningSpeedRatio: 0.99 } as const;

/**
 * Time after which a march has shown what grows and what decays.
 *
 * max(100, 50 · 2π/(n ω0)): by some fifteen of the string's own swings and by fifty delays.
 *
 * @returns time, in units of t* [-]
 * @source (c) our choice, no source
 * @example
 * marchLongEnough({ wings: 5, scaledSpeed: 0.1 }) // → 628.3185
 */
export function marchLongEnough({
  wings,
  scaledSpeed,
}: {
  /** Wings [-]. */
  readonly wings: number;
  /** ω0 [-]. */
  readonly scaledSpeed: number;
}): number {
  return Math.max(LEAST_DURATION, (LEAST_DELAYS * 2 * Math.PI) / (wings * scaledSpeed));
}

/**
 * Marches the bit at speed after speed and tells which leave it steady.
 *
 * Each march starts a hundredth off steady drilling. A span is steady where every speed tried in it is; what lies between
 * two speeds tried is not known.
 *
 * @throws RangeError when an input is not positive, the speeds do not ascend, or the weight does not get past the contact
 * @source (d) marches of `marchSelfExcitation`
 */
export function steadySpeeds(input: SteadySpeedsInput): SteadySpeeds {
  return runToEnd(steadySpeedsInSteps(input));
}

/**
 * The same a speed at a time, for a caller that has to look after other things between the speeds.
 *
 * @throws RangeError when an input is not positive, the speeds do not ascend, or the weight does not get past the contact
 * @source (d) marches of `marchSelfExcitation`
 */
export function* steadySpeedsInSteps(input: SteadySpeedsInput): Generator<SpeedsProgress, SteadySpeeds, void> {
  const { bit, weight, slowestSpeed, fastestSpeed, shouldStop } = input;
  const { count = USUAL_COUNT, twistDamping = 0 } = input;
  requirePositive({ weight, slowestSpeed, speedRange: fastestSpeed - slowestSpeed, countOverOne: count - 1 });
  const tried: SpeedTried[] = [];
  for (let k = 0; k < count; k++) {
    if (shouldStop?.()) break;
    const rotarySpeed = slowestSpeed + ((fastestSpeed - slowestSpeed) * k) / (count - 1);
    const scaledSpeed = rotarySpeed * bit.timeScale;
    const march = marchSelfExcitation({
      bit,
      scaledWeight: weight / bit.weightScale,
      scaledSpeed,
      twistDamping,
      duration: input.scaledDuration ?? marchLongEnough({ wings: bit.wings, scaledSpeed }),
      start: SLIGHT_KICK,
      samples: 1,
      ...(shouldStop ? { shouldStop } : {}),
    });
    if (!march.finished) break;
    tried.push(speedTried(rotarySpeed, march, bit));
    yield { done: k + 1, of: count };
  }
  return { tried, steady: steadySpans(tried), finished: tried.length === count };
}

function speedTried(rotarySpeed: number, march: March, bit: ScaledBit): SpeedTried {
  const { regime, stickShare, bounceShare, liftShare, fastestRatio } = march;
  const meanTorque = march.meanScaledTorque * bit.torqueScale;
  return { rotarySpeed, regime, stickShare, bounceShare, liftShare, fastestRatio, meanTorque };
}

/** Runs of steady speeds. */
function steadySpans(tried: readonly SpeedTried[]): SteadySpan[] {
  const spans: SteadySpan[] = [];
  let open: SteadySpan | undefined;
  for (const { rotarySpeed, regime } of tried) {
    if (regime === "steady") open = { slowestSpeed: open?.slowestSpeed ?? rotarySpeed, fastestSpeed: rotarySpeed };
    else if (open) {
      spans.push(open);
      open = undefined;
    }
  }
  return open ? [...spans, open] : spans;
}
