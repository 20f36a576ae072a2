import { commonPractice } from "../quantity/index.ts";
import { CARE_STRENGTH } from "./fit-limits.ts";
import { COUNTING_SHARE, type GroundMix } from "./ground-mix.ts";
import type { Choice, Reason } from "./reason.ts";

/** What decides on leached diamond: the ground, and the fluid because gas carries little heat off. */
export interface LeachedInput {
  readonly mix: GroundMix;
  /** Whether the fluid is air, mist or foam. */
  readonly gas: boolean;
}

/**
 * Leached diamond where the edge runs hot: abrasive or hard ground, or a fluid that cools poorly.
 *
 * @source (c) common practice, no source: leached diamond lasts longer; heat marks after Glowka & Stone 1986, recalled
 */
export function leachedForGround({ mix, gas }: LeachedInput): Choice<boolean> {
  const source = commonPractice();
  const causes: Reason[] = [];
  if (mix.wearingShare >= COUNTING_SHARE) {
    causes.push({
      sentence: "A good part of the footage wears the cutters: leached diamond keeps its edge longer.",
      rule: "leached diamond",
      value: mix.wearingShare,
      limit: COUNTING_SHARE,
      unit: "-",
      source,
    });
  }
  if (mix.hardestStrength >= CARE_STRENGTH) {
    causes.push({
      sentence: `${mix.hardestBed} makes the flats run hot: leached diamond stands the heat.`,
      rule: "leached diamond",
      value: mix.hardestStrength,
      limit: CARE_STRENGTH,
      unit: "Pa",
      source,
    });
  }
  if (gas) {
    causes.push({
      sentence: "Air, mist and foam carry little heat off the cutters: leached diamond stands it longer.",
      rule: "leached diamond",
      source,
    });
  }
  if (causes.length > 0) {
    return {
      value: true,
      reasons: causes,
      alternatives: [{ what: "ordinary diamond", why: "cheaper; dulls sooner once the edge runs hot" }],
    };
  }
  return {
    value: false,
    reasons: [
      {
        sentence: "Neither hard nor abrasive enough, and cooled well enough, to earn the price of leached diamond.",
        rule: "leached diamond",
        value: mix.hardestStrength,
        limit: CARE_STRENGTH,
        unit: "Pa",
        source,
      },
    ],
    alternatives: [{ what: "leached diamond", why: "lasts longer in any ground; worth it where the price is near" }],
  };
}
