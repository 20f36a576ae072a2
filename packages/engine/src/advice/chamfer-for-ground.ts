import { TRADE_CHAMFERS, type TradeChamfer } from "../cutter/index.ts";
import { commonPractice } from "../quantity/index.ts";
import { CARE_STRENGTH } from "./fit-limits.ts";
import type { GroundMix } from "./ground-mix.ts";
import type { Choice, Reason } from "./reason.ts";

/** A bevel of the trade. */
export type ChamferChoice = Pick<TradeChamfer, "angle" | "width">;

/**
 * The bevels of the trade with the width of each, sharpest first.
 *
 * @source (c) common practice, no source
 */
export function tradeBevels(): ChamferChoice[] {
  return TRADE_CHAMFERS.map(({ angle, width }) => ({ angle, width }));
}

/**
 * Confined strength of the hardest bed under which an edge without bevel lasts [Pa].
 *
 * @source (c) common practice, no source: soft ground only
 */
export const SHARP_EDGE_STRENGTH = 10e6;

/**
 * Confined strength of the hardest bed under which the fast 12 degree bevel lasts [Pa].
 *
 * @source (c) common practice, no source
 */
export const FAST_BEVEL_STRENGTH = 45e6;

/**
 * Bevel by the hardest bed, one step blunter where the ground strikes: none in soft ground only, 12 degrees fast, 16
 * the usual balance, 20 tough. Harder ground never gets a sharper edge.
 *
 * @source (c) common practice, no source
 */
export function chamferForGround(mix: GroundMix): Choice<ChamferChoice> {
  const source = commonPractice();
  const strength = mix.hardestStrength;
  const steps = [SHARP_EDGE_STRENGTH, FAST_BEVEL_STRENGTH, CARE_STRENGTH];
  const byStrength = steps.filter((step) => strength >= step).length;
  const struck = mix.impactBeds.length > 0 || mix.unknownGround;
  const at = Math.min(byStrength + (struck ? 1 : 0), TRADE_CHAMFERS.length - 1);
  const bevel = TRADE_CHAMFERS[at];
  const limit = steps[Math.max(0, byStrength - 1)];
  const reasons: Reason[] = [
    {
      sentence: `${mix.hardestBed} is the hardest bed and sets the edge: ${bevel.name}, ${bevel.meaning}.`,
      rule: "bevel by the hardest bed",
      value: strength,
      ...(limit === undefined ? {} : { limit }),
      unit: "Pa",
      source,
    },
  ];
  if (struck) {
    const where = mix.impactBeds.length > 0 ? mix.impactBeds.join(", ") : "ground that nobody knows";
    reasons.push({ sentence: `One step blunter for blows in ${where}.`, rule: "bevel by blows", source });
  }
  return {
    value: { angle: bevel.angle, width: bevel.width },
    reasons,
    alternatives: TRADE_CHAMFERS.filter((each) => each !== bevel).map(({ name, meaning }) => ({
      what: name,
      why: meaning,
    })),
  };
}
