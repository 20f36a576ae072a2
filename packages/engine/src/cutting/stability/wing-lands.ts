import { cuttingTip, type PlacedCutter } from "../../bit/index.ts";
import { wrapped } from "../../geometry/index.ts";
import { requireNotNegative, requirePositive } from "../../quantity/index.ts";
import type { EdgeTrace } from "../edge-trace.ts";

/** The tops of the wings laid on the radial grid of a trace: where the body would rub. */
export interface WingLands {
  readonly trace: EdgeTrace;
  /** Numbers of the wings, in the order of the rows [-]. */
  readonly wings: readonly number[];
  /** Index of the wing in `wings`, for each bit of land [-]. */
  readonly wing: Int32Array;
  /** Index of the radial cell, for each bit of land [-]. */
  readonly cell: Int32Array;
  /** Height of the land, positive down-hole, for each bit of land [m]. */
  readonly height: Float64Array;
  /** Azimuth of the back end of the land, which touches first, 0 to 2π [rad]. */
  readonly azimuth: Float64Array;
  /** Slope of the land dz/dr [-]. */
  readonly slope: Float64Array;
  /** Length of the land along travel [m]. */
  readonly length: Float64Array;
  /** Advance per revolution at which this bit of land meets the rock; infinite where none stands over it [m]. */
  readonly rubbingAdvance: Float64Array;
}

/** What the lands are laid from. */
export interface WingLandsInput {
  readonly trace: EdgeTrace;
  /** Height of each cutter's tip over its wing along the profile normal, in the order of the layout [m]. */
  readonly exposure: readonly number[];
  /** Thickness of a wing along travel, taken as land from the faces to the back [m]. */
  readonly wingThickness: number;
}

/** Profile angle past which a land faces the wall and carries no weight [rad]: our choice, as for the exposure. */
const FACES_WALL = (80 * Math.PI) / 180;
const TURN = 2 * Math.PI;

/**
 * Lays the wings' tops under the line of the tips: each wing from its innermost to its outermost cutter, lower than the
 * profile by the exposure, with the azimuth of its back end.
 *
 * The profile is the line through all tips, so that a wing follows it between its own cutters; the exposure is taken
 * between those. Where a land meets the rock: behind its own cutters it is sheltered by the groove they have just cut;
 * between them it runs over what other wings left up to a turn before, and the bit has come down since by that part of
 * the advance. A land at height z passes the rock under edge j of height z_j, cut c_j of a turn before, at
 * d = max over j of (z_j - z)/c_j.
 *
 * @throws RangeError when there is not one exposure for each cutter, one is negative, or the wing has no thickness
 * @source (d) kinematics of a rigid bit that turns and advances evenly; the land without relief is our choice
 */
export function wingLands({ trace, exposure, wingThickness }: WingLandsInput): WingLands {
  const { cutters } = trace.layout;
  requirePositive({ wingThickness });
  if (exposure.length !== cutters.length) {
    throw new RangeError(`exposure must be one for each of ${cutters.length} cutters, got ${exposure.length}`);
  }
  exposure.forEach((each, k) => {
    requireNotNegative({ [`exposure of cutter ${k + 1}`]: each });
  });
  const profile = profileOf(cutters);
  const wings = [...new Set(cutters.map(({ wing }) => wing))].filter((wing) => wing > 0).sort((a, b) => a - b);
  const bits: LandBit[] = wings.flatMap((wing, index) =>
    landOf({ trace, exposure, wingThickness }, profile, wing).map((bit) => ({ ...bit, wing: index })),
  );
  return {
    trace,
    wings,
    wing: Int32Array.from(bits, ({ wing }) => wing),
    cell: Int32Array.from(bits, ({ cell }) => cell),
    height: Float64Array.from(bits, ({ height }) => height),
    azimuth: Float64Array.from(bits, ({ azimuth }) => azimuth),
    slope: Float64Array.from(bits, ({ slope }) => slope),
    length: Float64Array.from(bits, ({ length }) => length),
    rubbingAdvance: Float64Array.from(bits, ({ cell, height, azimuth }) =>
      rubbingAdvanceAt(trace, cell, height, azimuth),
    ),
  };
}

