import { crossingTable, figuresIn, findingLines, stabilitySheets, steadinessTable } from "@bitwright/shop";
import {
  type StabilityStudy,
  stabilityStudyInSteps,
  studyJson,
  type UnitSystem,
  USUAL_SPEEDS,
  workUp,
} from "@bitwright/traveler";
import { longWork, STOPPED_EARLY } from "../long-work.ts";
import { noSuchBed } from "../no-such-bed.ts";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { wholeNumber } from "../whole-number.ts";
import { writeSheets } from "../write-sheets.ts";

/** Options of `bitwright stability`. */
export interface StabilityOptions {
  readonly bed?: string;
  readonly speeds?: string;
  readonly out?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

const MOST_SPEEDS = 200;
const WIDTH = 110;

/**
 * Balance, boundaries and the string of a traveler's bit, with the rotary's speeds scanned; gives the status to end with: 0,
 * or 130 where Ctrl-C stopped it and what follows is what it had by then.
 */
export async function stabilityCommand(file: string, options: StabilityOptions, terminal: Terminal): Promise<number> {
  const { bed, out, json, units } = options;
  const speeds = wholeNumber("--speeds", options.speeds, USUAL_SPEEDS, 2, MOST_SPEEDS);
  const workup = workUp(readTraveler(file));
  const { result: study, stopped } = await longWork(
    (shouldStop) => stabilityStudyInSteps(workup, { speeds, shouldStop, ...(bed === undefined ? {} : { bed }) }),
    {
      terminal,
      progressLine: ({ bed: at, done, of }) =>
        `stability: ${done} of ${of} speeds, in ${at} (${Math.round((100 * done) / of)} %)`,
    },
  );
  const nothing = study.beds.length === 0 && !stopped;
  if (nothing && bed !== undefined) throw noSuchBed(bed, workup.cut.beds);
  const wrote = writeSheets(out, () => stabilitySheets(workup, study, { units, program: PROGRAM }));
  if (json) terminal.say(studyJson(study));
  else {
    terminal.say(nothing ? "No bed of this hole is drilled with this bit." : studyText(study, units));
    if (wrote) terminal.say(wrote);
  }
  return stopped ? STOPPED_EARLY : 0;
}

function studyText({ beds, notReached, findings }: StabilityStudy, units: UnitSystem): string {
  const figures = figuresIn(units);
  const across = crossingTable(beds, figures);
  const said = findingLines(
    { findings: findings.map((finding) => ({ ...finding, station: "stability" as const })) },
    figures,
    WIDTH,
  );
  return [
    ...(beds.length > 0 ? [steadinessTable(beds, figures).join("\n")] : []),
    ...(across.length > 0 ? [across.join("\n")] : []),
    ...(notReached.length > 0 ? [`Not reached: ${notReached.join("; ")}.`] : []),
    ...(findings.length > 0 ? [said.join("\n")] : []),
  ].join("\n\n");
}
