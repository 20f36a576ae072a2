import type { Tables } from "./database/tables.ts";
import type { RefusedSave, SavedVersion, VersionEntry } from "./paper.ts";

/** The columns of a version without its text. */
export const VERSION_COLUMNS = [
  "paper_version.number",
  "paper_version.saved_at",
  "paper_version.saved_by",
  "paper_version.note",
  "paper_version.program",
  "paper_version.title",
  "paper_version.sound",
] as const;

/** A version without its text, from its row. */
export function versionEntry(row: Omit<Tables["paper_version"], "body" | "paper_id">): VersionEntry {
  return {
    version: row.number,
    savedAt: row.saved_at,
    who: row.saved_by,
    note: row.note,
    program: row.program,
    title: row.title,
    sound: row.sound === 1,
  };
}

/** A version with its text, from its row. */
export function savedVersion(row: Tables["paper_version"]): SavedVersion {
  return { ...versionEntry(row), body: row.body };
}

/** A refused save, from its row. */
export function refusedSave(row: Tables["refusal"]): RefusedSave {
  return {
    number: row.number,
    basedOn: row.based_on,
    found: row.found,
    refusedAt: row.refused_at,
    who: row.saved_by,
    note: row.note,
    program: row.program,
    body: row.body,
  };
}
