import { type Band, band } from "../quantity/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";
import { CARE_ABRASIVITY } from "./fit-limits.ts";
import { groundKind } from "./ground-kind.ts";

const FOOT_PER_HOUR = 0.3048 / 3600;

/**
 * Confined strength that parts soft from hard limestone in the rule of thumb for the rate [Pa].
 *
 * @source (c) common practice, no source
 */
export const HARD_LIMESTONE_STRENGTH = 60e6;

/**
 * Confined strength up to which sandstone counts as friable in the rule of thumb for the rate [Pa].
 *
 * @source (c) common practice, no source
 */
export const FRIABLE_STRENGTH = 30e6;

function feetPerHour(low: number, high: number): Band {
  return band(low * FOOT_PER_HOUR, Math.sqrt(low * high) * FOOT_PER_HOUR, high * FOOT_PER_HOUR);
}

/**
 * Rate that a PDC bit of about 6 in makes by the experience of the trade [m/s]: shale 60 to 200 ft/h, soft limestone 40 to
 * 120, hard limestone 15 to 50, friable sandstone 60 to 150, hard abrasive sandstone 5 to 25; between those two
 * sandstones 25 to 60 is our reading. Nothing where the trade has no figure.
 *
 * @source (c) common practice, no source
 */
export function practiceRate(bed: AdvisedBed): Band | undefined {
  const strength = bed.confinedStrength.mid;
  switch (groundKind(bed)) {
    case "shale":
      return feetPerHour(60, 200);
    case "carbonate":
      return strength < HARD_LIMESTONE_STRENGTH ? feetPerHour(40, 120) : feetPerHour(15, 50);
    case "sandstone":
      if (strength < FRIABLE_STRENGTH) return feetPerHour(60, 150);
      return bed.abrasivityIndex.mid >= CARE_ABRASIVITY ? feetPerHour(5, 25) : feetPerHour(25, 60);
    default:
      return undefined;
  }
}
