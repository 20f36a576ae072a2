import { type Problem, parseTraveler, type Workup, workUp } from "@bitwright/traveler";

/** A document worked up, or what is wrong with it. */
export type WorkedUp =
  | { readonly ok: true; readonly workup: Workup }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Workups kept at hand in each thread [-]: a saved traveler is asked for its sheets next, one after another. */
const KEPT = 4;
const kept = new Map<string, WorkedUp>();

/** Works a document up from its text; the same text asked for again soon is not worked up twice. */
export function workedUp(text: string): WorkedUp {
  const done = kept.get(text) ?? workedUpAnew(text);
  kept.delete(text);
  kept.set(text, done);
  for (const oldest of [...kept.keys()].slice(0, -KEPT)) kept.delete(oldest);
  return done;
}

function workedUpAnew(text: string): WorkedUp {
  const read = parseTraveler(text);
  return read.ok ? { ok: true, workup: workUp(read) } : { ok: false, problems: read.problems };
}
