import type { BitLayout } from "../bit/index.ts";
import { type RockResponse, rockById, rockResponse } from "../ground/index.ts";
import { exactBand } from "../quantity/index.ts";
import { drillAtAdvance } from "./drilled-state.ts";
import { traceEdges } from "./trace-edges.ts";

/** Cells of the coarse grid that candidates are rated on [-]; side force moves by less than 1 % of itself with more. */
const CELLS = 240;

/** Shale of 30 MPa: the share of the weight hardly depends on the rock [Pa]. */
const JUDGED_STRENGTH = 30e6;
/** Advance to rate at, of ordinary drilling [m]. */
const JUDGED_ADVANCE = 3e-3;

/**
 * Rates layouts by the side force of their summed cutters as a share of the weight, for choosing among candidates.
 *
 * @source (d) statics of the summed cutter forces
 */
export function sideForceJudge({
  response = rockResponse({ rock: rockById("shale"), confinedStrength: exactBand(JUDGED_STRENGTH) }).mid,
  advance = JUDGED_ADVANCE,
}: {
  readonly response?: RockResponse;
  /** Advance per revolution to rate at; that of ordinary drilling where not given [m]. */
  readonly advance?: number;
} = {}): (layout: BitLayout) => number {
  return (layout) =>
    drillAtAdvance({ trace: traceEdges(layout, { cells: CELLS }), response }, advance).bit.lateralShare;
}
