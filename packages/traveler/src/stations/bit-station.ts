import { type BitLayout, coverage, type Finding, generateLayout, pocketWalls, type Working } from "@bitwright/engine";
import type { ResolvedPorts, ResolvedTraveler } from "../document/resolved-traveler.ts";
import type { AdviceStation } from "./advice-station.ts";
import { bitOrder } from "./bit-order.ts";

export interface BitStation {
  readonly layout: BitLayout;
  readonly inWords: string;
  readonly departures: readonly string[];
  readonly ports: ResolvedPorts;
  readonly slotArea?: number;
  readonly leastExposure: number;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

export function bitStation(traveler: ResolvedTraveler, advice: AdviceStation): BitStation {
  const asked = traveler.bit;
  if (asked.kind !== "spec") throw new Error("todo");
  const order = bitOrder(asked, advice.bit, traveler);
  const made = generateLayout(order.spec);
  const cover = coverage(made.layout);
  const walls = pocketWalls({ layout: made.layout, material: order.spec.material });
  return {
    layout: made.layout,
    inWords: "bit",
    departures: order.departures,
    ports: order.ports,
    leastExposure: 0.5 * order.spec.cutter.faceDiameter,
    findings: [...made.findings, ...cover.findings, ...walls.findings],
    working: [...cover.working, ...walls.working],
  };
}
