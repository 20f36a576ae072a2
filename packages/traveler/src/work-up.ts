import { compiledKernel, type Finding, gravestFirst } from "@bitwright/engine";
import type { ParsedTraveler } from "./document/index.ts";
import { adviceStation } from "./stations/advice-station.ts";
import { bedsInHole } from "./stations/bed-in-hole.ts";
import { bitStation } from "./stations/bit-station.ts";
import { cardStation } from "./stations/card-station.ts";
import { type BedCut, cutStation } from "./stations/cut-station.ts";
import { cleaningRate, flowStation, pressureForBit, USUAL_CHIP_SIZE } from "./stations/flow-station.ts";
import { groundStation } from "./stations/ground-station.ts";
import { inquiryFindings } from "./stations/inquiry-station.ts";
import { lifeStation } from "./stations/life-station.ts";
import { stabilityStation } from "./stations/stability-station.ts";
import { stringStation } from "./stations/string-station.ts";
import { type StationFinding, type StationName, WORKUP_FORMAT, WORKUP_VERSION, type Workup } from "./workup.ts";

/** A traveler that was read without problems. */
export type SoundTraveler = Pick<Extract<ParsedTraveler, { ok: true }>, "resolved" | "assumed">;

/**
 * The one pipeline: a traveler that was read without problems → the job worked up.
 *
 * ground → advice → bit → cut → string → stability → flow → life → card, each a pure function of what came before. The flow is looked at
 * first for the rate that it can clean, which limits the cut, again where the chips come out larger than reckoned with,
 * and at last at the rate the cut makes.
 */
export function workUp({ resolved, assumed }: SoundTraveler): Workup {
  const ground = groundStation(resolved);
  const advice = adviceStation(resolved, ground, pressureForBit(resolved));
  const kernel = compiledKernel();
  const bit = bitStation(resolved, advice, kernel);
  const drilled = bedsInHole(ground, advice);
  const { bitHole } = resolved.inquiry;
  const { ports } = bit;
  const { slotArea, leastExposure } = bit.review.body;
  const sticky = advice.bit.mix.stickyShare > 0;
  const washed = { ports, stickyGround: sticky, ...(slotArea === undefined ? {} : { slotArea }) };
  const cutUnder = (ceiling: number | undefined) =>
    cutStation(resolved, {
      layout: bit.layout,
      exposure: leastExposure,
      beds: drilled,
      known: bit.findings,
      kernel,
      ...(ceiling === undefined ? {} : { cleaningRate: ceiling }),
    });
  let cut = cutUnder(cleaningRate(resolved, washed));
  // A deep cut makes larger chips than were reckoned with, which fall faster: where they lower the ceiling, it counts.
  for (let looks = 0; looks < CHIP_LOOKS; looks++) {
    const ceiling = cleaningRate(resolved, washed, fastestChip(cut.beds).chipSize);
    if (ceiling === undefined || !cut.beds.some(({ rate }) => rate.high > ceiling)) break;
    cut = cutUnder(ceiling);
  }
  const string = stringStation(resolved, cut.beds);
  const stability = stabilityStation(resolved, { bit, cut });
  const flow = flowStation(resolved, { ...washed, ...fastestChip(cut.beds) });
  const life = lifeStation(resolved, { advice, bit, cut, flow }, { kernel });
  const findings = gravestFirst([
    ...named("inquiry", inquiryFindings(resolved, cut.beds)),
    ...named("ground", ground.findings),
    ...ground.beds
      .filter(({ bed }) => bed.bottom > bitHole.from && bed.top < bitHole.to)
      .flatMap((bed) => named("ground", bed.findings)),
    ...named("advice", advice.findings),
    ...named("bit", bit.findings),
    ...named("cut", cut.findings),
    ...named("string", string?.findings ?? []),
    ...named("stability", stability.findings),
    ...named("flow", flow.findings),
    ...named("life", life.findings),
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
    stability,
    flow,
    life,
    card,
    findings,
  };
}

/** Looks at the chips that a lower ceiling makes; they grow again where the lower rate is turned more slowly [-]. */
const CHIP_LOOKS = 4;

function named(station: StationName, findings: readonly Finding[]): StationFinding[] {
  return findings.map((finding) => ({ ...finding, station }));
}

/** Rate and chip size of the bed that drills fastest: it loads the return most. */
function fastestChip(beds: readonly BedCut[]): { chipSize: number; rate?: number } {
  const fastest = beds.reduce<BedCut | undefined>(
    (most, bed) => (most === undefined || bed.drilling.rate > most.drilling.rate ? bed : most),
    undefined,
  );
  if (!fastest) return { chipSize: USUAL_CHIP_SIZE };
  const deepest = fastest.drilling.cutters.reduce((most, cutter) => Math.max(most, cutter.deepest), 0);
  return { chipSize: deepest, rate: fastest.drilling.rate };
}
