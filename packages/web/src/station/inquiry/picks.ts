import { REGULAR_CONNECTIONS } from "@bitwright/engine";
import { LISTED_PIPE, LISTED_PUMPS, LISTED_RIGS } from "@bitwright/traveler";
import type { Pick } from "../../field/picked-field.tsx";
import { valueAt } from "../../job/path.ts";
import type { AskedField } from "./field-group.ts";

type Listed = { readonly id: string; readonly name: string };

/** What may be picked for a field: the program's list, with the job's own before it. */
export function picksFor(field: AskedField, document: unknown): readonly Pick[] | undefined {
  if (field.picks === "rigs") return own(document, "rigs", LISTED_RIGS);
  if (field.picks === "pumps") return own(document, "pumps", LISTED_PUMPS);
  if (field.picks === "pipe") return own(document, "pipe", LISTED_PIPE);
  if (field.picks !== "holes") return undefined;
  return entries(valueAt(document, ["inquiry", "holes"])).flatMap(({ name }) =>
    typeof name === "string" ? [{ id: name, words: name }] : [],
  );
}

/** What is offered while a text is typed. */
export function suggestionsFor({ suggests }: AskedField): readonly string[] | undefined {
  return suggests === "connections" ? REGULAR_CONNECTIONS.map(({ thread }) => thread) : undefined;
}

function own(document: unknown, list: string, listed: readonly Listed[]): Pick[] {
  const ours = entries(valueAt(document, ["lists", list])).flatMap(({ id, name }) =>
    typeof id === "string" ? [{ id, words: `${typeof name === "string" ? name : id} (our own)` }] : [],
  );
  return [...ours, ...listed.map(({ id, name }) => ({ id, words: name }))];
}

function entries(value: unknown): Record<string, unknown>[] {
  return Array.isArray(value)
    ? value.filter((one): one is Record<string, unknown> => typeof one === "object" && one !== null)
    : [];
}
