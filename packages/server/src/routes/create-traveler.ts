import type { ServerContext } from "../server-context.ts";
import { documentOf } from "./traveler-texts.ts";

/** Characters of a name before its number [-]; the store takes 80 places. */
const MOST_CHARACTERS = 36;
/** Names that are tried where another server on the same database takes each first [-]. */
const MOST_TRIES = 5;

/** Keeps a text as a new traveler; gives its name in the shop. */
export type CreateTraveler = (body: string, note: string) => Promise<string>;

/** Names new travelers after their jobs, with a number where a name is taken. */
export function travelerMaker(context: ServerContext): CreateTraveler {
  // One after another, so that two that come at once do not find the same name free.
  let last: Promise<unknown> = Promise.resolve();
  return (body, note) => {
    const created = last.then(() => createNext(context, body, note));
    last = created.catch(() => undefined);
    return created;
  };
}

async function createNext({ store: { papers }, who }: ServerContext, body: string, note: string): Promise<string> {
  const base = plainName((documentOf(body).job as { name?: unknown } | null | undefined)?.name);
  for (let tries = 1; ; tries += 1) {
    const taken = new Set((await papers.list("traveler")).map((one) => one.name));
    const name = freeName(base, taken);
    const outcome = await papers.save({ kind: "traveler", name, body, basedOn: 0, who, note });
    if (outcome.ok) return name;
    if (tries === MOST_TRIES) throw new Error(`no free name was found for ${base}`);
  }
}

function freeName(base: string, taken: ReadonlySet<string>): string {
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? base : `${base}-${number}`;
    if (!taken.has(name)) return name;
  }
}

/** A name as the shop takes it: small letters and digits with strokes between. */
function plainName(jobName: unknown): string {
  const words = typeof jobName === "string" || typeof jobName === "number" ? String(jobName) : "";
  const plain = words
    .normalize("NFC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\p{M}]+/gu, "-")
    .replace(/^[-\p{M}]+/u, "");
  // Cut between characters, never within one; each takes at most two of the places that the store counts.
  const short = [...plain].slice(0, MOST_CHARACTERS).join("").replace(/-+$/, "");
  return short === "" ? "traveler" : short;
}
