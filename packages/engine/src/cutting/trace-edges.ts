import type { BitLayout, PlacedCutter } from "../bit/index.ts";
import { requireFinite, requireNotNegative, requirePositive } from "../quantity/index.ts";
import { contactShapeOf } from "./contact-shape.ts";
import { type CircleTable, circleTable, type EdgeSamples, type EdgeWear, edgeSamples } from "./edge-samples.ts";
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
  const cellRadius = Float64Array.from({ length: cells }, (_, cell) => (cell + 0.5) * cellWidth);
  requireWear(grid.wear, layout.cutters.length);
  const passes = emptyPasses(layout, cellWidth, cells);
  const overreach = new Float64Array(layout.cutters.length);
  const near = emptySheet(cells);
  const acrossAxis = emptySheet(cells);
  const circles = new Map<number, CircleTable>();
  layout.cutters.forEach((cutter, index) => {
    const samples = Math.max(FEWEST_SAMPLES, Math.ceil((Math.PI * cutter.faceDiameter) / cellWidth));
    const circle = circles.get(samples) ?? circleTable(samples);
    circles.set(samples, circle);
    overreach[index] = Math.max(
      0,
      layCutter(edgeSamples(cutter, circle, grid.wear?.[index]), near, acrossAxis, cellWidth) - holeRadius,
    );
    for (const sheet of [near, acrossAxis]) takePasses(cutter, index, sheet, cellWidth, passes);
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

/** One cutter's own line over the cells it covers. */
interface Sheet {
  first: number;
  last: number;
  readonly height: Float64Array;
  readonly turn: Float64Array;
  readonly removed: Float64Array;
  readonly edgeAngle: Float64Array;
}

function emptySheet(cells: number): Sheet {
  const row = () => new Float64Array(cells);
  const height = row().fill(Number.NEGATIVE_INFINITY);
  return { first: cells, last: -1, height, turn: row(), removed: row(), edgeAngle: row() };
}

function clear(sheet: Sheet): void {
  sheet.height.fill(Number.NEGATIVE_INFINITY, sheet.first, sheet.last + 1);
  sheet.first = sheet.height.length;
  sheet.last = -1;
}

/** Fills the two sheets with the deepest points of one cutter; gives the largest radius its disc reaches. */
function layCutter(
  { radius, turn, height, removed }: EdgeSamples,
  near: Sheet,
  acrossAxis: Sheet,
  cellWidth: number,
): number {
  const perSample = TURN / (radius.length - 1);
  const cells = near.height.length;
  clear(near);
  clear(acrossAxis);
  let farthest = 0;
  for (let k = 0; k + 1 < radius.length; k++) {
    const r0 = radius[k];
    const r1 = radius[k + 1];
    if (r1 > farthest) farthest = r1;
    const from = Math.max(0, Math.ceil(Math.min(r0, r1) / cellWidth - 0.5));
    const to = Math.min(cells - 1, Math.floor(Math.max(r0, r1) / cellWidth - 0.5));
    for (let cell = from; cell <= to; cell++) {
      const share = r1 === r0 ? 0 : ((cell + 0.5) * cellWidth - r0) / (r1 - r0);
      const turnHere = between(turn[k], turn[k + 1], share);
      const sheet = Math.abs(turnHere) > QUARTER_TURN ? acrossAxis : near;
      const z = height[k] + share * (height[k + 1] - height[k]);
      if (z <= sheet.height[cell]) continue;
      sheet.height[cell] = z;
      sheet.turn[cell] = turnHere;
      sheet.removed[cell] = removed[k] + share * (removed[k + 1] - removed[k]);
      sheet.edgeAngle[cell] = (k + share) * perSample;
      if (cell < sheet.first) sheet.first = cell;
      if (cell > sheet.last) sheet.last = cell;
    }
  }
  return farthest;
}

/** Angle part-way from one sample to the next, taken the short way round. */
function between(from: number, to: number, share: number): number {
  const step = to - from;
  const short = step > Math.PI ? step - 2 * Math.PI : step < -Math.PI ? step + 2 * Math.PI : step;
  return from + share * short;
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

function takePasses(cutter: PlacedCutter, index: number, sheet: Sheet, cellWidth: number, into: UnorderedPasses): void {
  const contactAt = contactShapeOf(cutter);
  for (let cell = sheet.first; cell <= sheet.last; cell++) {
    if (!isLaid(sheet, cell)) continue;
    const inward = isLaid(sheet, cell - 1) ? cell - 1 : cell;
    const outward = isLaid(sheet, cell + 1) ? cell + 1 : cell;
    const rise = sheet.height[outward] - sheet.height[inward];
    const { flatLength, chamferHeight } = contactAt(sheet.removed[cell]);
    const at = into.count++;
    into.cell[at] = cell;
    into.cutter[at] = index;
    into.height[at] = sheet.height[cell];
    into.azimuth[at] = wrapped(cutter.azimuth + sheet.turn[cell]);
    into.slope[at] = outward === inward ? 0 : rise / ((outward - inward) * cellWidth);
    into.flatLength[at] = flatLength;
    into.chamferHeight[at] = chamferHeight;
    into.edgeAngle[at] = sheet.edgeAngle[cell];
  }
}

function isLaid(sheet: Sheet, cell: number): boolean {
  return cell >= sheet.first && cell <= sheet.last && sheet.height[cell] > Number.NEGATIVE_INFINITY;
}

const TURN = 2 * Math.PI;
const QUARTER_TURN = Math.PI / 2;

/** The same direction in 0 to 2π, 2π itself left out. */
function wrapped(angle: number): number {
  const rest = angle - TURN * Math.floor(angle / TURN);
  return rest >= TURN ? 0 : rest;
}
