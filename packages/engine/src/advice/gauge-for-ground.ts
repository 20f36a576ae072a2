import { commonPractice, INCH } from "../quantity/index.ts";
import { COUNTING_SHARE, type GroundMix } from "./ground-mix.ts";
import type { Choice } from "./reason.ts";
import { LARGE_HOLE, SMALL_HOLE } from "./wings-for-ground.ts";

/** How the bit holds its diameter. */
export interface GaugeChoice {
  /** Length of the gauge pads [m]. */
  readonly padLength: number;
  readonly protection: "carbide" | "diamond" | "hardfacing";
}

/**
 * Length of the gauge pads by hole, where nothing asks for more [m].
 *
 * @source (c) common practice, no source: 1/2 to 1 in on small bits
 */
const PAD_LENGTHS = { small: 0.5 * INCH, usual: 0.75 * INCH, long: INCH } as const;

/**
 * Gauge by ground: half an inch to an inch of pad, hardfaced, set with carbide where the wall wears it, with diamond
 * where most of the footage does.
 *
 * @source (c) common practice, no source
 */
export function gaugeForGround({
  holeDiameter,
  mix,
}: {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  readonly mix: GroundMix;
}): Choice<GaugeChoice> {
  const source = commonPractice();
  const worn = mix.wearingShare >= COUNTING_SHARE;
  const much = mix.abrasiveShare >= 2 * COUNTING_SHARE;
  const long = worn || mix.impactBeds.length > 0 || holeDiameter >= LARGE_HOLE;
  const padLength = long ? PAD_LENGTHS.long : holeDiameter <= SMALL_HOLE ? PAD_LENGTHS.small : PAD_LENGTHS.usual;
  const protection = much ? "diamond" : worn ? "carbide" : "hardfacing";
  return {
    value: { padLength, protection },
    reasons: [
      {
        sentence: long
          ? "A long pad steadies the bit and holds the diameter where the ground wears, strikes or the hole is large."
          : "Half to three quarters of an inch of pad holds the diameter and leaves the bit free to turn.",
        rule: "gauge length",
        value: padLength,
        unit: "m",
        source,
      },
      {
        sentence: worn
          ? `Abrasive ground wears the pads: protect them with ${protection}.`
          : "Little of the ground wears the pads: hardfacing is enough.",
        rule: "gauge protection",
        value: mix.wearingShare,
        limit: COUNTING_SHARE,
        unit: "-",
        source,
      },
    ],
    alternatives: [
      { what: "longer pads", why: "steadier; more drag on the wall, and slower to ream out of a tight hole" },
      { what: "shorter pads", why: "freer in swelling ground; the hole comes out undersized sooner" },
    ],
  };
}
