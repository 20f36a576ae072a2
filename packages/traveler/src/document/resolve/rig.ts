import { commonPractice } from "@bitwright/engine";
import type { Quantity, QuantityKind } from "../../quantity/index.ts";
import { isCalled, oneOf } from "../nearest-names.ts";
import { present } from "../present.ts";
import type { ResolvedPump, ResolvedRig } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import {
  LISTED_PUMPS,
  LISTED_RIGS,
  type ListedFigure,
  type ListedPump,
  RIG_CLASS_FIGURES,
  type RigFigure,
} from "./gear-lists.ts";
import type { ReadingNotes } from "./reading-notes.ts";

type GivenRig = NonNullable<ReadTraveler["inquiry"]["rig"]>;
type GivenPump = NonNullable<ReadTraveler["inquiry"]["pump"]>;

/** Holes up to this are drilled with a small rig [m]: 5 in, loop holes; (c) no source. */
const SMALL_RIG_HOLE = 5 * 0.0254;
/** Holes from this on are drilled with a large rig [m]: 8 in; (c) no source. */
const LARGE_RIG_HOLE = 8 * 0.0254;
/** Hose, swivel and kelly of a water-well rig as drill pipe of the same loss [m]: 75 ft; (c) 50 to 100 ft. */
const USUAL_SURFACE_GEAR = 22.86;

type Classed = { readonly id: string };

function classNamed<Entry extends Classed>(classes: readonly Entry[], id: string | undefined): Entry | undefined {
  return classes.find((entry) => entry.id === id);
}

/** The class that a job with such a hole usually has. */
function classOf<Entry extends Classed>(classes: readonly Entry[], holeDiameter: number): Entry {
  const id = holeDiameter <= SMALL_RIG_HOLE ? "small" : holeDiameter < LARGE_RIG_HOLE ? "medium" : "large";
  const found = classNamed(classes, id);
  if (!found) throw new RangeError(`the lists of gear have no class ${id}`);
  return found;
}

type Named = { readonly id: string; readonly name?: string | undefined };

/** Picks a preset among the shop's own and the program's; refuses a name that is in neither. */
function presetOf<Own extends Named, Listed extends Named>(
  question: { preset: string | undefined; own: readonly Own[]; listed: readonly Listed[]; field: string; what: string },
  notes: ReadingNotes,
): { readonly own?: Own; readonly listed?: Listed } | undefined {
  const { preset, field, what } = question;
  if (preset === undefined) return {};
  const own = question.own.find((entry) => isCalled(entry, preset));
  if (own) return { own };
  const listed = question.listed.find((entry) => isCalled(entry, preset));
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
  const picked = presetOf({ preset: given.preset, own, listed: LISTED_RIGS, field, what: "rig" }, notes);
  if (!picked) return undefined;
  const entered: GivenRig = { ...picked.own, ...given };
  const usual = classNamed(RIG_CLASS_FIGURES, picked.listed?.id) ?? classOf(RIG_CLASS_FIGURES, holeDiameter);
  const rated = picked.listed && picked.listed.id !== usual.id ? picked.listed.figures : {};
  const take = (name: RigFigure, kind: QuantityKind, quantity: Quantity | undefined) => {
    if (quantity) return quantity.si;
    const known = rated[name];
    if (known) return known.si;
    const { si, source } = usual.figures[name];
    const why = `the low side of what a ${usual.name} has; the rig's own plate tells the true one`;
    return notes.assumeNumber({ field: `inquiry.rig.${name}`, kind, si, why, source });
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
  return {
    ...present({ preset: given.preset, power: entered.power?.si, rotarySpeeds: speeds }),
    ...present({ gaugeForceFactor: entered.gaugeForceFactor?.si }),
    name: entered.name ?? picked.listed?.name ?? usual.name,
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
  const picked = presetOf({ preset: given.preset, own, listed: LISTED_PUMPS, field, what: "pump" }, notes);
  if (!picked) return undefined;
  const entered: GivenPump = { ...picked.own, ...given };
  const base: ListedPump = picked.listed ?? classOf(LISTED_PUMPS, holeDiameter);
  const take = (name: "flow" | "pressureRating", kind: QuantityKind, quantity: Quantity | undefined) => {
    if (quantity) return quantity.si;
    const { si, source }: ListedFigure = base[name];
    const why = `the low side of what a ${base.name} gives; time the filling of a tank to have the true flow`;
    return notes.assumeNumber({ field: `inquiry.pump.${name}`, kind, si, why, source });
  };
  return {
    ...present({ preset: given.preset, lumpSize: entered.lumpSize?.si }),
    name: entered.name ?? base.name,
    flow: take("flow", "flow", entered.flow),
    pressureRating: take("pressureRating", "pressure", entered.pressureRating),
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
