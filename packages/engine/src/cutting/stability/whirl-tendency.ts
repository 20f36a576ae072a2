import { type BitLayout, gapsBetweenWings } from "../../bit/index.ts";
import { commonPractice, type Finding, requireNotNegative } from "../../quantity/index.ts";
import { ACCEPTED_LATERAL_SHARE, GOOD_LATERAL_SHARE } from "../drilling-findings.ts";

/**
 * Hole over bit, on the diameter, above which a bit has room to walk round the hole [m].
 *
 * @source (c) common practice, no source: 1/8 in
 */
export const ROOM_TO_WHIRL = 3.175e-3;

/** Gaps between wings that differ by less than this count as even [rad]: (c) our choice, two degrees. */
const EVEN_WINGS = (2 * Math.PI) / 180;

/** What the tendency to whirl is judged from. */
export interface WhirlJudgement {
  readonly layout: BitLayout;
  /** Side force as a share of the weight [-]. */
  readonly lateralShare: number;
  /** Diameter of the hole as drilled less that of the bit; not judged where not given [m]. */
  readonly gaugeClearance?: number;
}

/**
 * Remarks on whether a bit is likely to whirl: pushed hard to one side, with room to walk, its wings evenly spaced.
 *
 * @throws RangeError when a share or clearance is negative
 * @source (c) common practice, no source
 */
export function whirlFindings({ layout, lateralShare, gaugeClearance = 0 }: WhirlJudgement): Finding[] {
  requireNotNegative({ lateralShare, gaugeClearance });
  const source = commonPractice();
  const findings: Finding[] = [];
  const roomy = gaugeClearance > ROOM_TO_WHIRL;
  if (lateralShare > ACCEPTED_LATERAL_SHARE || (lateralShare > GOOD_LATERAL_SHARE && roomy)) {
    findings.push({
      code: "tends-to-whirl",
      severity: roomy && lateralShare > ACCEPTED_LATERAL_SHARE ? "caution" : "note",
      where: "bit",
      message: roomy
        ? "The cutters push the bit to one side and the hole leaves it room to walk: start slowly with weight on, and look for a hole cut over size."
        : "The cutters push the bit to one side: it walks round the hole as soon as the hole is over size. Start slowly with weight on.",
      value: lateralShare,
      limit: lateralShare > ACCEPTED_LATERAL_SHARE ? ACCEPTED_LATERAL_SHARE : GOOD_LATERAL_SHARE,
      unit: "-",
      source,
    });
  } else if (roomy) {
    findings.push({
      code: "room-to-whirl",
      severity: "note",
      where: "hole",
      message: "The hole is wide enough over the bit for it to walk round, if something pushes it.",
      value: gaugeClearance,
      limit: ROOM_TO_WHIRL,
      unit: "m",
      source,
    });
  }
  const unevenness = wingUnevenness(layout);
  if (unevenness !== undefined && unevenness < EVEN_WINGS) {
    findings.push({
      code: "wings-evenly-spaced",
      severity: "note",
      where: "wings",
      message:
        "The wings are evenly spaced: a whirl, once begun, falls into an even pattern of lobes and feeds itself. Uneven spacing breaks it.",
      value: unevenness,
      limit: EVEN_WINGS,
      unit: "rad",
      source,
    });
  }
  return findings;
}

/** How much the widest gap between the outermost cutters of the wings exceeds the narrowest; undefined under three wings. */
function wingUnevenness({ cutters }: BitLayout): number | undefined {
  const outer = new Map<number, { radius: number; azimuth: number }>();
  for (const cutter of cutters) {
    const known = outer.get(cutter.wing);
    if (cutter.wing > 0 && !(known && known.radius >= cutter.radius)) outer.set(cutter.wing, cutter);
  }
  if (outer.size < 3) return undefined;
  const gaps = gapsBetweenWings([...outer.values()].map(({ azimuth }) => azimuth));
  return Math.max(...gaps) - Math.min(...gaps);
}
