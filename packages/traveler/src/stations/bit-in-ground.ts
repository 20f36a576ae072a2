import type { CuttingKernel } from "@bitwright/engine";
import type { ResolvedTraveler } from "../document/resolved-traveler.ts";
import type { AdviceStation } from "./advice-station.ts";
import { bedsInHole } from "./bed-in-hole.ts";
import { type BitStation, bitStation } from "./bit-station.ts";
import { type CutStation, cutStation } from "./cut-station.ts";
import { fastestChip } from "./fastest-chip.ts";
import { ceilingOf, cleaningRate, type FlowStation, flowStation, USUAL_CHIP_SIZE, washedBit } from "./flow-station.ts";
import type { GroundStation } from "./ground-station.ts";
import { coolingOf } from "./heat-curves.ts";

/** A bit, what it does in its ground, and the flow through it. */
export interface BitInGround {
  readonly bit: BitStation;
  readonly cut: CutStation;
  readonly flow: FlowStation;
}

/** What the bit is laid out for, and what runs the loops. */
export interface BitInGroundQuestion {
  readonly ground: GroundStation;
  readonly advice: AdviceStation;
  /** No figure depends on it. */
  readonly kernel: CuttingKernel | undefined;
}

/**
 * The middle of the pipeline: the traveler's bit laid out, cutting its beds under the flow it has. A job worked up goes this
 * way once, a study of other bits for the same job goes it for each of them.
 *
 * The flow is looked at first for the rate that it can clean, which limits the cut, again where the chips come out larger than
 * reckoned with, and at last at the rate the cut makes.
 */
export function bitInGround(traveler: ResolvedTraveler, { ground, advice, kernel }: BitInGroundQuestion): BitInGround {
  const bit = bitStation(traveler, advice, kernel);
  const drilled = bedsInHole(ground, advice);
  const washed = washedBit(advice, bit);
  const atFirst = flowStation(traveler, { ...washed, chipSize: USUAL_CHIP_SIZE });
  const films = coolingOf(traveler, { bit, flow: atFirst });
  const cutUnder = (ceiling: number | undefined) =>
    cutStation(traveler, {
      layout: bit.layout,
      exposure: bit.review.body.leastExposure,
      films,
      beds: drilled,
      known: bit.findings,
      kernel,
      ...(ceiling === undefined ? {} : { cleaningRate: ceiling }),
    });
  let cut = cutUnder(ceilingOf(atFirst));
  // A deep cut makes larger chips than were reckoned with, which fall faster: where they lower the ceiling, it counts.
  for (let looks = 0; looks < CHIP_LOOKS; looks++) {
    const ceiling = cleaningRate(traveler, washed, fastestChip(cut.beds).chipSize);
    if (ceiling === undefined || !cut.beds.some(({ rate }) => rate.high > ceiling)) break;
    cut = cutUnder(ceiling);
  }
  return { bit, cut, flow: flowStation(traveler, { ...washed, ...fastestChip(cut.beds) }, cut.beds) };
}

/** Looks at the chips that a lower ceiling makes; they grow again where the lower rate is turned more slowly [-]. */
const CHIP_LOOKS = 4;
