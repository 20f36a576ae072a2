import { type Band, band } from "../quantity/index.ts";
import type { GroundModifier } from "./driller-lexicon.ts";
import type { Rock } from "./rock.ts";

/** A rock and what the log says of its state. */
export interface RockInState {
  readonly rock: Pick<Rock, "ucs" | "family">;
  readonly modifiers: readonly GroundModifier[];
}

/**
 * Strength left in weathered rock, low, middle and high, over that of the fresh rock [-].
 *
 * @source (c) estimate, no source
 */
export const WEATHERED_SHARE: Band = band(0.3, 0.5, 0.8);

/**
 * Strength left in rock decomposed to gruss or clay, over that of the fresh rock [-].
 *
 * @source (c) estimate, no source
 */
export const DECOMPOSED_SHARE: Band = band(0.01, 0.05, 0.2);

/**
 * Unconfined strength of sand or gravel that drillers call cemented [Pa].
 *
 * @source (c) estimate, no source
 */
export const CEMENTED_SOIL_STRENGTH: Band = band(0.5e6, 3e6, 15e6);

/**
 * Unconfined strength of the rock table narrowed or moved by what the log says of the state of the bed.
 *
 * Hard takes the upper half of the band, soft the lower (halves by ratio); weathered and decomposed take a share;
 * cemented sand or gravel has a band of its own, dense and loose count as hard and soft in soil only. Words that
 * contradict each other cancel. Broken, water-bearing, sticky change nothing: the pieces are as strong as before.
 *
 * @source (c) estimate, no source
 * @example
 * strengthInState({ rock: rockById("shale"), modifiers: ["hard"] }).low // → 3e7
 */
export function strengthInState({ rock, modifiers }: RockInState): Band {
  const says = (modifier: GroundModifier) => modifiers.includes(modifier);
  const isSoil = rock.family === "soil";
  if (isSoil && says("cemented")) return CEMENTED_SOIL_STRENGTH;
  const hard = says("hard") || says("cemented") || (isSoil && says("dense"));
  const soft = says("soft") || (isSoil && says("loose"));
  const placed = hard === soft ? rock.ucs : hard ? upperHalf(rock.ucs) : lowerHalf(rock.ucs);
  if (isSoil) return placed;
  if (says("decomposed")) return shareOf(rock.ucs, DECOMPOSED_SHARE);
  return says("weathered") ? shareOf(placed, WEATHERED_SHARE) : placed;
}

const upperHalf = ({ mid, high }: Band): Band => band(mid, Math.sqrt(mid * high), high);
const lowerHalf = ({ low, mid }: Band): Band => band(low, Math.sqrt(low * mid), mid);
const shareOf = (of: Band, share: Band): Band => ({
  low: of.low * share.low,
  mid: of.mid * share.mid,
  high: of.high * share.high,
});
