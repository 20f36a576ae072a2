import { COBALT_TABLE_LIMIT, type CoolingFilm, type EdgeWear, traceEdges } from "../cutting/index.ts";
import { bearingPads } from "./bearing-pads.ts";
import type { LifeInput } from "./life-input.ts";
import type { WornBit } from "./state-in-bed.ts";
import { WEAR_COEFFICIENT, WEAR_MULTIPLE_AT_TABLE_LIMIT } from "./wear-law.ts";
import type { WearState } from "./wear-state.ts";

/** How worn a bit is now and was at the start. */
export interface WearSoFar {
  readonly wear: readonly EdgeWear[];
  readonly now: WearState;
  readonly first: WearState;
}

/** A stump still has a rim that the fluid washes [-]. */
const LEAST_WASHED = 0.05;

/**
 * A bit as it is worn: its edges traced, its films and exposure less what wear has taken.
 *
 * @source (d) geometry of the worn edges
 */
export function wornBit(input: LifeInput, { wear, now, first }: WearSoFar): WornBit {
  const { layout, films, exposure, fluidTemperature, cells, kernel } = input;
  const left = (i: number) => 1 - now.wornHeights[i] / layout.cutters[i].faceDiameter;
  const cooled = films?.map(
    ({ coefficient, area }, i): CoolingFilm => ({ coefficient, area: area * Math.max(LEAST_WASHED, left(i)) }),
  );
  const gone = (i: number) => (now.wornHeights[i] - first.wornHeights[i]) * Math.cos(layout.cutters[i].backRake);
  return {
    trace: traceEdges(layout, { wear, ...(cells === undefined ? {} : { cells }) }),
    kernel,
    ...(cooled ? { films: cooled } : {}),
    ...(exposure ? { exposure: exposure.map((height, i) => height - gone(i)) } : {}),
    fluidTemperature,
    tableLimit: input.tableLimit ?? COBALT_TABLE_LIMIT,
    wearCoefficient: input.wearCoefficient ?? WEAR_COEFFICIENT.mid,
    ...(input.gaugePads ? { pads: bearingPads(input.gaugePads, input.padWearMultiple) } : {}),
    multipleAtLimit: input.multipleAtLimit ?? WEAR_MULTIPLE_AT_TABLE_LIMIT.mid,
  };
}
