import { commonPractice } from "@bitwright/engine";
import type { Quantity, QuantityKind } from "../../quantity/index.ts";
import { present } from "../present.ts";
import type { ResolvedRig } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import { LISTED_RIGS, RIG_CLASS_FIGURES, type RigFigure } from "./gear-lists.ts";
import { classNamed, classOf, type GearQuestion, presetOf } from "./gear-preset.ts";
import type { ReadingNotes } from "./reading-notes.ts";

type GivenRig = NonNullable<ReadTraveler["inquiry"]["rig"]>;

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
    ...present({ gaugeForceFactor: entered.gaugeForceFactor?.si, fuelBurn: entered.fuelBurn?.si }),
    ...present({ holdBackGaugeForceFactor: entered.holdBackGaugeForceFactor?.si }),
    name: entered.name ?? picked.listed?.name ?? usual.name,
    pullDown: take("pullDown", "force", entered.pullDown),
    hoist: take("hoist", "force", entered.hoist),
    enginePower: take("enginePower", "power", entered.enginePower),
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
