import { commonPractice, derivedFrom, JOINTED_OVER_PLAIN, plainEndWeight, STANDARD_GRAVITY } from "@bitwright/engine";
import { formatQuantity, type Quantity } from "../../quantity/index.ts";
import { isCalled, oneOf } from "../nearest-names.ts";
import { present } from "../present.ts";
import type { ResolvedCollar, ResolvedHole, ResolvedJoint, ResolvedPipe } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import { resolveBitJoint } from "./bit-joint.ts";
import { LISTED_PIPE, type ListedPipe, USUAL_JOINT } from "./gear-lists.ts";
import type { ReadingNotes } from "./reading-notes.ts";

type GivenPipe = NonNullable<ReadTraveler["inquiry"]["pipe"]>;
type GivenCollar = NonNullable<ReadTraveler["inquiry"]["collars"]>[number];

/** Largest share of the hole that a pipe's diameter usually takes [-]; (c) keeps a way up for the cuttings. */
const USUAL_PIPE_SHARE = 0.6;
/** Two diameters this near are one size of pipe [m]. */
const SAME_SIZE = 0.5e-3;

/** Mass of a length of plain steel tube [kg/m]. */
function tubeMass(outsideDiameter: number, bore: number): number {
  return plainEndWeight({ outerDiameter: outsideDiameter, bore }) / STANDARD_GRAVITY;
}

interface PipeQuestion {
  readonly traveler: ReadTraveler;
  /** The hole the bit drills; absent where something is wrong with the holes. */
  readonly bitHole: ResolvedHole | undefined;
}

/** The drill pipe, its gaps filled from the preset or from the usual pipe for the hole. */
export function resolvePipe({ traveler, bitHole }: PipeQuestion, notes: ReadingNotes): ResolvedPipe | undefined {
  const given: GivenPipe = traveler.inquiry.pipe ?? {};
  const own = traveler.lists?.pipe ?? [];
  const { preset } = given;
  const ownPreset = preset === undefined ? undefined : own.find((entry) => isCalled(entry, preset));
  const listed = preset === undefined || ownPreset ? undefined : LISTED_PIPE.find((entry) => isCalled(entry, preset));
  if (preset !== undefined && !ownPreset && !listed) {
    const ids = [...own.map(({ id }) => id), ...LISTED_PIPE.map(({ id }) => id)];
    const wrong = `got "${preset}", which is no pipe of the list`;
    notes.refuse({ field: "inquiry.pipe.preset", got: `"${preset}"`, wrong, expected: oneOf(preset, ids) });
    return undefined;
  }
  const entered: GivenPipe = { ...ownPreset, ...given };
  const base = listed ?? usualPipe(entered, bitHole);
  const assumed = listed === undefined;
  const why = entered.outsideDiameter
    ? `that of the listed pipe of this size, ${base?.name}`
    : `the usual pipe in a hole of this size, ${base?.name}`;
  const take = (name: string, kind: "diameter" | "linear mass", quantity: Quantity | undefined, si: number) => {
    if (quantity) return quantity.si;
    if (!assumed) return si;
    return notes.assumeNumber({
      field: `inquiry.pipe.${name}`,
      kind,
      si,
      why,
      source: base?.source ?? commonPractice(),
    });
  };
  if (!base && !(entered.outsideDiameter && entered.bore)) {
    const field = entered.outsideDiameter ? "inquiry.pipe.bore" : "inquiry.pipe.outsideDiameter";
    const expected = `give the pipe's outside diameter and bore, or as preset ${oneOf(
      "",
      LISTED_PIPE.map(({ id }) => id),
    )}`;
    notes.refuse({ field, got: "nothing", wrong: "nothing is given, and no listed pipe suits", expected });
    return undefined;
  }
  const outsideDiameter = take("outsideDiameter", "diameter", entered.outsideDiameter, base?.outsideDiameter ?? 0);
  const bore = take("bore", "diameter", entered.bore, base?.bore ?? 0);
  if (!boreFits({ outsideDiameter, bore, path: "inquiry.pipe", given: entered }, notes)) return undefined;
  if (bitHole && !pipeFits({ outsideDiameter, hole: bitHole, path: "inquiry.pipe", given: entered }, notes))
    return undefined;
  const joint = jointOf({ given: entered, bore, jointLength: entered.jointLength?.si, bitHole }, notes);
  if (joint === "refused") return undefined;
  const measuredTube = entered.outsideDiameter !== undefined && entered.bore !== undefined;
  const linearMass =
    measuredTube && !entered.weight && !listed
      ? notes.assumeNumber({
          field: "inquiry.pipe.weight",
          kind: "linear mass",
          si: tubeMass(outsideDiameter, bore) * JOINTED_OVER_PLAIN.mid,
          why: "steel of this outside diameter and bore and what joints usually add, 5 to 12 %; weigh a joint to have the true one",
          source: derivedFrom("outside diameter and bore, density of steel; joints by common practice 5 to 12 %"),
        })
      : take("weight", "linear mass", entered.weight, base?.linearMass ?? 0);
  return {
    ...present({ preset }),
    name: entered.name ?? listed?.name ?? `${formatQuantity("diameter", outsideDiameter, "field")} pipe`,
    outsideDiameter,
    bore,
    linearMass,
    ...present({ joint }),
    jointLength:
      entered.jointLength?.si ??
      notes.assumeNumber({
        field: "inquiry.pipe.jointLength",
        kind: "depth",
        si: USUAL_JOINT.length,
        why: "a usual joint of water-well pipe; measure one to have the true one",
        source: USUAL_JOINT.source,
      }),
    ...resolveBitJoint(entered, bitHole, notes),
  };
}

