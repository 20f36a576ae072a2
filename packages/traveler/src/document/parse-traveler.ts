import type { Assumed } from "./assumed.ts";
import { migrate } from "./migrate.ts";
import { type Problem, problem } from "./problem.ts";
import { problemsOf } from "./problems-of.ts";
import { readJson } from "./read-json.ts";
import { readingNotes } from "./resolve/reading-notes.ts";
import { resolveTraveler } from "./resolve/resolve-traveler.ts";
import type { ResolvedTraveler } from "./resolved-traveler.ts";
import { type Traveler, travelerSchema } from "./traveler-schema.ts";
import { unknownFieldRemarks, withUnknownFields } from "./unknown-field-remarks.ts";

/** A traveler that can be worked up, or everything that is wrong with it. */
export type ParsedTraveler =
  | {
      readonly ok: true;
      /** As entered, in today's version; `writeTraveler` writes it. */
      readonly traveler: Traveler;
      /** In SI with its gaps filled. */
      readonly resolved: ResolvedTraveler;
      /** Every fact taken because nobody gave it. */
      readonly assumed: readonly Assumed[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads a traveler: the JSON text of one, or its value. Never throws for what a person wrote; every problem is one line
 * that names the field, the value and what is accepted.
 */
export function parseTraveler(input: unknown): ParsedTraveler {
  const refuse = (...problems: Problem[]): ParsedTraveler => ({ ok: false, problems });
  let value = input;
  if (typeof input === "string") {
    const json = readJson(input);
    if (!json.ok) {
      const place = `line ${json.line}, column ${json.column}`;
      const expected = "give a traveler as JSON text";
      return refuse(
        problem({ field: "traveler", got: place, expected, wrong: `the text is not JSON at ${place}: ${json.fault}` }),
      );
    }
    value = json.value;
  }
  const migrated = migrate(value);
  if (!migrated.ok) return refuse(migrated.problem);
  const { document } = migrated;
  const read = travelerSchema.safeParse(document);
  if (!read.success) return refuse(...withUnknownFields(problemsOf(read.error, document), document));
  const notes = readingNotes();
  for (const remark of unknownFieldRemarks(document)) notes.remark(remark);
  const resolved = resolveTraveler(read.data, notes);
  if (!resolved) return refuse(...withUnknownFields(notes.problems, document));
  return { ok: true, traveler: document as Traveler, resolved, assumed: notes.assumed };
}

/** The JSON text of a traveler as it is kept in a file: as entered, unknown fields and all, in the order given. */
export function writeTraveler(traveler: Traveler): string {
  return `${JSON.stringify(traveler, null, 2)}\n`;
}
