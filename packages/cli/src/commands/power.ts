import { figuresIn, findingLines, powerSheets, powerTable, powerWords } from "@bitwright/shop";
import { type UnitSystem, workUp } from "@bitwright/traveler";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { writeSheets } from "../write-sheets.ts";

/** Options of `bitwright power`. */
export interface PowerOptions {
  readonly out?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

const WIDTH = 110;

/** Power of each bed against the rig's engine and the fuel of the hole: a table on the terminal, drawing and table in a folder. */
export function powerCommand(file: string, { out, json, units }: PowerOptions, terminal: Terminal): void {
  const workup = workUp(readTraveler(file));
  const { power } = workup;
  const wrote = writeSheets(out, () => powerSheets(workup, { units, program: PROGRAM }));
  if (json) {
    terminal.say(JSON.stringify(power ?? { beds: [], findings: [], working: [] }, null, 2));
    return;
  }
  if (!power) {
    terminal.say("No bed of this hole is drilled with this bit.");
    return;
  }
  const figures = figuresIn(units);
  const findings = workup.findings.filter(({ station }) => station === "power");
  terminal.say(
    [
      ...powerTable(power, figures),
      "",
      ...powerWords(power, figures, WIDTH),
      "",
      ...findingLines({ findings }, figures, WIDTH),
    ].join("\n"),
  );
  if (wrote) terminal.say(wrote);
}
