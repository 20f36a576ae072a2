import { derivedFrom, type Finding, requirePositive } from "../quantity/index.ts";
import { estimatedProfileAngles } from "./estimated-profile-angle.ts";
import { faceWithTipAt } from "./face-on-profile.ts";
import type { BitLayout, PlacedCutter } from "./placed-cutter.ts";
import { sayLength } from "./say-length.ts";
import { sweptInterval } from "./swept-interval.ts";

/** One row of the table of an as-measured bit. */
export type MeasuredRow = Omit<PlacedCutter, "profileAngle"> & {
  /** Angle of the outward profile normal, where it was measured [rad]. */
  readonly profileAngle?: number;
};

/** The point of a cutter that radius and height of a table stand for; the azimuth is always that of the face centre. */
export type MeasuredPoint = "face centre" | "cutting tip";

/** A bit of any make from a table of its cutters. */
export interface MeasuredBit {
  readonly layout: BitLayout;
  readonly findings: readonly Finding[];
}

/** How near the hole radius an edge has to come for the cutter to count as cutting the wall, as share of its face [-]. */
const AT_WALL = 0.05;
/** Edge that may stand past the hole before the table is doubted [m]: 1 mm. */
const DOUBTFUL_REACH = 1e-3;
/** Centres nearer than this share of a face cannot be two cutters [-]. */
const SAME_PLACE = 0.3;

/**
 * The layout of a bit of any make from a table of its cutters.
 *
 * Where the profile angle was not measured it is taken from the line through the cutters, which turns from cutter to cutter
 * as the profile does. The line of the cutters ends at the last of them, so gauge cutters should be given their angle. A
 * table may also hold the cutting tips, which a height gauge reads: the centre is then half a face behind its tip.
 *
 * @throws RangeError when there is no row, or the hole or a face has no size
 * @source (d) direction of the line through the cutters; geometry of the pose
 */
export function measuredLayout({
  holeDiameter,
  rows,
  measuredAt = "face centre",
}: {
  /** Nominal diameter of the hole [m]. */
  readonly holeDiameter: number;
  readonly rows: readonly MeasuredRow[];
  readonly measuredAt?: MeasuredPoint;
}): MeasuredBit {
  requirePositive({ holeDiameter, "number of rows": rows.length });
  const angles = estimatedProfileAngles(rows);
  const placed = rows.map((row, at): PlacedCutter => ({ ...row, profileAngle: row.profileAngle ?? angles[at] ?? 0 }));
  const cutters =
    measuredAt === "face centre"
      ? placed
      : placed.map((row) => ({ ...row, ...faceWithTipAt({ tip: row, azimuth: row.azimuth, tilt: tiltOf(row) }) }));
  const estimated = rows.flatMap((row, at) => (row.profileAngle === undefined ? [at + 1] : []));
  return {
    layout: { holeDiameter, cutters },
    findings: [
      ...estimateFindings(estimated, rows.length),
      ...doubleFindings(cutters),
      ...reachFindings(cutters, holeDiameter / 2),
    ],
  };
}

function tiltOf({ profileAngle, backRake, sideRake, faceDiameter }: PlacedCutter) {
  return { profileAngle, backRake, sideRake, faceDiameter };
}

function estimateFindings(estimated: readonly number[], rows: number): Finding[] {
  if (estimated.length === 0) return [];
  return [
    {
      code: "profile-angle-estimated",
      severity: "note",
      where: `cutter ${estimated.join(", ")}`,
      message:
        rows < 3
          ? "No profile angle was given and too few cutters stand beside it to tell: it was taken from them as it could be. Measure it."
          : "No profile angle was given; it was taken from the line through the neighbouring cutters. Measure the gauge cutters, where the line turns fastest.",
      source: derivedFrom("direction of the line through the cutters"),
    },
  ];
}

/** Rows that put two cutters in one place: typed twice, or a wrong azimuth. */
function doubleFindings(cutters: readonly PlacedCutter[]): Finding[] {
  const [x, y] = [Math.cos, Math.sin].map((of) => cutters.map(({ radius, azimuth }) => radius * of(azimuth)));
  return cutters.flatMap((cutter, b) =>
    cutters.slice(0, b).flatMap((other, a): Finding[] => {
      const apart = Math.hypot(
        (x?.[a] ?? 0) - (x?.[b] ?? 0),
        (y?.[a] ?? 0) - (y?.[b] ?? 0),
        other.height - cutter.height,
      );
      if (apart > SAME_PLACE * cutter.faceDiameter) return [];
      return [
        {
          code: "cutters-in-one-place",
          severity: "caution",
          where: `cutters ${a + 1} and ${b + 1}`,
          message: `By the table two cutters stand ${sayLength(apart)} apart: one row too many, or a wrong azimuth.`,
          value: apart,
          limit: SAME_PLACE * cutter.faceDiameter,
          unit: "m",
          source: derivedFrom("places of the face centres"),
        },
      ];
    }),
  );
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
