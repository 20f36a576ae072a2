import { isCalled, oneOf } from "../nearest-names.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import { LISTED_RIGS } from "./gear-lists.ts";
import type { ReadingNotes } from "./reading-notes.ts";

/** Holes up to this are drilled with a small rig [m]: 5 in, loop holes; (c) no source. */
const SMALL_RIG_HOLE = 5 * 0.0254;
/** Holes from this on are drilled with a large rig [m]: 8 in; (c) no source. */
const LARGE_RIG_HOLE = 8 * 0.0254;

type Classed = { readonly id: string };

/** The class of an id. */
export function classNamed<Entry extends Classed>(
  classes: readonly Entry[],
  id: string | undefined,
): Entry | undefined {
  return classes.find((entry) => entry.id === id);
}

/** Id of the class of rigs that a traveler picked; undefined where it picked none, or a rig of the shop's own. */
export function rigClassOf({ inquiry, lists }: ReadTraveler): string | undefined {
  const { preset } = inquiry.rig ?? {};
  if (preset === undefined || lists?.rigs?.some((entry) => isCalled(entry, preset))) return undefined;
  return LISTED_RIGS.find((entry) => isCalled(entry, preset))?.id;
}

/** The class that a job with such a hole usually has. */
export function classOf<Entry extends Classed>(classes: readonly Entry[], holeDiameter: number): Entry {
  const id = holeDiameter <= SMALL_RIG_HOLE ? "small" : holeDiameter < LARGE_RIG_HOLE ? "medium" : "large";
  const found = classNamed(classes, id);
  if (!found) throw new RangeError(`the lists of gear have no class ${id}`);
  return found;
}

type Named = { readonly id: string; readonly name?: string | undefined };

/** Picks a preset among the shop's own and the program's; refuses a name that is in neither. */
export function presetOf<Own extends Named, Listed extends Named>(
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

/** What gear is picked for. */
export interface GearQuestion {
  readonly traveler: ReadTraveler;
  /** Diameter of the hole the bit drills [m]. */
  readonly holeDiameter: number;
}
