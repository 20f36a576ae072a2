import { commonPractice, readIn } from "../quantity/index.ts";
import type { GroundMix } from "./ground-mix.ts";
import type { Choice, Reason } from "./reason.ts";
import { LARGE_HOLE, SOFT_WINGS_STRENGTH } from "./wings-for-ground.ts";

/** Shapes of the profile that suit these sizes. */
export type AdvisedProfile = "flat" | "medium parabolic" | "short parabolic";

/**
 * Profile by ground and hole: flat for soft ground in small and middling holes, short parabolic as the usual bit, medium
 * parabolic in large holes through firm ground, where it seats more cutters at the shoulder.
 *
 * @source (c) common practice, no source
 */
export function profileForGround({
  holeDiameter,
  mix,
}: {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  readonly mix: GroundMix;
}): Choice<AdvisedProfile> {
  const source = commonPractice();
  const struck = mix.impactBeds.length > 0;
  const soft = mix.hardestStrength < SOFT_WINGS_STRENGTH && !struck && !mix.unknownGround;
  const value: AdvisedProfile =
    soft && holeDiameter < LARGE_HOLE
      ? "flat"
      : holeDiameter >= LARGE_HOLE && !soft && !struck
        ? "medium parabolic"
        : "short parabolic";
  const reasons: Readonly<Record<AdvisedProfile, Reason>> = {
    flat: {
      sentence: "All the ground is soft: a flat face is quick to make and cuts it whole.",
      rule: "profile by ground",
      value: mix.hardestStrength,
      limit: SOFT_WINGS_STRENGTH,
      unit: "Pa",
      source,
    },
    "short parabolic": {
      sentence: "A short rounded nose runs smoother than a wing-style face and keeps the outer cutters eased.",
      rule: "profile by ground",
      source: readIn(
        "trade-magazine column: wing-style bodies can lose blades in rough ground, round-nosed ones run smoother",
      ),
    },
    "medium parabolic": {
      sentence: "A large hole in firm ground: a longer shoulder seats more cutters where the work is.",
      rule: "profile by hole",
      value: holeDiameter,
      limit: LARGE_HOLE,
      unit: "m",
      source,
    },
  };
  const others: Readonly<Record<AdvisedProfile, string>> = {
    flat: "quick to make; the outer edge takes the blows in rock",
    "short parabolic": "the usual shape where ground changes",
    "medium parabolic": "more cutters at the shoulder, for large holes in firm ground",
  };
  return {
    value,
    reasons: [reasons[value]],
    alternatives: (Object.keys(others) as AdvisedProfile[])
      .filter((each) => each !== value)
      .map((each) => ({ what: each, why: others[each] })),
  };
}
