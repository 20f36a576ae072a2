import { largest } from "../quantity/index.ts";
import type { LifeLimits } from "./life-input.ts";
import type { LifeEnd } from "./life-step.ts";
import type { StateInBed } from "./state-in-bed.ts";
import type { WearState } from "./wear-state.ts";

/** What ends the life before the bit goes on in a bed. */
export function endBefore({ rate, binds, temperatures }: StateInBed, limits: LifeLimits): LifeEnd | undefined {
  const hottest = largest(temperatures);
  if (hottest > limits.temperature) {
    const cutter = temperatures.indexOf(hottest) + 1;
    return { by: "heat", value: hottest, limit: limits.temperature, unit: "K", cutter };
  }
  if (rate < limits.rate) return { by: "rate", value: rate, limit: limits.rate, unit: "m/s", binds };
  return undefined;
}

/** What ends the life within a stretch, and at which share of it. */
export function endWithin(
  before: WearState,
  after: WearState,
  limits: LifeLimits,
): { share: number; end: LifeEnd } | undefined {
  const watched = [
    { by: "gauge", limit: limits.undergauge, unit: "m", of: ({ undergauge }: WearState) => undergauge },
    { by: "outer grade", limit: limits.grade, unit: "-", of: ({ outerGrade }: WearState) => outerGrade },
    { by: "inner grade", limit: limits.grade, unit: "-", of: ({ innerGrade }: WearState) => innerGrade },
  ] as const;
  let first: { share: number; end: LifeEnd } | undefined;
  for (const { by, limit, unit, of } of watched) {
    if (of(after) < limit) continue;
    const share = of(before) >= limit ? 0 : (limit - of(before)) / (of(after) - of(before));
    if (!first || share < first.share) first = { share, end: { by, value: limit, limit, unit } };
  }
  return first;
}
