import { requireNotNegative } from "../quantity/index.ts";
import type { EdgeTrace } from "./edge-trace.ts";

/** What each pass and each cutter takes off the rock in one revolution of steady drilling. */
export interface Engagement {
  /** Advance per revolution [m]. */
  advance: number;
  /** Depth taken along the bit axis, for each pass of the trace [m]. */
  readonly depth: Float64Array;
  /** Area of cut across travel, for each cutter [m²]. */
  readonly area: Float64Array;
  /** Rock volume of one revolution, for each cutter [m³]. */
  readonly volume: Float64Array;
}

/**
 * Room for the result of `engage`, to be used again and again on one trace.
 *
 * @source (d) bookkeeping, no relation
 */
export function emptyEngagement(trace: EdgeTrace): Engagement {
  const cutters = trace.layout.cutters.length;
  return {
    advance: 0,
    depth: new Float64Array(trace.height.length),
    area: new Float64Array(cutters),
    volume: new Float64Array(cutters),
  };
}

/**
 * Shares the rock out among the cutters for one advance per revolution.
 *
 * In a fixed half-plane of the hole, an edge point at azimuth a and height ζ passes at depth f = ζ - d a/2π, and each
 * revolution adds d. Just before a point passes, the rock stands at the deepest of those that went by before it in this
 * revolution and of all of the revolution before: S = max(max f of larger azimuth, max f - d). It takes h = max(0, f - S).
 * At every radius the depths add up to d, so the volumes add up to that of the hole wherever it is covered, on any grid.
 *
 * Nothing is allocated when `into` is given: this is the innermost loop of every solution.
 *
 * @throws RangeError when the advance is negative or not finite
 * @source (d) kinematics of a rigid bit that turns and advances evenly; the rock keeps its shape between passes
 */
export function engage(trace: EdgeTrace, advance: number, into: Engagement = emptyEngagement(trace)): Engagement {
  requireNotNegative({ advance });
  const { firstPass, cutter, height, azimuth, cellRadius, cellWidth } = trace;
  const { depth, area, volume } = into;
  const perRadian = advance / (2 * Math.PI);
  const cells = cellRadius.length;
  area.fill(0);
  volume.fill(0);
  for (let cell = 0; cell < cells; cell++) {
    const from = firstPass[cell];
    const to = firstPass[cell + 1];
    let deepest = Number.NEGATIVE_INFINITY;
    for (let k = from; k < to; k++) {
      const passing = height[k] - perRadian * azimuth[k];
      depth[k] = passing;
      if (passing > deepest) deepest = passing;
    }
    const ringPerDepth = 2 * Math.PI * cellRadius[cell] * cellWidth;
    let surface = deepest - advance;
    for (let k = from; k < to; k++) {
      const taken = depth[k] - surface;
      if (taken > 0) {
        const by = cutter[k];
        depth[k] = taken;
        surface += taken;
        area[by] += taken * cellWidth;
        volume[by] += taken * ringPerDepth;
      } else {
        depth[k] = 0;
      }
    }
  }
  into.advance = advance;
  return into;
}
