import { commonPractice, DEFAULT_WATER_LEVEL } from "@bitwright/engine";
import { present } from "../present.ts";
import type { ResolvedInquiry, ResolvedTraveler } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import { resolveBit } from "./bit.ts";
import { resolveCompressor } from "./compressor.ts";
import { knownCutters, resolveOwnCutters } from "./cutters.ts";
import { resolveFluid } from "./fluid.ts";
import { gearRemarks } from "./gear-remarks.ts";
import { resolveGround } from "./ground.ts";
import { type ResolvedHoles, resolveHoles } from "./holes.ts";
import { resolveOverrides } from "./overrides.ts";
import { resolveCollars, resolvePipe } from "./pipe.ts";
import { resolvePrices } from "./prices.ts";
import { resolvePump } from "./pump.ts";
import type { ReadingNotes } from "./reading-notes.ts";
import { resolveRig } from "./rig.ts";
import { knownRocks, resolveOwnRocks } from "./rocks.ts";
import { washoutsOf } from "./washouts.ts";
import { weightOf } from "./weight.ts";

const NOT_GIVEN = "not given";

/** The traveler in SI with its gaps filled; nothing where the notes hold a problem. */
export function resolveTraveler(traveler: ReadTraveler, notes: ReadingNotes): ResolvedTraveler | undefined {
  const ownRocks = resolveOwnRocks(traveler.lists?.rocks ?? [], notes);
  const ownCutters = resolveOwnCutters(traveler.lists?.cutters ?? []);
  const rocks = knownRocks(ownRocks);
  const holes = resolveHoles(traveler, notes);
  const inquiry = holes && resolveInquiry(traveler, holes, notes);
  const ground = resolveGround({ traveler, rocks, bitHole: holes?.bitHole }, notes);
  // Where the holes are wrong the bit is still looked at, against the hole it was drawn for or any.
  const diameter = holes?.bitDiameter ?? traveler.inquiry.holes[0]?.diameter.si ?? 0;
  const cutters = knownCutters(ownCutters);
  const bit = resolveBit({ bit: traveler.bit, diameter, cutters }, notes);
  const prices = resolvePrices({ traveler, cutters, bitDiameter: bit?.diameter ?? diameter }, notes);
  const overrides = resolveOverrides({ traveler, rocks, bitDiameter: diameter }, notes);
  if (!inquiry || !bit || notes.problems.length > 0) return undefined;
  for (const remark of gearRemarks({ inquiry, overrides })) notes.remark(remark);
  const { job } = traveler;
  return {
    job: {
      name: job.name,
      customer: job.customer ?? NOT_GIVEN,
      shop: job.shop ?? NOT_GIVEN,
      currency: job.currency ?? "USD",
      ...present({ number: job.number, date: job.date, notes: job.notes }),
    },
    inquiry,
    ground,
    bit,
    prices,
    overrides,
    lists: { rocks: ownRocks, cutters: ownCutters },
    findings: notes.findings,
  };
}

function resolveInquiry(
  traveler: ReadTraveler,
  { holes, bitHole, depth, bitDiameter }: ResolvedHoles,
  notes: ReadingNotes,
): ResolvedInquiry | undefined {
  const { inquiry } = traveler;
  const gear = { traveler, holeDiameter: bitHole.diameter };
  const rig = resolveRig(gear, notes);
  const pump = resolvePump(gear, notes);
  const pipe = resolvePipe({ traveler, bitHole }, notes);
  const collars = resolveCollars(inquiry.collars ?? [], bitHole, notes);
  const fluid = resolveFluid(traveler, notes);
  const waterLevel =
    inquiry.waterLevel?.si ??
    notes.assumeNumber({
      field: "inquiry.waterLevel",
      kind: "depth",
      si: DEFAULT_WATER_LEVEL,
      why: "a usual depth for house wells; it changes the pressure on the rock a little",
      source: commonPractice(),
    });
  const washouts = washoutsOf({ given: inquiry.washouts ?? [], bitHole }, notes);
  if (!rig || !pump || !pipe || !fluid || !washouts) return undefined;
  const { presentTool, targets, compressor } = inquiry;
  return {
    holes,
    bitHole,
    ...(washouts.length > 0 ? { washouts } : {}),
    depth,
    rig,
    pump,
    pipe,
    collars,
    fluid,
    waterLevel,
    altitude: inquiry.altitude?.si ?? assumedAltitude(compressor !== undefined, notes),
    targets: present({
      weight: weightOf(targets?.weight, bitDiameter),
      rotarySpeed: targets?.rotarySpeed?.si,
      rate: targets?.rate?.si,
    }),
    ...(compressor ? { compressor: resolveCompressor(compressor, notes) } : {}),
    ...(presentTool
      ? {
          presentTool: { kind: presentTool.kind, ...present({ rate: presentTool.rate?.si, notes: presentTool.notes }) },
        }
      : {}),
  };
}

/** Height matters only to air. */
function assumedAltitude(air: boolean, notes: ReadingNotes): number {
  if (!air) return 0;
  const why = "a compressor gives less air the higher it stands";
  return notes.assumeNumber({ field: "inquiry.altitude", kind: "depth", si: 0, why, source: commonPractice() });
}
