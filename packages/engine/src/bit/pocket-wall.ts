import { type Cylinder, cylinderDistance, cylinderOverlap, length, minus, plus, times } from "../geometry/index.ts";
import {
  commonPractice,
  derivedFrom,
  type Finding,
  given,
  requireNotNegative,
  type Working,
} from "../quantity/index.ts";
import type { BitMaterial } from "./bit-material.ts";
import { cutterFrame } from "./cutter-frame.ts";
import type { BitLayout, PlacedCutter } from "./placed-cutter.ts";
import { sayLength } from "./say-length.ts";

const MM = 1e-3;

/**
 * By how much a pocket is wider than its cutter, over the diameter [m].
 *
 * @source (c) common practice, no source: 0.10 to 0.16 mm for a 13.44 mm cutter
 */
export const POCKET_CLEARANCE = 0.13 * MM;

/**
 * Least wall between two pockets, by body [m].
 *
 * @source (c) common practice, no source: 1.0 mm in steel, 1.5 mm in matrix, which is brittle
 */
export const LEAST_POCKET_WALL: Readonly<Record<BitMaterial, number>> = { steel: 1.0 * MM, matrix: 1.5 * MM };

/** The wall between the pockets of two cutters. */
export interface PocketWall {
  /** The two cutters, by their place in the layout from 0, the inner first [-]. */
  readonly between: readonly [number, number];
  /** Whether one wing carries both; false where their wings are not known. */
  readonly sameWing: boolean;
  /** Wall; below zero where the pockets run into each other [m]. */
  readonly wall: number;
}

/** What is asked of the walls. */
export interface PocketWallInput {
  readonly layout: BitLayout;
  readonly material: BitMaterial;
  /** By how much a pocket is wider than its cutter, over the diameter [m]. */
  readonly clearance?: number;
  /** Least wall that is taken as sound; of the body where not given [m]. */
  readonly leastWall?: number;
}

/** The walls of a bit. */
export interface PocketWalls {
  /** Thinnest first; only pairs that stand nearer than one face diameter. */
  readonly walls: readonly PocketWall[];
  /** The least wall held against [m]. */
  readonly leastWall: number;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * The cylinder that a cutter fills, from its face back along the face normal.
 *
 * @source (d) geometry of the pose
 */
export function cutterCylinder(cutter: Pick<PlacedCutter, "length"> & Parameters<typeof cutterFrame>[0]): Cylinder {
  const { centre, faceNormal } = cutterFrame(cutter);
  return { from: centre, to: plus(centre, times(-cutter.length, faceNormal)), radius: cutter.faceDiameter / 2 };
}

/** Distance in space between two cylinders that may stand far apart; only a lower bound where it passes `enough`. */
function nearDistance(a: Cylinder, b: Cylinder, enough: number): number {
  const middle = (of: Cylinder) => times(0.5, plus(of.from, of.to));
  const reach = (of: Cylinder) => Math.hypot(length(minus(of.to, of.from)) / 2, of.radius);
  const atLeast = length(minus(middle(a), middle(b))) - reach(a) - reach(b);
  return atLeast > enough ? atLeast : cylinderDistance(a, b, enough);
}

/**
 * Wall between the pockets of two cutters: the distance of their cylinders in space less the clearance of both pockets.
 *
 * w = dist(A, B) - c; where the cylinders run into each other, minus the cut that would part them, less c. A wall beyond
 * `enough` is only bounded from below, which saves most of the work on cutters that stand far apart.
 *
 * @returns wall, negative where the pockets meet [m]
 * @throws RangeError when the clearance is negative or a cylinder has no size
 * @source (d) geometry of finite cylinders
 * @example
 * pocketWall({ first: { from: [0, 0, 0], to: [0, 0, 8], radius: 6 }, second: { from: [15, 0, 0], to: [15, 0, 8], radius: 6 }, clearance: 0.5 }) // → 2.5
 */
export function pocketWall({
  first,
  second,
  clearance,
  enough = Number.POSITIVE_INFINITY,
}: {
  readonly first: Cylinder;
  readonly second: Cylinder;
  /** By how much a pocket is wider than its cutter, over the diameter [m]. */
  readonly clearance: number;
  /** Wall beyond which the exact value is of no interest [m]. */
  readonly enough?: number;
}): number {
  requireNotNegative({ clearance });
  const distance = nearDistance(first, second, enough + clearance);
  return (distance > 0 ? distance : -cylinderOverlap(first, second)) - clearance;
}

/**
 * The walls between pockets, thinnest first, with remarks on those under the least wall.
 *
 * @throws RangeError when a length is negative or a cutter has no size
 * @source (d) geometry of finite cylinders; the least wall is common practice
 */
export function pocketWalls({
  layout,
  material,
  clearance = POCKET_CLEARANCE,
  leastWall = LEAST_POCKET_WALL[material],
}: PocketWallInput): PocketWalls {
  requireNotNegative({ clearance, leastWall });
  const cylinders = layout.cutters.map(cutterCylinder);
  const walls: PocketWall[] = [];
  layout.cutters.forEach((first, a) => {
    layout.cutters.forEach((second, b) => {
      const [one, other] = [cylinders[a], cylinders[b]];
      if (b <= a || !one || !other) return;
      const near = Math.max(first.faceDiameter, second.faceDiameter);
      const wall = pocketWall({ first: one, second: other, clearance, enough: near });
      if (wall > near) return;
      const between = first.radius <= second.radius ? ([a, b] as const) : ([b, a] as const);
      walls.push({ between, sameWing: first.wing > 0 && first.wing === second.wing, wall });
    });
  });
  walls.sort((a, b) => a.wall - b.wall || a.between[0] - b.between[0] || a.between[1] - b.between[1]);
  const thinnest = walls[0];
  return {
    walls,
    leastWall,
    findings: walls.filter(({ wall }) => wall < leastWall).map((each) => thinWall(each, layout, leastWall)),
    working: thinnest ? [wallWorking(thinnest, clearance)] : [],
  };
}

function thinWall({ between, wall, sameWing }: PocketWall, layout: BitLayout, leastWall: number): Finding {
  const [a, b] = between;
  const wings = [layout.cutters[a]?.wing ?? 0, layout.cutters[b]?.wing ?? 0];
  const place = sameWing
    ? `wing ${wings[0]}`
    : wings.every((wing) => wing > 0)
      ? `wings ${wings.join(" and ")}`
      : "face";
  return {
    code: wall < 0 ? "pockets-meet" : "thin-pocket-wall",
    severity: wall < 0 ? "stop" : "caution",
    where: `cutters ${a + 1} and ${b + 1}, ${place}`,
    message:
      wall < 0
        ? `The pockets run into each other by ${sayLength(-wall)}: move the cutters apart.`
        : `The wall between the pockets is ${sayLength(wall)}: braze and blows break it. Move the cutters apart.`,
    value: wall,
    limit: leastWall,
    unit: "m",
    source: commonPractice(),
  };
}

function wallWorking({ between, wall }: PocketWall, clearance: number): Working {
  const [a, b] = between;
  return {
    name: "thinnest wall between pockets",
    relation: "w = dist(A, B) - c",
    inputs: [
      given("dist", `distance of the cylinders of cutters ${a + 1} and ${b + 1}`, wall + clearance, "m", "layout"),
      given("c", "clearance of a pocket over its diameter", clearance, "m", "common practice, no source"),
    ],
    value: wall,
    unit: "m",
    source: derivedFrom("poses and lengths of the two cutters"),
  };
}
