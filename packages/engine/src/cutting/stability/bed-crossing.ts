import type { RockResponse } from "../../ground/index.ts";
import { requirePositive } from "../../quantity/index.ts";
import type { EdgeTrace } from "../edge-trace.ts";
import { engage } from "../engage.ts";
import { bitInBeds } from "./bit-in-beds.ts";
import { type StateInBeds, throughBeds } from "./through-beds.ts";

/** A bit about to go from one bed into the next. */
export interface BedCrossingInput {
  readonly trace: EdgeTrace;
  /** The bed it comes from. */
  readonly above: RockResponse;
  /** The bed it goes into. */
  readonly below: RockResponse;
  /** Weight on bit [N]. */
  readonly weight: number;
  /** Dip of the boundary from level; level where not given [rad]. */
  readonly dipAngle?: number;
  /** How many places along the crossing [-]. */
  readonly places?: number;
  /** How many moments of a turn to look at where the boundary dips [-]. */
  readonly moments?: number;
}

/** One place along the crossing. */
export interface CrossingPlace {
  /** How far the bit has gone since the first edge touched the new bed [m]. */
  readonly entered: number;
  /** With the advance of the old bed held, as a feed that pays no heed to weight does. */
  readonly heldAdvance: StateInBeds;
  /** With the weight held. */
  readonly heldWeight: StateInBeds;
}

/** The heaviest moment for one cutter on the way into a bed. */
export interface CutterPeak {
  /** Number of the cutter in the layout [-]. */
  readonly cutter: number;
  /** Force on it [N]. */
  readonly force: number;
  /** The same over the larger of its forces wholly in the one bed and wholly in the other [-]. */
  readonly overloadRatio: number;
  /** How far the bit has gone into the new bed by then [m]. */
  readonly entered: number;
}

/** The way of a bit from one bed into another. */
export interface BedCrossing {
  /** Way of the bit from the first edge that touches to the last that cuts in the new bed alone [m]. */
  readonly span: number;
  /** Place after place, evenly apart. */
  readonly curve: readonly CrossingPlace[];
  /** Wholly in the old bed under this weight. */
  readonly before: StateInBeds;
  /** Wholly in the new bed under this weight. */
  readonly after: StateInBeds;
  /** Heaviest moment of the hardest pressed cutter with the weight held. */
  readonly peak: CutterPeak;
  /** The place with the largest share of side force, with the weight held. */
  readonly mostLateral: CrossingPlace;
  /** The place with the largest weight, with the advance held. */
  readonly mostWeight: CrossingPlace;
  /** The place with the largest torque, with the advance held. */
  readonly mostTorque: CrossingPlace;
}

const USUAL_PLACES = 30;

/**
 * The bit part-way from one bed into the next: weight at held advance, advance at held weight, torque, side force and
 * every cutter's force from the first touch until all edges cut in the new bed.
 *
 * Going from soft to hard at held weight, the first cutters that touch the hard bed meet it at the deep cut of the soft
 * one, for the others still let the bit down so fast: this is where cutters chip. Steady at each place, so a bit that
 * drops through the boundary within a turn or two does worse than this.
 *
 * @throws RangeError when the weight is not positive, or fewer than two places are asked for
 * @source (d) statics of the summed cutter forces, each edge in the bed it stands in
 */
export function bedCrossing(input: BedCrossingInput): BedCrossing {
  const { trace, above, below, weight, dipAngle = 0, places: count = USUAL_PLACES } = input;
  requirePositive({ weight, placesOverOne: count - 1 });
  const moments = input.moments === undefined ? {} : { moments: input.moments };
  const wholly = (response: RockResponse) =>
    only(throughBeds({ bit: bitInBeds({ trace, beds: [{ top: 0, response }] }), held: { weight }, depths: [0] }));
  const before = wholly(above);
  const after = wholly(below);
  const reach = reachOf(trace, dipAngle, Math.max(before.advance, after.advance));
  const span = reach.lowest - reach.highest;
  const bit = bitInBeds({
    trace,
    dipAngle,
    beds: [
      { top: Number.NEGATIVE_INFINITY, response: above },
      { top: 0, response: below },
    ],
  });
  const ways = Array.from({ length: count }, (_, k) => (span * k) / (count - 1));
  const depths = ways.map((entered) => entered - reach.lowest);
  const byAdvance = throughBeds({ bit, held: { advance: before.advance }, depths, ...moments });
  const byWeight = throughBeds({ bit, held: { weight }, depths, ...moments });
  const curve = ways.map((entered, k): CrossingPlace => {
    return { entered, heldAdvance: byAdvance[k], heldWeight: byWeight[k] };
  });
  const most = (of: (place: CrossingPlace) => number) =>
    curve.reduce((best, place) => (of(place) > of(best) ? place : best));
  return {
    span,
    curve,
    before,
    after,
    peak: peakOf(curve, before, after),
    mostLateral: most(({ heldWeight }) => heldWeight.lateralShare),
    mostWeight: most(({ heldAdvance }) => heldAdvance.weight),
    mostTorque: most(({ heldAdvance }) => heldAdvance.torque),
  };
}

function only<T>([one]: readonly T[]): T {
  return one;
}

/** Lowest edge that cuts, and top of the highest layer that is cut, over the turn, under a boundary that dips [m]. */
function reachOf(trace: EdgeTrace, dipAngle: number, advance: number): { lowest: number; highest: number } {
  const { depth } = engage(trace, advance);
  const { height, firstPass, cellRadius } = trace;
  const tilt = Math.tan(dipAngle);
  let lowest = Number.NEGATIVE_INFINITY;
  let highest = Number.POSITIVE_INFINITY;
  for (let cell = 0; cell < cellRadius.length; cell++) {
    for (let k = firstPass[cell]; k < firstPass[cell + 1]; k++) {
      if (!(depth[k] > 0)) continue;
      lowest = Math.max(lowest, height[k] + cellRadius[cell] * tilt);
      highest = Math.min(highest, height[k] - depth[k] - cellRadius[cell] * tilt);
    }
  }
  return { lowest, highest };
}

function peakOf(curve: readonly CrossingPlace[], before: StateInBeds, after: StateInBeds): CutterPeak {
  let peak: CutterPeak = { cutter: 1, force: 0, overloadRatio: 0, entered: 0 };
  for (const { entered, heldWeight } of curve) {
    heldWeight.cutterForces.forEach((force, k) => {
      const usual = Math.max(before.cutterForces[k], after.cutterForces[k]);
      if (usual > 0 && force > peak.force) peak = { cutter: k + 1, force, overloadRatio: force / usual, entered };
    });
  }
  return peak;
}
