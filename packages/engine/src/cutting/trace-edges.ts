import type { BitLayout, PlacedCutter } from "../bit/index.ts";
import { wrapped } from "../geometry/index.ts";
import { requireFinite, requireNotNegative, requirePositive } from "../quantity/index.ts";
import { contactShapeOf } from "./contact-shape.ts";
import {
  type CircleTable,
  circleTable,
  type EdgeSamples,
  type EdgeWear,
  edgeSamples,
  emptyEdgeSamples,
} from "./edge-samples.ts";
import { type EdgeSheet, type EdgeSheets, emptySheet, LIES_OVER_NONE, layEdge, turnBetween } from "./edge-sheet.ts";
import type { EdgeTrace } from "./edge-trace.ts";
import { orderPasses, type UnorderedPasses } from "./order-passes.ts";

/** How finely a trace is taken. */
export interface TraceGrid {
  /** Number of radial cells from the axis to the hole radius; default one for each 0.1 mm [-]. */
  readonly cells?: number;
  /** How each cutter is worn, point by point, in the order of the layout; takes the place of every worn height. */
  readonly wear?: readonly EdgeWear[];
}

/**
 * Width of a radial cell where the caller names none [m].
 *
 * @source (d) from the convergence of the shares of the cut, see docs/guide/checks.md
 */
export const USUAL_CELL_WIDTH = 1e-4;

const FEWEST_CELLS = 16;
const FEWEST_SAMPLES = 64;

/**
 * Lays every cutter's edge on a radial grid.
 *
 * The whole circle of each tilted face is sampled at about the cell width and read off at the middle of each cell. Of
 * the upper and the lower half of a circle the deeper point stands for the cutter; a cutter that reaches across the axis
 * goes by the same radius on both sides of it and makes two passes. What reaches past the hole radius is taken as
 * ground off to gauge and reported as `overreach`. The order of passing goes by the azimuth of the edge points
 * themselves, not of the face centres: a tilted face reaches a radius a little before or after its centre, and only so
 * do the shares of the cut add up when two cutters stand at nearly one azimuth.
 *
 * @throws RangeError when the hole diameter, a face diameter or the number of cells is not sound
 * @source (d) kinematics of a rigid bit that turns and advances evenly
 */
export function traceEdges(layout: BitLayout, grid: TraceGrid = {}): EdgeTrace {
  requirePositive({ holeDiameter: layout.holeDiameter });
  layout.cutters.forEach(checkCutter);
  const holeRadius = layout.holeDiameter / 2;
  const cells = grid.cells ?? Math.max(FEWEST_CELLS, Math.round(holeRadius / USUAL_CELL_WIDTH));
  if (!(Number.isInteger(cells) && cells >= 1)) throw new RangeError(`cells must be a whole number, got ${cells}`);
  const cellWidth = holeRadius / cells;
  const cellRadius = new Float64Array(cells).map((_, cell) => (cell + 0.5) * cellWidth);
  requireWear(grid.wear, layout.cutters.length);
  const passes = emptyPasses(layout, cellWidth, cells);
  const overreach = new Float64Array(layout.cutters.length);
  const sheets: EdgeSheets = { near: emptySheet(cells), acrossAxis: emptySheet(cells) };
  const rooms = new Map<number, SampleRoom>();
  layout.cutters.forEach((cutter, index) => {
    const count = Math.max(FEWEST_SAMPLES, Math.ceil((Math.PI * cutter.faceDiameter) / cellWidth));
    const room = rooms.get(count) ?? sampleRoom(count);
    rooms.set(count, room);
    const samples = edgeSamples(cutter, room.circle, grid.wear?.[index], room.samples);
    overreach[index] = Math.max(0, layEdge(samples, sheets, cellWidth) - holeRadius);
    for (const sheet of [sheets.near, sheets.acrossAxis])
      takePasses({ cutter, index, samples, sheet, cellWidth }, passes);
  });
  return { layout, holeRadius, cellWidth, cellRadius, overreach, ...orderPasses(passes, cells) };
}

