import { sheetsOf, summaryText } from "@bitwright/shop";
import { type UnitSystem, workUp, workupJson } from "@bitwright/traveler";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { writeSheets } from "../write-sheets.ts";

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
  const wrote = writeSheets(out, () => sheetsOf(workup, { units, program: PROGRAM }));
  terminal.say(json ? workupJson(workup).trimEnd() : summaryText(workup, { units, program: PROGRAM }));
  if (wrote && !json) terminal.say(wrote);
}
