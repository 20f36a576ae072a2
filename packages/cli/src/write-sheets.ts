import { join } from "node:path";
import type { Sheet } from "@bitwright/shop";
import { writeText } from "./files.ts";

/**
 * Writes sheets into a folder where one is asked for. A folder that cannot be written ends the command in its one line, so
 * write before anything is said.
 *
 * @returns what to say of it at the end; nothing where nothing was written
 */
export function writeSheets(out: string | undefined, sheetsOf: () => readonly Sheet[]): string | undefined {
  if (out === undefined) return undefined;
  const sheets = sheetsOf();
  for (const { name, text } of sheets) writeText(join(out, name), text);
  return sheets.length === 0 ? undefined : `\nWrote ${sheets.map(({ name }) => name).join(", ")} to ${out}.`;
}
