import { bracketedRoot, requirePositive } from "../../quantity/index.ts";
import { type BitInRock, type DrilledState, drillAtAdvance, drillAtWeight } from "../drilled-state.ts";
import { bitFrictionNumber } from "../specific-energy.ts";
import type { WingLands } from "./wing-lands.ts";
import { type WingLoads, wingLoads } from "./wing-rubbing.ts";

/** A bit of which cutters and wings together carry the weight. */
export interface RubbingState {
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Weight on bit, cutters and wings [N]. */
  readonly weight: number;
  /** Torque, cutters and wings [N·m]. */
  readonly torque: number;
  /** μ_b of the whole [-]. */
  readonly frictionNumber: number;
  readonly cutters: DrilledState;
  readonly wings: WingLoads;
}

/** A bit in rock with the lands of its wings. */
export interface RubbingBit extends BitInRock {
  readonly lands: WingLands;
}

/**
 * Weight and torque at an advance, with what the wings carry once their exposure is used up.
 *
 * @throws RangeError when the advance is not positive
 * @source (d) sum of `drillAtAdvance` and `wingLoads`
 */
export function rubbingAtAdvance(
  { trace, response, lands }: RubbingBit,
  /** Advance per revolution [m]. */
  advance: number,
): RubbingState {
  requirePositive({ advance });
  const cutters = drillAtAdvance({ trace, response }, advance);
  const wings = wingLoads(lands, response, advance);
  const weight = cutters.bit.weight + wings.weight;
  const torque = cutters.bit.torque + wings.torque;
  const { holeRadius } = trace;
  return { advance, weight, torque, frictionNumber: bitFrictionNumber({ weight, torque, holeRadius }), cutters, wings };
}

const RESIDUAL_SHARE = 1e-9;

/**
 * The state in which cutters and wings carry a weight together: never more advance than the cutters alone would take.
 *
 * @throws RangeError when the weight is not positive, or no advance carries it
 * @source (d) root of weight(advance), which rises
 */
export function rubbingAtWeight(
  bit: RubbingBit,
  /** Weight on bit [N]. */
  weight: number,
): RubbingState {
  requirePositive({ weight });
  const alone = drillAtWeight(bit, weight).advance;
  const excess = (advance: number) => rubbingAtAdvance(bit, advance).weight - weight;
  let low = alone;
  while (excess(low) > RESIDUAL_SHARE * weight) low /= 2;
  const advance = bracketedRoot({ f: excess, low, high: alone, residual: RESIDUAL_SHARE * weight });
  return rubbingAtAdvance(bit, advance);
}
