import { type EdgeSamples, turnOf } from "./edge-samples.ts";

/** One cutter's own line over the cells it covers, on one side of the bit axis. */
export interface EdgeSheet {
  /** First cell it lies over; past the last one where it lies over none [-]. */
  first: number;
  /** Last cell it lies over [-]. */
  last: number;
  /** Height of the edge at the middle of each cell, positive down-hole; `LIES_OVER_NONE` where it lies over none [m]. */
  readonly height: Float64Array;
  /** The sample before that point of the edge [-]. */
  readonly sample: Int32Array;
  /** How far that point stands on the way to the next sample [-]. */
  readonly share: Float64Array;
}

/**
 * Height of a sheet where it lies over no cell: higher up-hole than anything [m].
 *
 * @source (d) bookkeeping, no relation
 */
export const LIES_OVER_NONE = Number.NEGATIVE_INFINITY;

const QUARTER_TURN = Math.PI / 2;

/**
 * A sheet that lies over no cell yet.
 *
 * @source (d) bookkeeping, no relation
 */
export function emptySheet(cells: number): EdgeSheet {
  return {
    first: cells,
    last: -1,
    height: new Float64Array(cells).fill(LIES_OVER_NONE),
    sample: new Int32Array(cells),
    share: new Float64Array(cells),
  };
}

/** The two sides of the bit axis on which one cutter may reach a radius. */
export interface EdgeSheets {
  /** The side of the face centre. */
  readonly near: EdgeSheet;
  /** The side beyond the axis. */
  readonly acrossAxis: EdgeSheet;
}

/**
 * Lays the deepest points of one cutter over the cells, in place of what lay there before.
 *
 * @returns the largest radius that the disc reaches [m]
 * @source (d) the edge between two samples taken as straight, read off at the middle of each cell
 */
export function layEdge(samples: EdgeSamples, { near, acrossAxis }: EdgeSheets, cellWidth: number): number {
  const { x, radius, height } = samples;
  const lastCell = near.height.length - 1;
  clear(near);
  clear(acrossAxis);
  let farthest = 0;
  for (let k = 0; k + 1 < radius.length; k++) {
    const r0 = radius[k];
    const r1 = radius[k + 1];
    if (r1 > farthest) farthest = r1;
    const inner = Math.min(r0, r1);
    const outer = Math.max(r0, r1);
    const from = Math.max(0, Math.ceil(inner / cellWidth - 0.5));
    const to = Math.min(lastCell, Math.floor(outer / cellWidth - 0.5));
    for (let cell = from; cell <= to; cell++) {
      const share = r1 === r0 ? 0 : ((cell + 0.5) * cellWidth - r0) / (r1 - r0);
      const beyond = x[k] < 0 && x[k + 1] < 0;
      const before = x[k] > 0 && x[k + 1] > 0;
      const sheet = beyond || (!before && Math.abs(turnBetween(samples, k, share)) > QUARTER_TURN) ? acrossAxis : near;
      const z = height[k] + share * (height[k + 1] - height[k]);
      if (z <= sheet.height[cell]) continue;
      sheet.height[cell] = z;
      sheet.sample[cell] = k;
      sheet.share[cell] = share;
      if (cell < sheet.first) sheet.first = cell;
      if (cell > sheet.last) sheet.last = cell;
    }
  }
  return farthest;
}

function clear(sheet: EdgeSheet): void {
  sheet.height.fill(LIES_OVER_NONE, sheet.first, sheet.last + 1);
  sheet.first = sheet.height.length;
  sheet.last = -1;
}

/**
 * Azimuth ahead of the face centre, part-way from one sample to the next and taken the short way round.
 *
 * @returns azimuth [rad]
 * @source (d) geometry
 */
export function turnBetween(samples: EdgeSamples, sample: number, share: number): number {
  const from = turnOf(samples, sample);
  const step = turnOf(samples, sample + 1) - from;
  const short = step > Math.PI ? step - 2 * Math.PI : step < -Math.PI ? step + 2 * Math.PI : step;
  return from + share * short;
}
