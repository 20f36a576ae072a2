import { commonPractice } from "../quantity/index.ts";
import { CARE_STRENGTH } from "./fit-limits.ts";
import type { GroundMix } from "./ground-mix.ts";
import type { Alternative, Choice, Reason } from "./reason.ts";

const DEGREE = Math.PI / 180;
const MM = 1e-3;

/** A bevel of the trade. */
export interface ChamferChoice {
  /** Angle from the plane of the diamond face; 0 for a sharp edge [rad]. */
  readonly angle: number;
  /** Width along the face; 0 for a sharp edge [m]. */
  readonly width: number;
}

interface Bevel extends ChamferChoice {
  readonly name: string;
  readonly character: string;
}

/** Sharpest first. */
const BEVELS: readonly Bevel[] = [
  {
    name: "no bevel",
    angle: 0,
    width: 0,
    character: "cuts fastest and chips at the first hard spot: soft ground only",
  },
  {
    name: "12 degree bevel",
    angle: 12 * DEGREE,
    width: 0.25 * MM,
    character: "fast, and chips where the ground strikes",
  },
  {
    name: "16 degree bevel",
    angle: 16 * DEGREE,
    width: 0.4 * MM,
    character: "the usual balance of speed and toughness",
  },
  { name: "20 degree bevel", angle: 20 * DEGREE, width: 0.5 * MM, character: "tough and slower, for harder ground" },
];

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
  const byStrength = [SHARP_EDGE_STRENGTH, FAST_BEVEL_STRENGTH, CARE_STRENGTH].filter(
    (limit) => strength >= limit,
  ).length;
  const struck = mix.impactBeds.length > 0 || mix.unknownGround;
  const at = Math.min(byStrength + (struck ? 1 : 0), BEVELS.length - 1);
  const bevel = BEVELS[at];
  if (!bevel) throw new RangeError(`bevel must be one of the trade's, got number ${at}`);
  const limit = [SHARP_EDGE_STRENGTH, FAST_BEVEL_STRENGTH, CARE_STRENGTH][Math.max(0, byStrength - 1)];
  const reasons: Reason[] = [
    {
      sentence: `${mix.hardestBed} is the hardest bed and sets the edge: ${bevel.name}, ${bevel.character}.`,
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
    alternatives: BEVELS.filter((each) => each !== bevel).map(
      (each): Alternative => ({
        what: each.name,
        why: each.character,
      }),
    ),
  };
}