interface JointCheck {
  readonly given: GivenPipe;
  /** Bore of the tube [m]. */
  readonly bore: number;
  /** Length of one joint of pipe, where given [m]. */
  readonly jointLength: number | undefined;
  readonly bitHole: ResolvedHole | undefined;
}

/** The thick ends of a joint; nothing where nobody measured them. */
function jointOf(
  { given, bore, jointLength = USUAL_JOINT.length, bitHole }: JointCheck,
  notes: ReadingNotes,
): ResolvedJoint | undefined | "refused" {
  const { joint } = given;
  if (!joint) return undefined;
  const path = "inquiry.pipe.joint";
  const outsideDiameter = joint.outsideDiameter.si;
  const ownBore = joint.bore?.si ?? bore;
  if (!boreFits({ outsideDiameter, bore: ownBore, path, given: joint }, notes)) return "refused";
  if (bitHole && !pipeFits({ outsideDiameter, hole: bitHole, path, given: joint }, notes)) return "refused";
  if (joint.length.si >= jointLength) {
    const limit = formatQuantity("depth", jointLength, "field");
    notes.refuse({
      field: `${path}.length`,
      got: `"${joint.length.text}"`,
      wrong: `got "${joint.length.text}", which is not less than the whole joint of ${limit}`,
      expected: `give the length of pin and box together, under ${limit}`,
    });
    return "refused";
  }
  return { outsideDiameter, bore: ownBore, length: joint.length.si };
}

/** The listed pipe of the size entered, else the largest that leaves a way up in the hole. */
function usualPipe({ outsideDiameter }: GivenPipe, bitHole: ResolvedHole | undefined): ListedPipe | undefined {
  if (outsideDiameter) {
    return LISTED_PIPE.find((pipe) => Math.abs(pipe.outsideDiameter - outsideDiameter.si) <= SAME_SIZE);
  }
  const hole = bitHole?.diameter ?? 0;
  const bySize = [...LISTED_PIPE].sort((a, b) => a.outsideDiameter - b.outsideDiameter);
  const slimmest = bySize.find((pipe) => pipe.outsideDiameter < hole);
  return bySize.filter((pipe) => pipe.outsideDiameter <= USUAL_PIPE_SHARE * hole).at(-1) ?? slimmest;
}

interface TubeCheck {
  /** Outside diameter [m]. */
  readonly outsideDiameter: number;
  readonly path: string;
  readonly given: { readonly outsideDiameter?: Quantity | undefined; readonly bore?: Quantity | undefined };
}

const diameterText = (si: number) => formatQuantity("diameter", si, "field");

function boreFits({ outsideDiameter, bore, path, given }: TubeCheck & { bore: number }, notes: ReadingNotes): boolean {
  if (bore < outsideDiameter) return true;
  const got = given.bore?.text ?? diameterText(bore);
  const limit = given.outsideDiameter?.text ?? diameterText(outsideDiameter);
  notes.refuse({
    field: `${path}.bore`,
    got: `"${got}"`,
    wrong: `got "${got}", which is not less than the outside diameter of ${limit}`,
    expected: `give a bore under ${limit}`,
  });
  return false;
}

function pipeFits(
  { outsideDiameter, hole, path, given }: TubeCheck & { hole: ResolvedHole },
  notes: ReadingNotes,
): boolean {
  if (outsideDiameter < hole.diameter) return true;
  const got = given.outsideDiameter?.text ?? diameterText(outsideDiameter);
  notes.refuse({
    field: `${path}.${given.outsideDiameter ? "outsideDiameter" : "preset"}`,
    got: `"${got}"`,
    wrong: `got "${got}", which does not go into the hole of ${hole.diameterAsTyped}`,
    expected: `give an outside diameter under ${hole.diameterAsTyped}`,
  });
  return false;
}

/** The collars from the bit upward; the weight of solid steel where none was given. */
export function resolveCollars(
  given: readonly GivenCollar[],
  bitHole: ResolvedHole | undefined,
  notes: ReadingNotes,
): ResolvedCollar[] {
  return given.flatMap((collar, at) => {
    const path = `inquiry.collars[${at}]`;
    const outsideDiameter = collar.outsideDiameter.si;
    const bore = collar.bore.si;
    if (!boreFits({ outsideDiameter, bore, path, given: collar }, notes)) return [];
    if (bitHole && !pipeFits({ outsideDiameter, hole: bitHole, path, given: collar }, notes)) return [];
    const linearMass =
      collar.weight?.si ??
      notes.assumeNumber({
        field: `${path}.weight`,
        kind: "linear mass",
        si: tubeMass(outsideDiameter, bore),
        why: "solid steel of this outside diameter and bore",
        source: derivedFrom("outside diameter and bore, density of steel"),
      });
    return [{ outsideDiameter, bore, length: collar.length.si, linearMass }];
  });
}
