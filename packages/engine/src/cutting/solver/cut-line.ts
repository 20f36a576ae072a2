import { placedCutter, type StationedFace } from "../../bit/index.ts";
import type { RockResponse } from "../../ground/index.ts";
import { type EdgeResponse, edgeResponse } from "../edge-response.ts";
import type { EdgeTrace } from "../edge-trace.ts";
import { traceEdges } from "../trace-edges.ts";
import type { SolverSetting } from "./solver-setting.ts";

/** One cutter's edge over the radial cells, on a wing at azimuth zero, and what it asks of the rock. */
export interface CutLine
  extends Pick<
    EdgeTrace,
    "height" | "azimuth" | "cosAzimuth" | "sinAzimuth" | "slope" | "cosSlope" | "flatLength" | "chamferHeight"
  > {
  readonly law: EdgeResponse;
  /** Number of the cell of each pass [-]. */
  readonly cell: Int32Array;
}

/** A line for any face of the stock; each is traced once. */
export type CutLines = (face: StationedFace) => CutLine;

/**
 * Lines of faces on a grid of so many cells. A wing that turns moves the azimuth of a line and nothing else, so one trace
 * of a face serves every candidate that it stands in.
 *
 * @source (d) kinematics of a rigid bit that turns and advances evenly
 */
export function cutLines(
  { spec, response }: { readonly spec: SolverSetting["spec"]; readonly response: RockResponse },
  /** Radial cells from the axis to the hole radius [-]. */
  cells: number,
): CutLines {
  const known = new Map<StationedFace, CutLine>();
  return (face) => {
    const before = known.get(face);
    if (before) return before;
    const cutter = placedCutter({ cutter: spec.cutter, pose: face.pose, wing: 1 });
    const trace = traceEdges({ holeDiameter: spec.holeDiameter, cutters: [cutter] }, { cells });
    const cell = new Int32Array(trace.height.length);
    for (let c = 0; c < cells; c++) cell.fill(c, trace.firstPass[c], trace.firstPass[c + 1]);
    const { height, azimuth, cosAzimuth, sinAzimuth, slope, cosSlope, flatLength, chamferHeight } = trace;
    const line = { cell, height, azimuth, cosAzimuth, sinAzimuth, slope, cosSlope, flatLength, chamferHeight };
    const made = { law: edgeResponse(cutter, response), ...line };
    known.set(face, made);
    return made;
  };
}
