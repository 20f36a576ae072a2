import { type CountedInterval, coverCounts, gapsBetween, type Interval } from "../geometry/index.ts";
import {
  derivedFrom,
  type Finding,
  given,
  requireNotNegative,
  requirePositive,
  type Working,
} from "../quantity/index.ts";
import { gaugeTolerance } from "./gauge-tolerance.ts";
import type { BitLayout } from "./placed-cutter.ts";
import { sayLength } from "./say-length.ts";
import { sweptInterval } from "./swept-interval.ts";

/**
 * Ring under which no shop could tell it from none [m].
 *
 * @source (c) no source: a thousandth of a millimetre, our choice
 */
export const NARROWEST_RING = 1e-6;

/**
 * Core under which the rock is broken off by the face that leans over it [m].
 *
 * @source (c) common practice, no source: 1 mm of radius
 */
export const CORE_THAT_BREAKS = 1e-3;

/** What the cutters sweep. */
export interface Coverage {
  /** Radii each cutter sweeps, in the order of the layout. */
  readonly swept: readonly Interval[];
  /** Rings of the hole that no cutter sweeps, from the centre outward, as `[from, to]` [m]. */
  readonly uncutRings: readonly (readonly [number, number])[];
  /** How many cutters sweep each part of the radius, from the bit axis to the hole radius. */
  readonly redundancy: readonly CountedInterval[];
  /** Largest radius any edge sweeps [m]. */
  readonly outerRadius: number;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * Rings of the hole that no cutter sweeps, from the centre outward, as `[from, to]` in metres. The sweep of each edge is
 * taken in space. What lacks between the outermost edge and the hole radius counts as a ring.
 *
 * @throws RangeError when the hole has no size
 * @source (d) geometry of tilted circles
 */
export function uncutRings(layout: BitLayout): (readonly [number, number])[] {
  const { holeDiameter } = layout;
  requirePositive({ holeDiameter });
  const swept = layout.cutters.map(sweptInterval);
  return gapsBetween(swept, { from: 0, to: holeDiameter / 2 }, NARROWEST_RING).map(
    ({ from, to }) => [from, to] as const,
  );
}

/**
 * How many cutters sweep a radius.
 *
 * @returns number of cutters [-]
 * @throws RangeError when the radius is negative
 * @source (d) count of swept intervals
 * @example
 * cuttersSweeping({ swept: [{ from: 0, to: 0.02 }, { from: 0.01, to: 0.03 }], radius: 0.015 }) // → 2
 */
export function cuttersSweeping({
  swept,
  radius,
}: {
  /** Radii each cutter sweeps. */
  readonly swept: readonly Interval[];
  /** Radius looked at [m]. */
  readonly radius: number;
}): number {
  requireNotNegative({ radius });
  return swept.filter(({ from, to }) => from <= radius && radius <= to).length;
}

/**
 * What the cutters sweep: rings left uncut, cutters over each radius, and how the outermost edge stands to the hole.
 *
 * @throws RangeError when the hole has no size
 * @source (d) geometry of tilted circles
 */
export function coverage(layout: BitLayout): Coverage {
  const { holeDiameter, cutters } = layout;
  requirePositive({ holeDiameter });
  const holeRadius = holeDiameter / 2;
  const swept = cutters.map(sweptInterval);
  const span = { from: 0, to: holeRadius };
  const rings = gapsBetween(swept, span, NARROWEST_RING).map(({ from, to }) => [from, to] as const);
  // An edge that ends within a hair of the axis or the wall ends there: no step of redundancy is that thin.
  const snapped = swept.map(({ from, to }) => ({
    from: from < NARROWEST_RING ? 0 : from,
    to: Math.abs(to - holeRadius) < NARROWEST_RING ? holeRadius : to,
  }));
  const redundancy = coverCounts(snapped, span);
  const outerRadius = Math.max(0, ...swept.map(({ to }) => to));
  const findings = rings.map((ring) => ringFinding({ ring, layout, swept, outerRadius }));
  if (outerRadius > holeRadius + NARROWEST_RING) findings.push(pastGauge({ layout, swept, outerRadius }));
  const source = derivedFrom("swept radii of all cutters");
  const covered = redundancy.reduce((sum, { from, to, count }) => sum + count * (to - from), 0);
  return {
    swept,
    uncutRings: rings,
    redundancy,
    outerRadius,
    findings,
    working: [
      {
        name: "width of the uncut rings",
        relation: "u = R - width swept by any cutter",
        inputs: [
          given("R", "hole radius", holeRadius, "m", "layout"),
          given("n", "cutters", cutters.length, "-", "layout"),
        ],
        value: rings.reduce((sum, [from, to]) => sum + to - from, 0),
        unit: "m",
        source,
      },
      {
        name: "cutters over a radius, on average",
        relation: "n = Σ (r_to - r_from)/R",
        inputs: [
          given("Σ", "width of all sweeps within the hole", covered, "m", "swept radii of all cutters"),
          given("R", "hole radius", holeRadius, "m", "layout"),
        ],
        value: covered / holeRadius,
        unit: "-",
        source,
      },
      {
        name: "diameter the cutters sweep",
        relation: "D = 2 max r_to",
        inputs: [given("r_to", "outermost edge of any cutter", outerRadius, "m", "swept radii of all cutters")],
        value: 2 * outerRadius,
        unit: "m",
        source,
      },
    ],
  };
}

interface RingPlace {
  readonly ring: readonly [number, number];
  readonly layout: BitLayout;
  readonly swept: readonly Interval[];
  readonly outerRadius: number;
}

function ringFinding({ ring: [from, to], layout, swept, outerRadius }: RingPlace): Finding {
  const width = to - from;
  const base = { value: width, limit: 0, unit: "m", source: derivedFrom("swept radii of all cutters") };
  if (from >= outerRadius && outerRadius > 0) {
    const tolerance = gaugeTolerance(layout.holeDiameter);
    const within = 2 * width <= tolerance;
    return {
      ...base,
      code: "under-gauge",
      severity: within ? "note" : "caution",
      where: `gauge, ${besideRing(swept, layout, from, to)}`,
      message: within
        ? `The outermost edge stands ${sayLength(width)} inside the hole radius, within the tolerance of the diameter.`
        : `The outermost edge stands ${sayLength(width)} inside the hole radius: the bit drills under gauge.`,
      value: 2 * width,
      limit: tolerance,
    };
  }
  const core = from === 0;
  const slight = core && to <= CORE_THAT_BREAKS;
  const radii = `${sayLength(from)} to ${sayLength(to)}`;
  return {
    ...base,
    code: "uncut-ring",
    severity: slight ? "note" : "stop",
    where: core
      ? `bit centre, ${besideRing(swept, layout, from, to)}`
      : `radius ${radii}, ${besideRing(swept, layout, from, to)}`,
    message: slight
      ? `No edge crosses the bit axis: a core of ${sayLength(to)} radius stands until the face over it breaks it off.`
      : core
        ? `No cutter sweeps the centre out to ${sayLength(to)}: a core is left that the body must grind off. Draw the inmost cutter in.`
        : `No cutter sweeps the ring from radius ${radii}: rock is left that the body must grind off. Move a cutter to it.`,
  };
}

/** The cutters whose sweep ends and starts at a ring, with their wings where known. */
function besideRing(swept: readonly Interval[], layout: BitLayout, from: number, to: number): string {
  const names = layout.cutters.flatMap((cutter, at) => {
    const interval = swept[at];
    const touches =
      interval && (Math.abs(interval.to - from) < NARROWEST_RING || Math.abs(interval.from - to) < NARROWEST_RING);
    return touches ? [`cutter ${at + 1}${cutter.wing > 0 ? ` on wing ${cutter.wing}` : ""}`] : [];
  });
  return names.length > 0 ? names.join(", ") : "no cutter beside it";
}

function pastGauge({ layout, swept, outerRadius }: Omit<RingPlace, "ring">): Finding {
  const holeRadius = layout.holeDiameter / 2;
  const names = swept.flatMap(({ to }, at) => (to > holeRadius + NARROWEST_RING ? [at + 1] : []));
  return {
    code: "past-gauge",
    severity: "caution",
    where: `cutter ${names.join(", ")}`,
    message: `The edge reaches ${sayLength(outerRadius - holeRadius)} past the hole radius: it must be ground to gauge, or the bit drills and passes casing oversize.`,
    value: 2 * outerRadius,
    limit: layout.holeDiameter,
    unit: "m",
    source: derivedFrom("swept radii of all cutters"),
  };
}
