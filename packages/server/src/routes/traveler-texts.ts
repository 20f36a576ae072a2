import { type RefusedSave, type SavedVersion, StoreFault, type VersionEntry } from "@bitwright/store";
import { type Problem, parseTraveler } from "@bitwright/traveler";
import type * as z from "zod";
import { badValues, fieldProblems, HttpProblem } from "../http/problem-details.ts";
import type { ServerContext } from "../server-context.ts";
import type { refusedSaveSchema, savedTravelerSchema, versionEntrySchema } from "./shapes.ts";

/** The text of a document as it is kept. */
export function textOf(document: unknown): string {
  try {
    return `${JSON.stringify(document, null, 2)}\n`;
  } catch (error) {
    // What came as JSON can only fail in its depth.
    if (error instanceof RangeError)
      throw new HttpProblem("bad-value", "document: got groups within groups beyond all use; give fewer");
    throw error;
  }
}

/** The document of a text that was kept. */
export function documentOf(text: string): Record<string, unknown> {
  return JSON.parse(text.replace(/^\uFEFF/, ""));
}

/** A version without its document, as it is told. */
export function entryOf({
  version,
  savedAt,
  who,
  note,
  program,
  title,
  sound,
}: VersionEntry): z.infer<typeof versionEntrySchema> {
  return { version, savedAt, savedBy: who, note, program, name: title, sound };
}

/** A version with its document, as it is told. */
export function savedOf(id: string, saved: SavedVersion): z.infer<typeof savedTravelerSchema> {
  const read = parseTraveler(saved.body);
  const problems = read.ok ? [] : fieldProblems(read.problems);
  return { id, ...entryOf(saved), document: documentOf(saved.body), problems };
}

/** A refused save, as it is told. */
export function refusedOf(refused: RefusedSave): z.infer<typeof refusedSaveSchema> {
  return { ...refusalOf(refused), document: documentOf(refused.body) };
}

/** A refused save without its text, as it is told. */
function refusalOf({ number, basedOn, found, refusedAt, who, note }: RefusedSave) {
  return { number, basedOn, found, refusedAt, savedBy: who, note };
}

/** That somebody else has saved meanwhile, with both versions, which are kept. */
export function conflict(
  name: string,
  refused: RefusedSave,
  newest: SavedVersion,
  both: { yours: unknown; theirs: unknown },
) {
  const words = `made from version ${refused.basedOn}, but ${newest.who} saved version ${refused.found} on ${newest.savedAt}`;
  return new HttpProblem("conflict", `${name}: ${words}; both are kept`, { ...both, refusal: refusalOf(refused) });
}

/** Fields without which a document is no traveler, or none that this program may keep. */
const MARKS = new Set(["traveler", "format", "version"]);

/**
 * Works a document up before it is kept, and counts what there is to remark. One that is half filled has problems and no
 * findings and may be kept; one that is no traveler may not. Should the program fail on it, the work is kept all the same.
 */
export async function workedBeforeSaving({ threads, onFault }: ServerContext, text: string) {
  const answer = await threads.findings(text).catch((error: unknown) => {
    if ((error as Error).name !== "AbortError") onFault(error);
    return undefined;
  });
  if (answer === undefined || answer.ok) return { problems: [], ...(answer ? { findings: answer.value } : {}) };
  if (answer.problems.some(({ field }) => MARKS.has(field))) throw badValues(answer.problems);
  return { problems: fieldProblems(answer.problems) };
}

/** What is wrong with a document that must be whole. */
export function needsSound(answer: { readonly ok: false; readonly problems: readonly Problem[] }): never {
  throw badValues(answer.problems);
}

/** That nothing of that name is attached. */
export const noSuchFile = (name: string, there: readonly string[]) =>
  new StoreFault("not-found", {
    field: "attachment",
    got: JSON.stringify(name),
    wrong: `no file ${JSON.stringify(name)} is attached`,
    expected: `there is ${there.join(", ") || "none"}`,
  });
