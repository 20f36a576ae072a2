import {
  derivedFrom,
  type Finding,
  given,
  groundKind,
  type ReturnAtDepth,
  type ReturnInBed,
  returnAtDepth,
  returnFindings,
  type Working,
} from "@bitwright/engine";
import type { ResolvedPorts, ResolvedTraveler } from "../document/resolved-traveler.ts";
import { chipOf, circuitOf } from "./circuit-of.ts";
import type { BedCut } from "./cut-station.ts";

/** The return through the beds, with what is to be said of it. */
export interface ReturnByBed {
  /** The return with the bit at the bottom of each bed, where it is slowest; empty on air, mist and foam. */
  readonly beds: readonly ReturnInBed[];
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** The bit at a depth, and what flows there. */
export interface ReturnQuestion {
  /** [m] */
  readonly depth: number;
  /** Size of the chips [m]. */
  readonly chipSize: number;
  /** Flow at the bit; what the pump gives with the bit at the end of its hole, where it gives least [m³/s]. */
  readonly flow: number;
}

/** The return with the bit at a depth; absent on air, mist and foam. */
export function returnAt(
  traveler: ResolvedTraveler,
  { depth, chipSize, flow }: ReturnQuestion,
): ReturnAtDepth | undefined {
  const gear = circuitOf(traveler, depth);
  if (!gear) return undefined;
  const shareLimit = gear.limits?.cuttingsShare;
  return returnAtDepth({
    ...gear,
    flow,
    chip: chipOf(chipSize),
    connectionTime: traveler.prices.connectionTime,
    ...(shareLimit === undefined ? {} : { shareLimit }),
  });
}

/** Size of the chips of a bed: its deepest cut [m]. */
export function chipSizeOf({ drilling }: BedCut): number {
  return drilling.cutters.reduce((most, { deepest }) => Math.max(most, deepest), 0);
}

/** The return with each bed's own chips. */
export function returnByBed(
  traveler: ResolvedTraveler,
  cuts: readonly BedCut[],
  { ports, flow }: Pick<ReturnQuestion, "flow"> & { readonly ports: ResolvedPorts },
): ReturnByBed {
  const beds = cuts.flatMap((cut): ReturnInBed[] => {
    const found = returnAt(traveler, { depth: cut.bed.bottom, chipSize: chipSizeOf(cut), flow });
    if (!found) return [];
    const sandy = ["sand", "sandstone", "gravel"].includes(groundKind(cut.bed));
    return [{ ...found, name: cut.bed.name, rate: cut.drilling.rate, sandy }];
  });
  if (beds.length === 0) return { beds, findings: [], working: [] };
  const { lumpSize } = traveler.inquiry.pump;
  return {
    beds,
    findings: returnFindings({
      beds,
      smallestPort: ports.diameter,
      ...(lumpSize === undefined ? {} : { largestLump: lumpSize }),
    }),
    working: beds.flatMap((bed) => workingOf(bed, traveler, flow)),
  };
}

function workingOf(bed: ReturnInBed, { inquiry, prices }: ResolvedTraveler, pumped: number): Working[] {
  const { name, slip, slowestAnnulus, rateCeiling, depth, bottomsUpTime, chipsUpTime, circulationTime } = bed;
  const flow = given("Q", "flow", pumped, "m³/s", "flow that the pump gives");
  const fall = given("Vs", "slip, the fastest of the forms", slip.speed.high, "m/s", "slip in the slowest annulus");
  const speed = given("V", "uphole speed at the slowest", slowestAnnulus.speed, "m/s", slowestAnnulus.name);
  const at = given("L", "depth of the bit", depth, "m", name);
  const source = derivedFrom("chips rise at the uphole speed less their slip, stretch by stretch of annulus");
  return [
    {
      name: `rate ceiling by cleaning, ${name}`,
      relation: "R = c (1 - Vs/V) Q/(π D²/4)",
      inputs: [
        flow,
        speed,
        given(
          "Vs",
          slip.form ? `slip, by ${slip.form}` : "slip, mean of Moore and Chien",
          slip.speed.mid,
          "m/s",
          "slip in the slowest annulus",
        ),
        given("D", "hole diameter", inquiry.bitHole.diameter, "m", "hole"),
      ],
      value: rateCeiling.mid,
      unit: "m/s",
      source: derivedFrom("Pigott's load of cuttings"),
    },
    {
      name: `bottoms up, ${name}`,
      relation: "t = Σ L A/Q",
      inputs: [flow, at],
      value: bottomsUpTime,
      unit: "s",
      source,
    },
    ...(chipsUpTime === undefined
      ? []
      : [
          {
            name: `chips up, ${name}`,
            relation: "t = Σ L/(V - Vs)",
            inputs: [at, speed, fall],
            value: chipsUpTime,
            unit: "s",
            source,
          },
        ]),
    ...(circulationTime === undefined
      ? []
      : [
          {
            name: `circulation before a connection, ${name}`,
            relation: "t = Σ L/(V - Vs) over the lowest Vs t_c of the annulus",
            inputs: [
              given("t_c", "time of a connection", prices.connectionTime, "s", "prices.connection"),
              speed,
              fall,
            ],
            value: circulationTime,
            unit: "s",
            source,
          },
        ]),
  ];
}
