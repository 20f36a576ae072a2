import { parseTraveler } from "@bitwright/traveler";
import { givenText } from "./given.ts";
import { bytesInWords } from "./limits.ts";
import type { PaperKind } from "./paper.ts";
import { StoreFault } from "./store-fault.ts";

/** What is known of a text that may be kept. */
interface KnownBody {
  readonly title: string;
  readonly sound: boolean;
}

/** Fields by which a text is known to be no traveler, or none this program may keep. */
const MARKS = new Set(["traveler", "format", "version"]);

/**
 * Looks at a text before it is kept. A traveler may be half filled, as it is during a call; it must be JSON with the mark
 * and a version that this program knows. A list or a setting is any JSON.
 */
export function givenBody(kind: PaperKind, body: string, most: number): KnownBody {
  const size = Buffer.byteLength(body);
  if (size > most) {
    const got = bytesInWords(size);
    throw new StoreFault("bad-value", { field: "body", got, expected: `give at most ${bytesInWords(most)} of text` });
  }
  givenText("body", body);
  if (kind !== "traveler") {
    readJson(body);
    return { title: "", sound: true };
  }
  const read = parseTraveler(body);
  if (read.ok) return { title: read.resolved.job.name, sound: true };
  const foreign = read.problems.find(({ field }) => MARKS.has(field));
  if (foreign) throw new StoreFault("bad-value", foreign);
  return { title: nameOfJob(readJson(body)), sound: false };
}

function readJson(body: string): unknown {
  try {
    return JSON.parse(body);
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    throw new StoreFault("bad-value", { field: "body", got: words, expected: "give JSON text" });
  }
}

function nameOfJob(document: unknown): string {
  const name = (document as { job?: { name?: unknown } | null } | null)?.job?.name;
  return typeof name === "string" || typeof name === "number" ? String(name) : "";
}
