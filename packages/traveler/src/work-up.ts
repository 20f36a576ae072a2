import { gravestFirst } from "@bitwright/engine";
import type { ReadResult } from "./document/index.ts";
import { adviceStation } from "./stations/advice-station.ts";
import { bedsInHole } from "./stations/bed-in-hole.ts";
import { bitStation } from "./stations/bit-station.ts";
import { cardStation } from "./stations/card-station.ts";
import { cutStation } from "./stations/cut-station.ts";
import { cleaningRate, flowStation, pressureForBit } from "./stations/flow-station.ts";
import { groundStation } from "./stations/ground-station.ts";
import { stringStation } from "./stations/string-station.ts";
import { type StationFinding, type StationName, WORKUP_FORMAT, WORKUP_VERSION, type Workup } from "./workup.ts";

/**
 * The one pipeline: a traveler that was read without problems → the job worked up.
 *
 * ground → advice → bit → cut → string → flow → card, each a pure function of what came before. The flow is looked at
 * twice: once for the rate that it can clean, which limits the cut, and once at the rate the cut makes.
 */
export function workUp({ resolved, assumed }: Pick<ReadResult, "resolved" | "assumed">): Workup {
  const ground = groundStation(resolved);
  const advice = adviceStation(resolved, ground, pressureForBit(resolved));
  const bit = bitStation(resolved, advice);
  const drilled = bedsInHole(ground, advice);
  const { ports, slotArea } = bit;
  const sticky = advice.bit.mix.stickyShare > 0;
  const washed = { ports, stickyGround: sticky, ...(slotArea === undefined ? {} : { slotArea }) };
  const ceiling = cleaningRate(resolved, washed);
  const cut = cutStation(resolved, {
    layout: bit.layout,
    exposure: bit.leastExposure,
    beds: drilled,
    ...(ceiling === undefined ? {} : { cleaningRate: ceiling }),
  });
  const string = stringStation(resolved, cut.beds);
  const flow = flowStation(resolved, { ...washed, ...fastestChip(cut.beds) });
  const byStation: readonly [StationName, readonly StationFinding[]][] = [];
  const findings = gravestFirst([
    ...named("inquiry", resolved.findings),
    ...named("ground", ground.findings),
    ...ground.beds.filter(({ bed }) => bed.bottom > resolved.inquiry.bitHole.from).flatMap((bed) => named("ground", bed.findings)),
    ...named("advice", advice.findings),
    ...named("bit", bit.findings),
    ...named("cut", cut.findings),
    ...named("string", string?.findings ?? []),
    ...named("flow", flow.findings),
  ]);
  const card = cardStation(resolved, { advice, bit, cut, flow, findings, ...(string ? { string } : {}) });
  return {
    format: WORKUP_FORMAT,
    version: WORKUP_VERSION,
    inquiry: resolved,
    assumed,
    ground,
    advice,
    bit,
    cut,
    ...(string ? { string } : {}),
    flow,
    card,
    findings,
  };
}
