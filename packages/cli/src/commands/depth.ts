import { depthSheets, depthTable, figuresIn, findingLines } from "@bitwright/shop";
import { depthStudy, type UnitSystem, workUp } from "@bitwright/traveler";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { writeSheets } from "../write-sheets.ts";

/** Options of `bitwright depth`. */
export interface DepthOptions {
  readonly out?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

const WIDTH = 110;

/** Weight, feed and cleaning joint by joint: a table on the terminal, two drawings and the table in a folder. */
export function depthCommand(file: string, { out, json, units }: DepthOptions, terminal: Terminal): void {
  const workup = workUp(readTraveler(file));
  const study = depthStudy(workup);
  const wrote = writeSheets(out, () => depthSheets(workup, study, { units, program: PROGRAM }));
  if (json) {
    terminal.say(JSON.stringify(study, null, 2));
    return;
  }
  if (study.joints.length === 0) {
    terminal.say("No bed of this hole is drilled with this bit.");
    return;
  }
  const figures = figuresIn(units);
  terminal.say([...depthTable(study, figures), "", ...findingLines(study, figures, WIDTH)].join("\n"));
  if (wrote) terminal.say(wrote);
}