interface LandBit {
  readonly wing: number;
  readonly cell: number;
  readonly height: number;
  readonly azimuth: number;
  readonly slope: number;
  readonly length: number;
}

/** A point of the line of tips. */
interface TipPoint {
  readonly radius: number;
  readonly height: number;
}

/** The line of the tips by radius; tips at one radius count as the deepest of them. */
function profileOf(cutters: readonly PlacedCutter[]): TipPoint[] {
  const line: TipPoint[] = [];
  for (const tip of cutters.map(cuttingTip).sort((a, b) => a.radius - b.radius)) {
    const last = line.at(-1);
    if (last && tip.radius - last.radius < 1e-9) {
      if (tip.height > last.height) line[line.length - 1] = tip;
    } else line.push(tip);
  }
  return line;
}

function landOf(input: WingLandsInput, profile: readonly TipPoint[], wing: number): Omit<LandBit, "wing">[] {
  const { trace, exposure, wingThickness } = input;
  const { cellRadius, cellWidth, layout } = trace;
  const own = layout.cutters
    .map((cutter, k) => ({ cutter, tip: cuttingTip(cutter), exposure: exposure[k] }))
    .filter(({ cutter }) => cutter.wing === wing)
    .sort((a, b) => a.tip.radius - b.tip.radius);
  // Azimuths unwrapped along the wing, so that a wing across azimuth 0 does not run the long way round.
  let before = own[0].cutter.azimuth;
  const points = own.map(({ cutter, tip, exposure: each }) => {
    before = before + Math.atan2(Math.sin(cutter.azimuth - before), Math.cos(cutter.azimuth - before));
    return { radius: tip.radius, azimuth: before, exposure: each, length: cutter.length, facing: cutter.profileAngle };
  });
  const bits: Omit<LandBit, "wing">[] = [];
  const first = points[0].radius;
  const last = points[points.length - 1].radius;
  for (let cell = 0; cell < cellRadius.length; cell++) {
    const radius = cellRadius[cell];
    if (radius < first - cellWidth / 2 || radius > last + cellWidth / 2) continue;
    // Nearer the axis the wings have grown together and no land of one wing can be told.
    if (wingThickness > Math.PI * radius) continue;
    const at = (of: (point: (typeof points)[number]) => number) => between(points, radius, of);
    if (Math.abs(at(({ facing }) => facing)) > FACES_WALL) continue;
    const on = (r: number) => between(profile, r, ({ height }) => height);
    const slope = (on(radius + cellWidth) - on(radius - cellWidth)) / (2 * cellWidth);
    const back = at(({ azimuth }) => azimuth) - wingThickness / radius;
    bits.push({
      cell,
      height: on(radius) - at(({ exposure: each }) => each) * Math.sqrt(1 + slope * slope),
      azimuth: wrapped(back),
      slope,
      length: wingThickness,
    });
  }
  return bits;
}

/** Value of a broken line at a radius, held at its ends. */
function between<Point extends { readonly radius: number }>(
  points: readonly Point[],
  radius: number,
  of: (point: Point) => number,
): number {
  let k = 0;
  while (k < points.length && points[k].radius < radius) k++;
  if (k === 0) return of(points[0]);
  if (k === points.length) return of(points[k - 1]);
  const [one, two] = [points[k - 1], points[k]];
  return of(one) + ((radius - one.radius) / (two.radius - one.radius)) * (of(two) - of(one));
}

function rubbingAdvanceAt(trace: EdgeTrace, cell: number, height: number, azimuth: number): number {
  const { firstPass } = trace;
  let advance = Number.NEGATIVE_INFINITY;
  for (let k = firstPass[cell]; k < firstPass[cell + 1]; k++) {
    // What passed at a larger azimuth went by in this turn, the rest in the turn before.
    const ahead = trace.azimuth[k] - azimuth;
    const sinceTurns = (ahead > 0 ? ahead : ahead + TURN) / TURN;
    advance = Math.max(advance, (trace.height[k] - height) / sinceTurns);
  }
  return advance === Number.NEGATIVE_INFINITY ? Number.POSITIVE_INFINITY : Math.max(0, advance);
}
