import type { EdgeTrace } from "./edge-trace.ts";

/** Passes as they were laid, cutter after cutter. */
export interface UnorderedPasses {
  /** How many of the rows are filled [-]. */
  count: number;
  readonly cell: Int32Array;
  readonly cutter: Int32Array;
  /** [m] */
  readonly height: Float64Array;
  /** [rad] */
  readonly azimuth: Float64Array;
  /** [-] */
  readonly slope: Float64Array;
  /** [m] */
  readonly flatLength: Float64Array;
  /** [m] */
  readonly chamferHeight: Float64Array;
  /** [rad] */
  readonly edgeAngle: Float64Array;
}

type OrderedPasses = Omit<EdgeTrace, "layout" | "holeRadius" | "cellWidth" | "cellRadius" | "overreach">;

/**
 * Sorts passes cell by cell in the order in which they go by a fixed half-plane: the larger azimuth leads. Of two
 * points at one azimuth the deeper goes first and takes all, as it would if they were one edge.
 *
 * @source (d) kinematics of a rigid bit that turns and advances evenly
 */
export function orderPasses(passes: UnorderedPasses, cells: number): OrderedPasses {
  const { count } = passes;
  const firstPass = firstPassOfCells(passes, cells);
  const order = passingOrder(passes, firstPass);
  const row = () => new Float64Array(count);
  const ordered = {
    firstPass,
    cutter: new Int32Array(count),
    height: row(),
    azimuth: row(),
    cosAzimuth: row(),
    sinAzimuth: row(),
    slope: row(),
    cosSlope: row(),
    flatLength: row(),
    chamferHeight: row(),
    edgeAngle: row(),
  };
  for (let k = 0; k < count; k++) {
    const from = order[k];
    const azimuth = passes.azimuth[from];
    const slope = passes.slope[from];
    ordered.cutter[k] = passes.cutter[from];
    ordered.height[k] = passes.height[from];
    ordered.azimuth[k] = azimuth;
    ordered.cosAzimuth[k] = Math.cos(azimuth);
    ordered.sinAzimuth[k] = Math.sin(azimuth);
    ordered.slope[k] = slope;
    ordered.cosSlope[k] = 1 / Math.sqrt(1 + slope * slope);
    ordered.flatLength[k] = passes.flatLength[from];
    ordered.chamferHeight[k] = passes.chamferHeight[from];
    ordered.edgeAngle[k] = passes.edgeAngle[from];
  }
  return ordered;
}

function firstPassOfCells({ count, cell }: UnorderedPasses, cells: number): Int32Array {
  const firstPass = new Int32Array(cells + 1);
  for (let k = 0; k < count; k++) firstPass[cell[k] + 1]++;
  for (let c = 0; c < cells; c++) firstPass[c + 1] += firstPass[c];
  return firstPass;
}

/** The row of each pass among the unordered ones; a cell holds few, so each is put in its place as it comes. */
function passingOrder(passes: UnorderedPasses, firstPass: Int32Array): Int32Array {
  const { count, cell } = passes;
  const order = new Int32Array(count);
  const end = firstPass.slice();
  for (let k = 0; k < count; k++) {
    const start = firstPass[cell[k]];
    let at = end[cell[k]]++;
    while (at > start && goesFirst(passes, k, order[at - 1])) {
      order[at] = order[at - 1];
      at--;
    }
    order[at] = k;
  }
  return order;
}

function goesFirst({ azimuth, height }: UnorderedPasses, one: number, other: number): boolean {
  const ahead = azimuth[one] - azimuth[other];
  return ahead !== 0 ? ahead > 0 : height[one] > height[other];
}
