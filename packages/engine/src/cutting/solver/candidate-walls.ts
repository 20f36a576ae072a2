import { pocketWall, type StationedFace } from "../../bit/index.ts";
import type { Cylinder, Vector } from "../../geometry/index.ts";
import { type AxisEnds, axisDistance } from "./axis-distance.ts";
import type { SolverSetting } from "./solver-setting.ts";

/** What every pair of pockets lacks of the wall asked for, 0 where it has it: row by row, both halves [m]. */
export type WallShortfalls = Float64Array;

/** Which walls are to be looked at. */
export interface MovedCutters {
  readonly faces: readonly StationedFace[];
  /** Azimuth of each face [rad]. */
  readonly azimuths: Float64Array;
  /** Left out, all walls are looked at. */
  readonly from?: WallsBefore;
}

/** The walls of the candidate that one was moved from. */
export interface WallsBefore {
  readonly walls: WallShortfalls;
  /** Cutters that stand otherwise now [-]. */
  readonly moved: readonly number[];
}

/**
 * The walls of a candidate: only pairs with a moved cutter are looked at, and of those only the few whose axes come near.
 *
 * @source (d) geometry of finite cylinders
 */
export function wallShortfalls(
  { stock, spec }: Pick<SolverSetting, "stock" | "spec">,
  { faces, azimuths, from }: MovedCutters,
): WallShortfalls {
  const count = faces.length;
  const shortfalls = from ? from.walls.slice() : new Float64Array(count * count);
  const ends = axisEnds(faces, azimuths);
  const enough = stock.wall + stock.clearance + spec.cutter.faceDiameter;
  const fresh = new Uint8Array(count);
  const lookAt = (a: number, b: number) => {
    const near = axisDistance(ends, a, b) <= enough;
    const shortfall = near ? lackOf(cylinderOf(ends, a, faces[a]), cylinderOf(ends, b, faces[b])) : 0;
    shortfalls[a * count + b] = shortfall;
    shortfalls[b * count + a] = shortfall;
  };
  const lackOf = (first: Cylinder, second: Cylinder) =>
    Math.max(0, stock.wall - pocketWall({ first, second, clearance: stock.clearance, enough: stock.wall }));
  for (const a of from ? from.moved : faces.keys()) {
    fresh[a] = 1;
    for (let b = 0; b < count; b++) if (!fresh[b]) lookAt(a, b);
  }
  return shortfalls;
}

/** Both ends of every cutter's axis, turned to its azimuth. */
function axisEnds(faces: readonly StationedFace[], azimuths: Float64Array): AxisEnds {
  const ends = new Float64Array(6 * faces.length);
  for (const [at, { cylinder }] of faces.entries()) {
    const [cosine, sine] = [Math.cos(azimuths[at]), Math.sin(azimuths[at])];
    for (const [part, [x, y, z]] of [cylinder.from, cylinder.to].entries()) {
      const place = 6 * at + 3 * part;
      ends[place] = x * cosine - y * sine;
      ends[place + 1] = x * sine + y * cosine;
      ends[place + 2] = z;
    }
  }
  return ends;
}

function cylinderOf(ends: AxisEnds, at: number, { cylinder }: StationedFace): Cylinder {
  const point = (place: number): Vector => [ends[place], ends[place + 1], ends[place + 2]];
  return { from: point(6 * at), to: point(6 * at + 3), radius: cylinder.radius };
}
