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
  const firstPass = new Int32Array(cells + 1);
  for (let k = 0; k < count; k++) firstPass[passes.cell[k] + 1]++;
  for (let cell = 0; cell < cells; cell++) firstPass[cell + 1] += firstPass[cell];
  const order = new Int32Array(count);
  const filled = new Int32Array(cells);
  for (let k = 0; k < count; k++) {
    const cell = passes.cell[k];
    const start = firstPass[cell];
    let at = start + filled[cell];
    filled[cell]++;
    while (at > start && goesFirst(passes, k, order[at - 1])) {
      order[at] = order[at - 1];
      at--;
    }
    order[at] = k;
  }
  const sorted = (row: Float64Array) => {
    const out = new Float64Array(count);
    for (let k = 0; k < count; k++) out[k] = row[order[k]];
    return out;
  };
  const azimuth = sorted(passes.azimuth);
  const slope = sorted(passes.slope);
  return {
    firstPass,
    cutter: Int32Array.from(order, (k) => passes.cutter[k]),
    height: sorted(passes.height),
    azimuth,
    cosAzimuth: azimuth.map(Math.cos),
    sinAzimuth: azimuth.map(Math.sin),
    slope,
    cosSlope: slope.map((tangent) => 1 / Math.sqrt(1 + tangent * tangent)),
    flatLength: sorted(passes.flatLength),
    chamferHeight: sorted(passes.chamferHeight),
    edgeAngle: sorted(passes.edgeAngle),
  };
}

function goesFirst(passes: UnorderedPasses, one: number, other: number): boolean {
  const ahead = passes.azimuth[one] - passes.azimuth[other];
  return ahead !== 0 ? ahead > 0 : passes.height[one] > passes.height[other];
}
