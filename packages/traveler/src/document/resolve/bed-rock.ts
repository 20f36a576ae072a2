import { classifyGround, commonPractice, rockTable, strengthInState } from "@bitwright/engine";
import { formatQuantity } from "../../quantity/index.ts";
import { oneOf } from "../nearest-names.ts";
import type { ResolvedBed } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import type { GivenBed } from "./given-bed.ts";
import type { ReadingNotes } from "./reading-notes.ts";
import type { KnownRocks } from "./rocks.ts";

/** The rock of a bed: the id given, else what the phrase is read as. */
export function rockOf(
  given: GivenBed,
  path: string,
  rocks: KnownRocks,
  notes: ReadingNotes,
): Pick<ResolvedBed, "rock" | "rockFrom"> {
  if (given.rock !== undefined) {
    const rock = rocks.find(given.rock);
    if (rock !== undefined) return { rock, rockFrom: "entered" };
    const expected = `${oneOf(given.rock, rocks.ids)}, or the driller's words as phrase`;
    const wrong = `got "${given.rock}", which is no rock of the list`;
    notes.refuse({ field: `${path}.rock`, got: `"${given.rock}"`, wrong, expected });
    return {};
  }
  if (given.phrase === undefined) {
    const expected = 'give the rock, for example "limestone", or the driller\'s words as phrase';
    notes.refuse({ field: `${path}.rock`, got: "nothing", wrong: "neither rock nor phrase is given", expected });
    return {};
  }
  const read = classifyGround(given.phrase);
  if (read.rockId === undefined) {
    notes.remark({
      code: "phrase-names-no-rock",
      severity: "caution",
      where: path,
      message: `"${given.phrase}" names no ground that is known here. Give the rock by its id to have this bed worked up.`,
      source: commonPractice("usage of drillers' logs"),
    });
    return {};
  }
  if (read.confidence === "guess") {
    notes.assume({
      field: `${path}.rock`,
      text: read.rockId,
      why: `${read.reason} Give the rock by its id where that is not so.`,
      source: commonPractice("usage of drillers' logs"),
    });
  }
  return { rock: read.rockId, rockFrom: "phrase" };
}

/** The strength of a bed that only has a rock's name is that of the table, a wide band: said for each bed. */
export function assumeTableStrength(
  { rock, phrase }: { readonly rock?: string; readonly phrase?: string },
  path: string,
  { overrides, lists }: ReadTraveler,
  notes: ReadingNotes,
): void {
  const own = lists?.rocks?.find(({ id }) => id === rock);
  if (rock === undefined || own?.ucs || overrides?.rocks?.[rock]?.ucs) return;
  const listed = rockTable.find(({ id }) => id === (own?.like ?? rock));
  if (!listed) return;
  const modifiers = phrase === undefined ? [] : classifyGround(phrase).modifiers;
  const { low, mid, high } = strengthInState({ rock: listed, modifiers });
  const text = [low, mid, high].map((side) => formatQuantity("strength", side, "field", { figures: 3 }));
  notes.assume({
    field: `${path}.strength`,
    text: `${text[0]} to ${text[2]}, mid ${text[1]}`,
    si: mid,
    unit: "Pa",
    why: `what is usual for ${listed.name} as it is described; a sample, a log or a returned bit tells more`,
    source: listed.sources.ucs,
  });
}
