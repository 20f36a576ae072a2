import { commonPractice, readIn } from "../quantity/index.ts";
import { COUNTING_SHARE, type GroundMix } from "./ground-mix.ts";
import type { Choice, Reason } from "./reason.ts";

/** What the body is made of. */
export type BodyMaterial = "matrix" | "steel";

/**
 * Share of abrasive footage from which a matrix body is taken over steel [-].
 *
 * @source (c) common practice, no source
 */
export const MATRIX_SHARE = 2 * COUNTING_SHARE;

/**
 * Body by ground: steel for toughness and repair, matrix where most of the footage erodes and nothing strikes.
 *
 * @source (c) common practice, no source
 */
export function bodyForGround(mix: GroundMix): Choice<BodyMaterial> {
  const source = commonPractice();
  const abrasive = mix.abrasiveShare >= MATRIX_SHARE;
  const struck = mix.impactBeds.length > 0;
  const value: BodyMaterial = abrasive && !struck ? "matrix" : "steel";
  const reasons: Reason[] = [];
  if (value === "matrix") {
    reasons.push({
      sentence:
        "Abrasive ground over most of the footage: a sound matrix outlasts steel between the wings and at the ports.",
      rule: "body by ground",
      value: mix.abrasiveShare,
      limit: MATRIX_SHARE,
      unit: "-",
      source,
    });
  } else {
    reasons.push({
      sentence: "Steel is tough, is made on a mill and can be welded and built up again.",
      rule: "body by ground",
      value: mix.abrasiveShare,
      limit: MATRIX_SHARE,
      unit: "-",
      source,
    });
  }
  if (struck) {
    reasons.push({
      sentence: `Blows in ${mix.impactBeds.join(", ")} can break a brittle wing off; round the nose and keep the wings low.`,
      rule: "body by blows",
      source: readIn(
        "trade-magazine column: wing-style bodies can lose blades in rough ground, round-nosed ones run smoother",
      ),
    });
  }
  if (value === "steel" && mix.abrasiveShare >= COUNTING_SHARE) {
    reasons.push({
      sentence: "Hardface the wings and round the ports: some of this ground erodes steel.",
      rule: "hardfacing",
      value: mix.abrasiveShare,
      limit: COUNTING_SHARE,
      unit: "-",
      source,
    });
  }
  return {
    value,
    reasons,
    alternatives:
      value === "steel"
        ? [
            {
              what: "matrix",
              why: "resists erosion, but is brittle and dearer; low-grade matrix erodes and sheds wings",
            },
          ]
        : [{ what: "steel", why: "tougher and easier to build up, but erodes in this ground" }],
  };
}