function checkCutter(cutter: PlacedCutter): void {
  const { faceDiameter, length, wornHeight, chamferWidth, radius } = cutter;
  const { azimuth, height, profileAngle, backRake, sideRake } = cutter;
  requireFinite({ azimuth, height, profileAngle, backRake, sideRake });
  requirePositive({ faceDiameter, length });
  requireNotNegative({ wornHeight, chamferWidth, radius });
  if (!(wornHeight < faceDiameter)) throw new RangeError(`wornHeight must be under ${faceDiameter}, got ${wornHeight}`);
}

const FEWEST_WEAR_POINTS = 2;

function requireWear(wear: readonly EdgeWear[] | undefined, cutters: number): void {
  if (!wear) return;
  if (wear.length !== cutters)
    throw new RangeError(`wear is needed for each of ${cutters} cutters, got ${wear.length}`);
  const fewest = Math.min(...wear.map(({ length }) => length), FEWEST_WEAR_POINTS);
  if (fewest < FEWEST_WEAR_POINTS)
    throw new RangeError(`wear needs ${FEWEST_WEAR_POINTS} points or more, got ${fewest}`);
}

/** Cutters of one face diameter are sampled on one circle and in one room, one after another. */
interface SampleRoom {
  readonly circle: CircleTable;
  readonly samples: EdgeSamples;
}

function sampleRoom(count: number): SampleRoom {
  const circle = circleTable(count);
  return { circle, samples: emptyEdgeSamples(circle) };
}

function emptyPasses(layout: BitLayout, cellWidth: number, cells: number): UnorderedPasses {
  let room = 0;
  // A disc spans no more than its diameter, counted on one side of the axis or on both together.
  for (const { faceDiameter } of layout.cutters) room += Math.min(2 * cells, Math.ceil(faceDiameter / cellWidth) + 4);
  const row = () => new Float64Array(room);
  return {
    count: 0,
    cell: new Int32Array(room),
    cutter: new Int32Array(room),
    height: row(),
    azimuth: row(),
    slope: row(),
    flatLength: row(),
    chamferHeight: row(),
    edgeAngle: row(),
  };
}

interface LaidEdge {
  readonly cutter: PlacedCutter;
  readonly index: number;
  readonly samples: EdgeSamples;
  readonly sheet: EdgeSheet;
  readonly cellWidth: number;
}

function takePasses({ cutter, index, samples, sheet, cellWidth }: LaidEdge, into: UnorderedPasses): void {
  const contactAt = contactShapeOf(cutter);
  const { removed } = samples;
  const { first, last, height, sample, share } = sheet;
  const perSample = TURN / (removed.length - 1);
  let at = into.count;
  for (let cell = first; cell <= last; cell++) {
    const here = height[cell];
    if (here === LIES_OVER_NONE) continue;
    const inward = cell > first && height[cell - 1] > LIES_OVER_NONE ? cell - 1 : cell;
    const outward = cell < last && height[cell + 1] > LIES_OVER_NONE ? cell + 1 : cell;
    const before = sample[cell];
    const way = share[cell];
    const gone = removed[before] + way * (removed[before + 1] - removed[before]);
    const { flatLength, chamferHeight } = contactAt(gone);
    into.cell[at] = cell;
    into.cutter[at] = index;
    into.height[at] = here;
    into.azimuth[at] = wrapped(cutter.azimuth + turnBetween(samples, before, way));
    into.slope[at] = outward === inward ? 0 : (height[outward] - height[inward]) / ((outward - inward) * cellWidth);
    into.flatLength[at] = flatLength;
    into.chamferHeight[at] = chamferHeight;
    into.edgeAngle[at] = (before + way) * perSample;
    at++;
  }
  into.count = at;
}

const TURN = 2 * Math.PI;
