import { requireNotNegative, requirePositive } from "../quantity/index.ts";
import { WEAR_POINTS } from "./edge-wear-rates.ts";
import type { LifeInput, LifeLimits } from "./life-input.ts";
import { USUAL_LARGEST_CHANGE } from "./life-limits.ts";

/** Throws, with field and value, where a life is asked for that cannot be reckoned. */
export function requireSound(input: LifeInput, limits: LifeLimits): void {
  const {
    layout,
    beds,
    wear,
    films,
    exposure,
    holes = 1,
    padWearMultiple = 1,
    largestChange = USUAL_LARGEST_CHANGE,
  } = input;
  requirePositive({ holes, largestChange, "number of beds": beds.length, "number of cutters": layout.cutters.length });
  if (!Number.isInteger(holes)) throw new RangeError(`holes must be a whole number, got ${holes}`);
  for (const { name, top, bottom } of beds) requirePositive({ [`thickness of ${name}`]: bottom - top });
  requireNotNegative({ padWearMultiple });
  const { grade, undergauge, rate, temperature } = limits;
  requirePositive({ grade, undergauge, rate, temperature });
  for (const [name, rows] of Object.entries({ wear, films, exposure })) {
    if (rows === undefined || rows.length === layout.cutters.length) continue;
    throw new RangeError(`${name} must have a row for each of ${layout.cutters.length} cutters, got ${rows.length}`);
  }
  wear?.forEach(({ length }, i) => {
    if (length === WEAR_POINTS) return;
    throw new RangeError(`wear of cutter ${i + 1} must have ${WEAR_POINTS} points, got ${length}`);
  });
}
