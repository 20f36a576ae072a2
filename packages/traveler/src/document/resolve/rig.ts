import { commonPractice } from "@bitwright/engine";
import type { Quantity, QuantityKind } from "../../quantity/index.ts";
import { oneOf } from "../nearest-names.ts";
import type { ResolvedPump, ResolvedRig } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import { type ListedPump, type ListedRig, pumpList, rigList } from "./gear-lists.ts";
import type { ReadingNotes } from "./reading-notes.ts";

type GivenRig = NonNullable<ReadTraveler["inquiry"]["rig"]>;
type GivenPump = NonNullable<ReadTraveler["inquiry"]["pump"]>;

/** Holes up to this are drilled with a small rig [m]: 5 in, loop holes; (c) no source. */
const SMALL_RIG_HOLE = 5 * 0.0254;
/** Holes from this on are drilled with a large rig [m]: 8 in; (c) no source. */
const LARGE_RIG_HOLE = 8 * 0.0254;
/** Hose, swivel and kelly of a water-well rig as drill pipe of the same loss [m]: 75 ft; (c) 50 to 100 ft. */
const USUAL_SURFACE_GEAR = 22.86;

/** Which class of the lists a job usually has. */
function classFor(holeDiameter: number): "small" | "medium" | "large" {
  if (holeDiameter <= SMALL_RIG_HOLE) return "small";
  return holeDiameter < LARGE_RIG_HOLE ? "medium" : "large";
}

/** Picks a preset among the shop's own and the program's; refuses a name that is in neither. */
function presetOf<Own extends { readonly id: string }, Listed extends { readonly id: string }>(
  question: { preset: string | undefined; own: readonly Own[]; listed: readonly Listed[]; field: string; what: string },
  notes: ReadingNotes,
): { readonly own?: Own; readonly listed?: Listed } | undefined {
  const { preset, field, what } = question;
  if (preset === undefined) return {};
  const own = question.own.find(({ id }) => id === preset);
  if (own) return { own };
  const listed = question.listed.find(({ id }) => id === preset);
  if (listed) return { listed };
  const ids = [...question.own, ...question.listed].map(({ id }) => id);
  const wrong = `got "${preset}", which is no ${what} of the list`;
  notes.refuse({ field, got: `"${preset}"`, wrong, expected: oneOf(preset, ids) });
  return undefined;
}

interface GearQuestion {
  readonly traveler: ReadTraveler;
  /** Diameter of the hole the bit drills [m]. */
  readonly holeDiameter: number;
}

/** The rig, its gaps filled from the preset or from the class usual for the hole. */
export function resolveRig({ traveler, holeDiameter }: GearQuestion, notes: ReadingNotes): ResolvedRig | undefined {
  const given: GivenRig = traveler.inquiry.rig ?? {};
  const own = traveler.lists?.rigs ?? [];
  const field = "inquiry.rig.preset";
  const picked = presetOf({ preset: given.preset, own, listed: rigList, field, what: "rig" }, notes);
  if (!picked) return undefined;
  const entered: GivenRig = { ...picked.own, ...given };
  const base = picked.listed ?? rigOfClass(classFor(holeDiameter));
  const take = (
    name: keyof ListedRig & keyof GivenRig & string,
    kind: QuantityKind,
    quantity: Quantity | undefined,
  ) => {
    const si = Number(base[name]);
    if (quantity) return quantity.si;
    if (picked.listed) return si;
    const why = `that of a ${base.name}, usual for a hole of this size; the rig's own plate tells the true one`;
    return notes.assumeNumber({ field: `inquiry.rig.${name}`, kind, si, why, source: base.source });
  };
  const speeds = entered.rotarySpeeds?.map(({ si }) => si).sort((a, b) => a - b);
  const slowest = speeds?.[0] ?? take("rotarySpeedMin", "rotary speed", entered.rotarySpeedMin);
  const fastest = speeds?.at(-1) ?? take("rotarySpeedMax", "rotary speed", entered.rotarySpeedMax);
  if (slowest > fastest) {
    const got = entered.rotarySpeedMin?.text ?? "the usual slowest speed";
    const limit = entered.rotarySpeedMax?.text ?? "the usual fastest speed";
    notes.refuse({
      field: "inquiry.rig.rotarySpeedMin",
      got: `"${got}"`,
      wrong: `got "${got}", which is over the fastest speed of ${limit}`,
      expected: `give a speed up to ${limit}`,
    });
    return undefined;
  }
  const optional = {
    ...(entered.power ? { power: entered.power.si } : {}),
    ...(entered.gaugeForceFactor ? { gaugeForceFactor: entered.gaugeForceFactor.si } : {}),
    ...(speeds ? { rotarySpeeds: speeds } : {}),
    ...(given.preset === undefined ? {} : { preset: given.preset }),
  };
  return {
    ...optional,
    name: entered.name ?? base.name,
    pullDown: take("pullDown", "force", entered.pullDown),
    hoist: take("hoist", "force", entered.hoist),
    topHeadWeight: take("topHeadWeight", "force", entered.topHeadWeight),
    torque: take("torque", "torque", entered.torque),
    rotarySpeedMin: slowest,
    rotarySpeedMax: fastest,
    feedGaugeZero: entered.feedGaugeZero?.si ?? assumedGaugeZero(entered, notes),
    drag:
      entered.drag?.si ??
      notes.assumeNumber({
        field: "inquiry.rig.drag",
        kind: "force",
        si: 0,
        why: "a straight hole drags little; lift the string off bottom and lower it to see the true one",
        source: commonPractice(),
      }),
  };
}

