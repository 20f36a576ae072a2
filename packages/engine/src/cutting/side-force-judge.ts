import type { BitLayout } from "../bit/index.ts";
import type { RockResponse } from "../ground/index.ts";
import type { CuttingKernel } from "./cutting-kernel.ts";
import { drillAtAdvance } from "./drilled-state.ts";
import { traceEdges } from "./trace-edges.ts";
import { usualRock } from "./usual-rock.ts";

/** Cells of the coarse grid that candidates are rated on [-]; side force moves by less than 1 % of itself with more. */
const CELLS = 240;

/** Advance to rate at, of ordinary drilling [m]. */
const JUDGED_ADVANCE = 3e-3;

/**
 * Rates layouts by the side force of their summed cutters as a share of the weight, for choosing among candidates.
 *
 * @source (d) statics of the summed cutter forces
 */
export function sideForceJudge({
  response = usualRock(),
  advance = JUDGED_ADVANCE,
  kernel,
}: {
  readonly response?: RockResponse;
  /** Advance per revolution to rate at; that of ordinary drilling where not given [m]. */
  readonly advance?: number;
  /** What runs the loops; the plain kernel where none is named. No figure depends on it. */
  readonly kernel?: CuttingKernel | undefined;
} = {}): (layout: BitLayout) => number {
  return (layout) =>
    drillAtAdvance({ trace: traceEdges(layout, { cells: CELLS }), response, kernel }, advance).bit.lateralShare;
}
