import { parseTraveler } from "@bitwright/traveler";
import type { JobDocument } from "./job-document.ts";

/** A traveler file as a job, or why it is none. */
export type JobFile =
  | { readonly ok: true; readonly document: JobDocument }
  | { readonly ok: false; readonly words: string };

/**
 * Reads a traveler file. Fields that are wrong do not stop it: they are mended on their stations. What is no traveler, or
 * one of a newer program, is refused.
 */
export function jobFromFile(text: string): JobFile {
  const parsed = parseTraveler(text);
  if (parsed.ok) return { ok: true, document: parsed.traveler as JobDocument };
  const whole = parsed.problems.find(({ field }) => ["traveler", "format", "version"].includes(field));
  if (whole) return { ok: false, words: whole.message };
  return { ok: true, document: JSON.parse(text) as JobDocument };
}