function rigOfClass(name: string): ListedRig {
  const found = rigList.find(({ id }) => id === name);
  if (!found) throw new RangeError(`the list of rigs has no class ${name}`);
  return found;
}

/** The zero of the feed gauge matters only where its factor is known. */
function assumedGaugeZero({ gaugeForceFactor }: GivenRig, notes: ReadingNotes): number {
  if (!gaugeForceFactor) return 0;
  return notes.assumeNumber({
    field: "inquiry.rig.feedGaugeZero",
    kind: "pressure",
    si: 0,
    why: "read the gauge while the empty feed just moves to have the true one",
    source: commonPractice(),
  });
}

/** The mud pump, its gaps filled from the preset or from the class usual for the hole. */
export function resolvePump({ traveler, holeDiameter }: GearQuestion, notes: ReadingNotes): ResolvedPump | undefined {
  const given: GivenPump = traveler.inquiry.pump ?? {};
  const own = traveler.lists?.pumps ?? [];
  const field = "inquiry.pump.preset";
  const picked = presetOf({ preset: given.preset, own, listed: pumpList, field, what: "pump" }, notes);
  if (!picked) return undefined;
  const entered: GivenPump = { ...picked.own, ...given };
  const base = picked.listed ?? pumpOfClass(classFor(holeDiameter));
  const take = (name: "flow" | "pressureRating", kind: QuantityKind, quantity: Quantity | undefined) => {
    if (quantity) return quantity.si;
    if (picked.listed) return base[name];
    const why = `that of a ${base.name}, usual for a hole of this size; time the filling of a tank to have the true one`;
    return notes.assumeNumber({ field: `inquiry.pump.${name}`, kind, si: base[name], why, source: base.source });
  };
  return {
    ...(given.preset === undefined ? {} : { preset: given.preset }),
    name: entered.name ?? base.name,
    flow: take("flow", "flow", entered.flow),
    pressureRating: take("pressureRating", "pressure", entered.pressureRating),
    ...(entered.lumpSize ? { lumpSize: entered.lumpSize.si } : {}),
    surfaceGear:
      entered.surfaceGear?.si ??
      notes.assumeNumber({
        field: "inquiry.pump.surfaceGear",
        kind: "depth",
        si: USUAL_SURFACE_GEAR,
        why: "hose, swivel and kelly of a water-well rig lose about as much as 50 to 100 ft of drill pipe",
        source: commonPractice(),
      }),
  };
}

function pumpOfClass(name: string): ListedPump {
  const found = pumpList.find(({ id }) => id === name) ?? pumpList.at(-1);
  if (!found) throw new RangeError(`the list of pumps has no class ${name}`);
  return found;
}
