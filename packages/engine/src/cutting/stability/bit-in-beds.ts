import { requireBetween, requireFinite } from "../../quantity/index.ts";
import { edgeResponse } from "../edge-response.ts";
import type { EdgeTrace } from "../edge-trace.ts";
import type { CrossedBed } from "./crossed-bed.ts";

/** A bit and the beds it goes through, with the law of every cutter in every bed worked out beforehand. */
export interface BitInBeds {
  readonly trace: EdgeTrace;
  readonly beds: readonly CrossedBed[];
  /** Dip of the beds from level [rad]. */
  readonly dipAngle: number;
  /** The laws as rows, bed after bed, one entry for each cutter. */
  readonly laws: BedLaws;
}

/** Rows of the force law, bed after bed. The first four run over beds and cutters, the rest over beds. */
export interface BedLaws {
  /** Force along travel of the sharp face [Pa]. */
  readonly faceDrag: Float64Array;
  /** Force normal to travel of the sharp face [Pa]. */
  readonly faceNormal: Float64Array;
  /** Force along travel of the chamfer [Pa]. */
  readonly chamferDrag: Float64Array;
  /** Force normal to travel of the chamfer [Pa]. */
  readonly chamferNormal: Float64Array;
  /** Length of the chamfer along travel for each metre of its depth [-]. */
  readonly chamferLength: Float64Array;
  /** Stress under a rubbing face [Pa]. */
  readonly contactStress: Float64Array;
  /** Friction of flats on rock [-]. */
  readonly flatFriction: Float64Array;
  /** Growth of contact with depth [-]. */
  readonly kappa: Float64Array;
  /** Depth at which each bed begins on the axis; minus infinity for the first [m]. */
  readonly top: Float64Array;
}

/** Beds steeper than this stand along the hole: they are no longer crossed from above [rad]. */
const STEEPEST_DIP = (80 * Math.PI) / 180;

/**
 * A bit over a stack of beds, with the force law of each cutter in each bed at hand.
 *
 * @throws RangeError when there is no bed, the tops do not ascend, the dip is past 80°, or a rock is not sound
 * @source (d) bookkeeping for `bedLoads`
 */
export function bitInBeds({
  trace,
  beds,
  dipAngle = 0,
}: {
  readonly trace: EdgeTrace;
  /** From the top down. */
  readonly beds: readonly CrossedBed[];
  /** Dip of the beds from level; level where not given [rad]. */
  readonly dipAngle?: number;
}): BitInBeds {
  if (beds.length === 0) throw new RangeError("beds must name one bed at least");
  requireBetween("dipAngle", dipAngle, 0, STEEPEST_DIP);
  beds.forEach(({ top }, k) => {
    if (k === 0) return;
    requireFinite({ top });
    // The first bed has no top of its own: it reaches up without end.
    if (k > 1 && !(top > beds[k - 1].top)) throw new RangeError(`the tops of beds must ascend, got ${top}`);
  });
  const { cutters } = trace.layout;
  const perCutter = beds.flatMap(({ response }) => cutters.map((cutter) => edgeResponse(cutter, response)));
  return {
    trace,
    beds,
    dipAngle,
    laws: {
      faceDrag: Float64Array.from(perCutter, (law) => law.faceDrag),
      faceNormal: Float64Array.from(perCutter, (law) => law.faceNormal),
      chamferDrag: Float64Array.from(perCutter, (law) => law.chamferDrag),
      chamferNormal: Float64Array.from(perCutter, (law) => law.chamferNormal),
      chamferLength: Float64Array.from(perCutter, (law) => law.chamferLength),
      contactStress: Float64Array.from(beds, ({ response }) => response.contactStress),
      flatFriction: Float64Array.from(beds, ({ response }) => response.flatFriction),
      kappa: Float64Array.from(beds, ({ response }) => response.kappa),
      top: Float64Array.from(beds, ({ top }, k) => (k === 0 ? Number.NEGATIVE_INFINITY : top)),
    },
  };
}
