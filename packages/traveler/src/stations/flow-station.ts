import {
  type Circuit,
  circuit,
  type Finding,
  type FlowHold,
  type FoamNeed,
  USUAL_DISCHARGE_COEFFICIENT,
  type Working,
} from "@bitwright/engine";
import type { ResolvedPorts, ResolvedTraveler } from "../document/resolved-traveler.ts";
import type { AdviceStation } from "./advice-station.ts";
import type { BitStation } from "./bit-station.ts";
import { circuitGiven } from "./circuit-given.ts";
import { chipOf, circuitOf, circuitThrough, type FlowQuestion } from "./circuit-of.ts";
import type { BedCut } from "./cut-station.ts";
import { type FunnelSpread, funnelSpread } from "./funnel-spread.ts";
import { gasNeed } from "./gas-need.ts";
import { pumpWorking } from "./pump-working.ts";
import { type ReturnByBed, returnByBed } from "./return-by-bed.ts";

/** Is the bit cooled and the hole cleaned. */
export interface FlowStation {
  /** Flow at the bit that everything is worked with: what the pump gives, or what is asked where nothing moves [m³/s]. */
  readonly flow: number;
  /** What holds the pump to that flow; absent on air, mist and foam. */
  readonly heldBy?: FlowHold;
  readonly ports: ResolvedPorts;
  /** The circuit of a liquid; absent on air, mist and foam. */
  readonly circuit?: Circuit;
  /** How far the circuit may be off; only where the mud was timed through the funnel. */
  readonly byFunnel?: FunnelSpread;
  /** Least free air at the site that lifts the chips from the end of the hole; only on air, mist and foam [m³/s]. */
  readonly leastAirFlow?: number;
  /** The foam that this air makes; only on foam. */
  readonly foam?: FoamNeed;
  /** The return with the bit at the bottom of each bed; empty on air, mist and foam. */
  readonly beds: ReturnByBed["beds"];
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** The bit as the fluid finds it, whatever it cuts. */
export type WashedBit = Pick<FlowQuestion, "ports" | "slotArea" | "stickyGround">;

/** The ports and slots of a bit, with whether its ground balls. */
export function washedBit(advice: AdviceStation, { ports, review }: BitStation): WashedBit {
  const { slotArea } = review.body;
  return { ports, stickyGround: advice.bit.mix.stickyShare > 0, ...(slotArea === undefined ? {} : { slotArea }) };
}

/** Works the flow up with the bit at the end of its hole, where losses are greatest, and the return through each bed. */
export function flowStation(
  traveler: ResolvedTraveler,
  question: FlowQuestion,
  cuts: readonly BedCut[] = [],
): FlowStation {
  const gear = circuitOf(traveler);
  const { ports, rate } = question;
  if (!gear) {
    const flow = traveler.overrides.flow ?? traveler.inquiry.pump.flow;
    return { flow, ports, beds: [], ...gasNeed(traveler, rate) };
  }
  const way = circuitThrough(gear, question);
  const { circuit: through, asked, heldBy, ...given } = circuitGiven(way);
  const flow = given.flow > 0 ? given.flow : asked;
  const byFunnel = funnelSpread({ ...way, pump: { ...way.pump, flow } }, traveler.inquiry.fluid);
  const { beds, findings, working } = returnByBed(traveler, cuts, { ports, flow });
  return {
    flow,
    heldBy,
    ports,
    circuit: through,
    ...(byFunnel ? { byFunnel } : {}),
    beds,
    findings: [...through.findings, ...(byFunnel?.findings ?? []), ...findings],
    working: [...pumpWorking(traveler.inquiry.pump), ...(byFunnel?.working ?? []), ...through.working, ...working],
  };
}

/** The rate at which the cuttings reach their limit, by the middle of the forms of slip; absent without a liquid [m/s]. */
export function cleaningRate(
  traveler: ResolvedTraveler,
  washed: WashedBit,
  chipSize = USUAL_CHIP_SIZE,
): number | undefined {
  return ceilingOf(flowStation(traveler, { ...washed, chipSize }));
}

/** The same of a flow that is worked up already. */
export function ceilingOf({ circuit: through }: Pick<FlowStation, "circuit">): number | undefined {
  const ceiling = through?.cleaning.rateCeiling.mid;
  // Where no chip rises nothing is cleaned: the rate is held to next to nothing and the flow's own remark says stop.
  return ceiling === undefined ? undefined : Math.max(ceiling, NO_RATE);
}

/** Whether a liquid is circulated, which is what the circuit is worked out for. */
export function isLiquid(traveler: ResolvedTraveler): boolean {
  return circuitOf(traveler) !== undefined;
}

/** Pressure that the pump has left for the ports once pipe and hole have taken theirs [Pa]. */
export function pressureForBit(traveler: ResolvedTraveler): number {
  const { pressureRating } = traveler.inquiry.pump;
  const gear = circuitOf(traveler);
  if (!gear) return pressureRating;
  const trial = circuit({
    ...gear,
    ports: { diameters: [traveler.inquiry.pipe.bore], dischargeCoefficient: USUAL_DISCHARGE_COEFFICIENT },
    chip: chipOf(USUAL_CHIP_SIZE),
  });
  const elsewhere = trial.pumpPressure - trial.ports.pressureDrop;
  return Math.max(LEAST_SHARE_FOR_BIT * pressureRating, pressureRating - elsewhere);
}

/**
 * Size of chip before the cut is known [m].
 *
 * @source (c) common practice, no source: an eighth of an inch
 */
export const USUAL_CHIP_SIZE = 3.175e-3;
/** A rate that is none: a foot in a month [m/s]. */
const NO_RATE = 1e-7;
/** A pump whose pressure is used up before the bit still gives the ports something to be chosen by [-]. */
const LEAST_SHARE_FOR_BIT = 0.05;
