import { compiledKernel, type Finding, gravestFirst } from "@bitwright/engine";
import type { ParsedTraveler } from "./document/index.ts";
import { adviceStation } from "./stations/advice-station.ts";
import { bitInGround } from "./stations/bit-in-ground.ts";
import { cardStation } from "./stations/card-station.ts";
import { pressureForBit } from "./stations/flow-station.ts";
import { groundStation } from "./stations/ground-station.ts";
import { inquiryFindings } from "./stations/inquiry-station.ts";
import { lifeStation } from "./stations/life-station.ts";
import { powerStation } from "./stations/power-station.ts";
import { stabilityStation } from "./stations/stability-station.ts";
import { stringStation } from "./stations/string-station.ts";
import { type StationFinding, type StationName, WORKUP_FORMAT, WORKUP_VERSION, type Workup } from "./workup.ts";

/** A traveler that was read without problems. */
export type SoundTraveler = Pick<Extract<ParsedTraveler, { ok: true }>, "resolved" | "assumed">;

/**
 * The one pipeline: a traveler that was read without problems → the job worked up.
 *
 * ground → advice → bit → cut, flow → string → stability → power → life → card, each a pure function of what came before.
 */
export function workUp({ resolved, assumed }: SoundTraveler): Workup {
  const ground = groundStation(resolved);
  const advice = adviceStation(resolved, ground, pressureForBit(resolved));
  const kernel = compiledKernel();
  const { bit, cut, flow } = bitInGround(resolved, { ground, advice, kernel });
  const { bitHole } = resolved.inquiry;
  const string = stringStation(resolved, cut.beds);
  const stability = stabilityStation(resolved, { bit, cut });
  const power = powerStation(resolved, { cut, flow, ...(string ? { string } : {}) });
  const life = lifeStation(resolved, { advice, bit, cut, flow }, { kernel, curves: false });
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
    ...named("power", power?.findings ?? []),
    ...named("life", life.findings),
  ]);
  const card = cardStation(resolved, {
    advice,
    bit,
    cut,
    flow,
    findings,
    ...(string ? { string } : {}),
    ...(power ? { power } : {}),
  });
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
    ...(power ? { power } : {}),
    life,
    card,
    findings,
  };
}

function named(station: StationName, findings: readonly Finding[]): StationFinding[] {
  return findings.map((finding) => ({ ...finding, station }));
}
