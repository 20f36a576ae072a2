import { commonPractice, derivedFrom, type Finding, given, requireBetween, type Working } from "../quantity/index.ts";
import type { BitLayout } from "./placed-cutter.ts";
import { sayLength } from "./say-length.ts";

const DEGREE = Math.PI / 180;

/**
 * Share of a face that stands out beyond the wing where none is named [-].
 *
 * @source (c) common practice, no source: 0.3 to 0.6 of the diameter
 */
export const ORDINARY_EXPOSURE_SHARE = 0.5;

/** Bounds of the share of a face beyond the wing [-]: (c) common practice, no source. */
const EXPOSURE_BOUNDS = { least: 0.3, most: 0.6 } as const;

/** Profile angle past which a cutter faces the wall and its exposure does not limit the advance [rad]: our choice. */
const FACES_WALL = 80 * DEGREE;

/** How far a cutter stands out and what advance it lets the bit take. */
export interface CutterExposure {
  /** Height of the face beyond the wing, along the face [m]. */
  readonly height: number;
  /** The same along the profile normal [m]. */
  readonly alongNormal: number;
  /** Advance per revolution at which the wing behind it rubs; infinite for a cutter that faces the wall [m]. */
  readonly rubbingAdvance: number;
}

/** The exposure of all cutters. */
export interface Exposure {
  /** In the order of the layout. */
  readonly cutters: readonly CutterExposure[];
  /** Least advance per revolution at which a wing rubs [m]. */
  readonly rubbingAdvance: number;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * How far each cutter stands out of its wing, and the advance per revolution at which the first wing rubs.
 *
 * e = x D along the face, e cos β along the profile normal; the rock behind a cutter comes up to the wing when the depth
 * of one revolution along that normal, d cos α, has used it up: d = e cos β/cos α. This takes a track as cut once a
 * revolution; cutters that share a track let the bit take more. Worn height lessens the exposure.
 *
 * @throws RangeError when the share leaves 0 to 1
 * @source (d) geometry, for a track cut once a revolution; the share is common practice
 */
export function exposure({
  layout,
  share = ORDINARY_EXPOSURE_SHARE,
}: {
  readonly layout: BitLayout;
  /** Share of the face diameter beyond the wing [-]. */
  readonly share?: number;
}): Exposure {
  requireBetween("share", share, 0, 1);
  const cutters = layout.cutters.map((cutter): CutterExposure => {
    const height = Math.max(0, share * cutter.faceDiameter - cutter.wornHeight);
    const alongNormal = height * Math.cos(cutter.backRake);
    const facesWall = Math.abs(cutter.profileAngle) > FACES_WALL;
    const rubbingAdvance = facesWall ? Number.POSITIVE_INFINITY : alongNormal / Math.cos(cutter.profileAngle);
    return { height, alongNormal, rubbingAdvance };
  });
  const advances = cutters.map((each) => each.rubbingAdvance);
  const rubbingAdvance = Math.min(...advances);
  const at = advances.indexOf(rubbingAdvance);
  const first = layout.cutters[at];
  return {
    cutters,
    rubbingAdvance,
    findings: shareFindings(share, layout),
    working:
      first && Number.isFinite(rubbingAdvance)
        ? [
            {
              name: "advance at which a wing rubs",
              relation: "d = (x D - h) cos β/cos α",
              inputs: [
                given("x", "share of the face beyond the wing", share, "-", "bit"),
                given("D", `face of cutter ${at + 1}, the first to use it up`, first.faceDiameter, "m", "layout"),
                given("h", "worn height", first.wornHeight, "m", "layout"),
                given("β", "back rake", first.backRake, "rad", "layout"),
                given("α", "profile angle", first.profileAngle, "rad", "layout"),
              ],
              value: rubbingAdvance,
              unit: "m",
              source: derivedFrom("exposure and pose, for a track cut once a revolution"),
            },
          ]
        : [],
  };
}

function shareFindings(share: number, layout: BitLayout): Finding[] {
  const { least, most } = EXPOSURE_BOUNDS;
  if (share >= least && share <= most) return [];
  const low = share < least;
  const height = share * (layout.cutters[0]?.faceDiameter ?? 0);
  return [
    {
      code: low ? "exposure-small" : "exposure-large",
      severity: "caution",
      where: "wings",
      message: low
        ? `Only ${sayLength(height)} of the face stands out: the wings rub early and clay packs in front of them.`
        : `${sayLength(height)} of the face stands out: little of the cutter is held, and a blow breaks it out.`,
      value: share,
      limit: low ? least : most,
      unit: "-",
      source: commonPractice(),
    },
  ];
}
