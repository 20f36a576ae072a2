import {
  AGREEING_RATIO,
  type Band,
  band,
  CARE_STRENGTH,
  PRACTICE_SPEED_FIRM,
  PRACTICE_SPEED_SOFT,
  type PracticeRun,
} from "@bitwright/engine";

/** The rule of thumb as the trade means it: a patch of the map, not a point. */
export interface RuleBox {
  /** Weight on bit, pipe weight included [N]. */
  readonly weight: Band;
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed: Band;
}

/**
 * The patch of weight and speed that the rule of thumb covers: its weight, no finer than a quarter either way, at 80 to 100
 * turns a minute, slower where the ground is hard.
 *
 * @source (c) common practice, no source
 */
export function ruleBox(
  { weight, rotarySpeed }: Pick<PracticeRun, "weight" | "rotarySpeed">,
  /** Strength of the bed under the pressure at the bottom [Pa]. */
  confinedStrength: number,
): RuleBox {
  const slowest = Math.min(PRACTICE_SPEED_FIRM, rotarySpeed);
  const fastest = confinedStrength < CARE_STRENGTH ? PRACTICE_SPEED_SOFT : PRACTICE_SPEED_FIRM;
  return {
    weight: band(weight / AGREEING_RATIO, weight, weight * AGREEING_RATIO),
    rotarySpeed: band(slowest, rotarySpeed, Math.max(fastest, rotarySpeed)),
  };
}
