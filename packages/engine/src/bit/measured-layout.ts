import { derivedFrom, type Finding, requirePositive } from "../quantity/index.ts";
import type { BitLayout, PlacedCutter } from "./placed-cutter.ts";
import { sweptInterval } from "./swept-interval.ts";

/** One row of the table of an as-measured bit. */
export type MeasuredRow = Omit<PlacedCutter, "profileAngle"> & {
  /** Angle of the outward profile normal, where it was measured [rad]. */
  readonly profileAngle?: number;
};

/** A bit of any make from a table of its cutters. */
export interface MeasuredBit {
  readonly layout: BitLayout;
  readonly findings: readonly Finding[];
}

/** Centres nearer in radius than this stand on one track [m]; (c) no source, about what a shop measures to. */
const ONE_TRACK = 5e-4;
/** Tracks to either side that the slope is taken over [-]. */
const REACH = 1;
/** How near the hole radius an edge has to come for the cutter to count as cutting the wall, as share of its face [-]. */
const AT_WALL = 0.05;
/** Edge that may stand past the hole before the table is doubted [m]: 1 mm. */
const DOUBTFUL_REACH = 1e-3;

/**
 * The layout of a bit of any make from a table of its cutters.
 *
 * Where the profile angle was not measured it is taken from the line through the face centres, which runs parallel to the
 * line of the tips: tan α = -dz/dr over the neighbouring tracks. A cutter whose edge only reaches the hole wall when it
 * stands at gauge keeps that slope, so gauge trimmers should be given their angle.
 *
 * @throws RangeError when there is no row or the hole has no size
 * @source (d) slope of the line through the face centres
 */
export function measuredLayout({
  holeDiameter,
  rows,
}: {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  readonly rows: readonly MeasuredRow[];
}): MeasuredBit {
  requirePositive({ holeDiameter, "number of rows": rows.length });
  const tracks = tracksOf(rows);
  const cutters = rows.map(
    (row): PlacedCutter => ({ ...row, profileAngle: row.profileAngle ?? slopeAngle(row, tracks) }),
  );
  const estimated = rows.flatMap((row, at) => (row.profileAngle === undefined ? [at + 1] : []));
  return {
    layout: { holeDiameter, cutters },
    findings: [...estimateFindings(estimated), ...reachFindings(cutters, holeDiameter / 2)],
  };
}

interface Track {
  /** Mean radius of the centres on it [m]. */
  readonly radius: number;
  /** Mean height of the centres on it [m]. */
  readonly height: number;
}

function tracksOf(rows: readonly MeasuredRow[]): Track[] {
  const groups: MeasuredRow[][] = [];
  for (const row of [...rows].sort((a, b) => a.radius - b.radius)) {
    const last = groups.at(-1);
    const first = last?.[0];
    if (last && first && row.radius - first.radius <= ONE_TRACK) last.push(row);
    else groups.push([row]);
  }
  const mean = (of: readonly number[]) => of.reduce((sum, one) => sum + one, 0) / of.length;
  return groups.map((group) => ({
    radius: mean(group.map(({ radius }) => radius)),
    height: mean(group.map(({ height }) => height)),
  }));
}

function slopeAngle({ radius }: MeasuredRow, tracks: readonly Track[]): number {
  const at = tracks.reduce(
    (best, track, index) => (Math.abs(track.radius - radius) < Math.abs(tracks[best].radius - radius) ? index : best),
    0,
  );
  const near = tracks.slice(Math.max(0, at - REACH), at + REACH + 1);
  const inner = near[0];
  const outer = near[near.length - 1];
  if (outer.radius === inner.radius) return 0;
  return Math.atan2(inner.height - outer.height, outer.radius - inner.radius);
}

function estimateFindings(estimated: readonly number[]): Finding[] {
  if (estimated.length === 0) return [];
  return [
    {
      code: "profile-angle-estimated",
      severity: "note",
      where: `cutter ${estimated.join(", ")}`,
      message:
        "No profile angle was given; it was taken from the line through the neighbouring face centres. Measure the gauge cutters, where the line turns fastest.",
      source: derivedFrom("slope of the line through the face centres"),
    },
  ];
}

function reachFindings(cutters: readonly PlacedCutter[], holeRadius: number): Finding[] {
  const reach = cutters.map((cutter) => sweptInterval(cutter).to);
  const outermost = Math.max(...reach);
  const source = derivedFrom("swept radii of all cutters");
  const figures = { value: outermost, limit: holeRadius, unit: "m", source };
  if (outermost > holeRadius + DOUBTFUL_REACH) {
    const message =
      "By the table an edge reaches well past the hole. Check radius, profile angle and hole diameter; it is computed as ground to gauge.";
    return [
      {
        code: "table-past-gauge",
        severity: "caution",
        where: `cutter ${reach.indexOf(outermost) + 1}`,
        message,
        ...figures,
      },
    ];
  }
  const face = Math.max(...cutters.map(({ faceDiameter }) => faceDiameter));
  if (outermost < holeRadius - AT_WALL * face) {
    const message =
      "By the table no edge reaches the hole wall. The bit is under gauge, or the table leaves out its gauge cutters.";
    return [{ code: "table-under-gauge", severity: "caution", where: "gauge", message, ...figures }];
  }
  return [];
}
