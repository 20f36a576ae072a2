import { join } from "node:path";
import { sheetsOf, summaryText } from "@bitwright/shop";
import { type UnitSystem, workUp, workupJson } from "@bitwright/traveler";
import { writeText } from "../files.ts";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";

/** Options of `bitwright work`. */
export interface WorkOptions {
  readonly out?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

/** Works a traveler up: the summary on the terminal, the sheets in a folder. */
export function workCommand(file: string, { out, json, units }: WorkOptions, terminal: Terminal): void {
  const workup = workUp(readTraveler(file));
  // Written before anything is said: a folder that cannot be written ends the command in its one line.
  const sheets = out === undefined ? [] : sheetsOf(workup, { units, program: PROGRAM });
  for (const { name, text } of sheets) writeText(join(out ?? "", name), text);
  terminal.say(json ? workupJson(workup).trimEnd() : summaryText(workup, { units, program: PROGRAM }));
  if (!json && out !== undefined) terminal.say(`\nWrote ${sheets.map(({ name }) => name).join(", ")} to ${out}.`);
}
