import { join } from "node:path";
import { writeWhole } from "./files.ts";

/** A sheet as a file: text, or the bytes of one that prints. */
export interface SheetFile {
  readonly name: string;
  readonly text: string | Uint8Array;
}

/**
 * Writes sheets into a folder where one is asked for. A folder that cannot be written ends the command in its one line, so
 * write before anything is said.
 *
 * @returns what to say of it at the end; nothing where nothing was written
 */
export function writeSheets(out: string | undefined, sheetsOf: () => readonly SheetFile[]): string | undefined {
  if (out === undefined) return undefined;
  const sheets = sheetsOf();
  for (const { name, text } of sheets) writeWhole(join(out, name), text);
  return sheets.length === 0 ? undefined : `\nWrote ${sheets.map(({ name }) => name).join(", ")} to ${out}.`;
}
