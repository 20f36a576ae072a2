import { bracketedRoot, requirePositive } from "../../quantity/index.ts";
import { sideForce } from "../bit-loads.ts";
import { type Engagement, emptyEngagement, engage } from "../engage.ts";
import { type BedLoads, bedLoads, emptyBedLoads } from "./bed-loads.ts";
import type { BitInBeds } from "./bit-in-beds.ts";

/** What the bit does at one depth on its way through the beds. Where they dip, over one turn. */
export interface StateInBeds {
  /** Depth of the origin of the bit frame [m]. */
  readonly depth: number;
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Weight on bit, mean over the turn [N]. */
  readonly weight: number;
  /** Torque at the bit, mean over the turn [N·m]. */
  readonly torque: number;
  /** Largest side force of the turn [N]. */
  readonly lateralForce: number;
  /** Where it points on the bit [rad]. */
  readonly lateralAzimuth: number;
  /** Largest side force as a share of the weight of that moment [-]. */
  readonly lateralShare: number;
  /** Largest force on each cutter, drag, axial and radial part together [N]. */
  readonly cutterForces: readonly number[];
}

/** What the driller holds on the way: the feed's speed against the turning, or the weight. */
export type HeldInBeds =
  | {
      /** Advance per revolution [m]. */
      readonly advance: number;
    }
  | {
      /** Weight on bit [N]. */
      readonly weight: number;
    };

/** A way through beds: what is held, and where to look. */
export interface WayThroughBeds {
  readonly bit: BitInBeds;
  readonly held: HeldInBeds;
  /** Depths of the origin of the bit frame to look at [m]. */
  readonly depths: readonly number[];
  /** How many moments of a turn to look at where the beds dip [-]. */
  readonly moments?: number;
}

/** Moments of a turn that are looked at where beds dip [-]. */
const USUAL_MOMENTS = 8;

// As in the other solutions of this room: a solved figure is met to this share of itself.
const RESIDUAL_SHARE = 1e-9;
const FIRST_ADVANCE = 5e-4;
const SMALLEST_ADVANCE = 1e-12;
const LARGEST_ADVANCE = 1;
const WIDENING = 1.5;

/**
 * The bit at each of a row of depths, at a held advance or under a held weight.
 *
 * Steady at each depth: the hole has the shape that this advance would make, and the weight carries at once. Where beds
 * dip the forces change within the turn: weight and torque are means over it, side force and cutter forces its largest.
 *
 * @throws RangeError when what is held is not positive, or no advance carries the weight
 * @source (d) statics of the summed cutter forces, bed by bed
 */
export function throughBeds({ bit, held, depths, moments = USUAL_MOMENTS }: WayThroughBeds): StateInBeds[] {
  requirePositive({ ...held, moments });
  const { trace } = bit;
  const turns = bit.dipAngle > 0 && bit.beds.length > 1 ? Math.ceil(moments) : 1;
  const azimuths = Array.from({ length: turns }, (_, k) => (2 * Math.PI * k) / turns);
  const room: Room = { engagement: emptyEngagement(trace), loads: emptyBedLoads(trace) };
  if ("advance" in held) engage(trace, held.advance, room.engagement);
  let guess = FIRST_ADVANCE;
  return depths.map((depth) => {
    const advance = "advance" in held ? held.advance : advanceUnder(bit, depth, azimuths, held.weight, guess, room);
    guess = advance;
    return stateAt(bit, depth, azimuths, advance, room);
  });
}

/** Arrays that are filled again and again. */
interface Room {
  readonly engagement: Engagement;
  readonly loads: BedLoads;
}

function meanWeight(bit: BitInBeds, depth: number, azimuths: readonly number[], { engagement, loads }: Room): number {
  let sum = 0;
  for (const azimuth of azimuths) {
    bedLoads(bit, engagement, { depth, azimuth }, loads);
    for (let k = 0; k < loads.cuttingAxial.length; k++) sum += loads.cuttingAxial[k] + loads.contactAxial[k];
  }
  return sum / azimuths.length;
}

function advanceUnder(
  bit: BitInBeds,
  depth: number,
  azimuths: readonly number[],
  weight: number,
  guess: number,
  room: Room,
): number {
  const known = new Map<number, number>();
  const excess = (advance: number): number => {
    const before = known.get(advance);
    if (before !== undefined) return before;
    engage(bit.trace, advance, room.engagement);
    const value = meanWeight(bit, depth, azimuths, room) - weight;
    known.set(advance, value);
    return value;
  };
  let low = guess;
  let high = guess;
  while (excess(high) < 0) {
    low = high;
    high *= WIDENING;
    if (high > LARGEST_ADVANCE) throw new RangeError(`no advance reaches a weight of ${weight}`);
  }
  while (excess(low) > 0) {
    high = low;
    low /= WIDENING;
    if (low < SMALLEST_ADVANCE) throw new RangeError(`no advance is as light as a weight of ${weight}`);
  }
  return bracketedRoot({ f: excess, low, high, residual: RESIDUAL_SHARE * weight, width: 1e-15 * high });
}

function stateAt(
  bit: BitInBeds,
  depth: number,
  azimuths: readonly number[],
  advance: number,
  { engagement, loads }: Room,
): StateInBeds {
  if (engagement.advance !== advance) engage(bit.trace, advance, engagement);
  const cutterForces = new Array<number>(loads.torque.length).fill(0);
  let [weight, torque] = [0, 0];
  let side = sideForce({ x: 0, y: 0, weight: 0 });
  for (const azimuth of azimuths) {
    bedLoads(bit, engagement, { depth, azimuth }, loads);
    let [here, x, y] = [0, 0, 0];
    for (let k = 0; k < cutterForces.length; k++) {
      const axial = loads.cuttingAxial[k] + loads.contactAxial[k];
      here += axial;
      x += loads.lateralX[k];
      y += loads.lateralY[k];
      torque += loads.torque[k];
      cutterForces[k] = Math.max(cutterForces[k], Math.hypot(loads.tangential[k], axial, loads.radial[k]));
    }
    weight += here;
    const now = sideForce({ x, y, weight: here });
    if (now.force >= side.force) side = now;
  }
  return {
    depth,
    advance,
    weight: weight / azimuths.length,
    torque: torque / azimuths.length,
    lateralForce: side.force,
    lateralAzimuth: side.azimuth,
    lateralShare: side.share,
    cutterForces,
  };
}
