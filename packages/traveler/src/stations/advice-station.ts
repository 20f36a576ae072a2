import {
  type AdvisedBed,
  advisedBedOf,
  type BedFit,
  type BitChoice,
  type CasingPoint,
  type ChooseBitPump,
  casingPoint,
  chooseBit,
  type Finding,
  fitOfBed,
  type Working,
} from "@bitwright/engine";
import type { ResolvedInquiry, ResolvedTraveler } from "../document/resolved-traveler.ts";
import { casingForHole } from "./casing-for-hole.ts";
import type { GroundStation } from "./ground-station.ts";

/** Is PDC the tool, where does it start, and which bit. */
export interface AdviceStation {
  /** The fit of every bed of the column, from the top down. */
  readonly fits: readonly BedFit[];
  /** What to case off over the whole well, and the stretches that are left for this bit in its hole. */
  readonly casing: CasingPoint;
  /** The bit the rules would choose for those stretches. */
  readonly bit: BitChoice;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** Advice for the hole that the bit drills. `pressureForBit` is what the pump can spend at the ports [Pa]. */
export function adviceStation(
  { inquiry }: ResolvedTraveler,
  ground: GroundStation,
  pressureForBit: number,
): AdviceStation {
  const { bitHole, fluid } = inquiry;
  const beds = ground.beds.map(advisedBedOf);
  const fits = beds.map(fitOfBed);
  const casing = casingForHole(casingPoint({ fits, from: 0, to: deepest(beds, bitHole.to) }), bitHole);
  const drilled = casing.bitIntervals.length > 0 ? casing.bitIntervals : [{ top: bitHole.from, bottom: bitHole.to }];
  const bit = chooseBit({
    holeDiameter: bitHole.diameter,
    beds,
    from: drilled[0].top,
    to: drilled[drilled.length - 1].bottom,
    fluid: fluid.kind,
    density: fluid.density,
    pump: pumpForBit(inquiry, pressureForBit),
  });
  const inHole = fits.filter(({ bed }) => bed.bottom > bitHole.from && bed.top < bitHole.to);
  return {
    fits,
    casing,
    bit,
    findings: [...casing.findings, ...inHole.flatMap(({ findings }) => findings), ...bit.findings],
    working: [...casing.working, ...bit.working],
  };
}

/** What the pump gives the bit. */
export function pumpForBit({ pump }: Pick<ResolvedInquiry, "pump">, pressureForBit: number): ChooseBitPump {
  return { flow: pump.flow, pressureForBit, ...(pump.lumpSize === undefined ? {} : { lumpSize: pump.lumpSize }) };
}

function deepest(beds: readonly AdvisedBed[], holeEnd: number): number {
  return beds.reduce((depth, { bottom }) => Math.max(depth, bottom), holeEnd);
}
