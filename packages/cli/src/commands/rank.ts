import { CUTTER_CATALOG, catalogCutter, tradeBevels } from "@bitwright/engine";
import { choiceSheets, choiceText } from "@bitwright/shop";
import { type ChoiceLimits, choiceStudyInSteps, type UnitSystem, workUp } from "@bitwright/traveler";
import { Complaint } from "../complaint.ts";
import { longWork, STOPPED_EARLY } from "../long-work.ts";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { writeSheets } from "../write-sheets.ts";

/** Options of `bitwright rank`. */
export interface RankOptions {
  readonly cutter?: string;
  readonly wings?: string;
  readonly bevel?: string;
  readonly body?: string;
  readonly all?: boolean;
  readonly out?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

const MOST_WINGS = 16;

/**
 * Candidate bits for a traveler by what a length of hole costs with them; gives the status to end with: 0, or 130 where Ctrl-C
 * stopped it and what follows is what it had by then.
 */
export async function rankCommand(file: string, options: RankOptions, terminal: Terminal): Promise<number> {
  const { out, json, units, all } = options;
  const limits = limitsOf(options);
  const workup = workUp(readTraveler(file));
  const { result: study, stopped } = await longWork(
    (shouldStop) => choiceStudyInSteps(workup, { limits, shouldStop, ...(all ? { whole: true } : {}) }),
    {
      terminal,
      progressLine: ({ looked, of, at }) => `rank: ${looked} of up to ${of} candidates, at ${at}`,
    },
  );
  if (!study) {
    terminal.say(json ? "null" : "No bed of this hole is drilled with this bit.");
    return 0;
  }
  const style = { units, currency: workup.inquiry.job.currency };
  const wrote = writeSheets(out, () => choiceSheets(workup, study, { units, program: PROGRAM }));
  if (json) terminal.say(JSON.stringify(study, null, 2));
  else {
    terminal.say(choiceText(workup, study, style));
    if (wrote) terminal.say(wrote);
  }
  return stopped ? STOPPED_EARLY : 0;
}

function limitsOf({ cutter, wings, bevel, body }: RankOptions): ChoiceLimits {
  return {
    ...(cutter === undefined ? {} : { cutter: listed(cutter).map(codeOf) }),
    ...(wings === undefined ? {} : { wings: wingsOf(wings) }),
    ...(bevel === undefined ? {} : { chamfer: listed(bevel).map(bevelOf) }),
    ...(body === undefined ? {} : { body: listed(body).map(bodyOf) }),
  };
}

const listed = (text: string) => text.split(",").map((part) => part.trim());

function codeOf(text: string): string {
  const known = CUTTER_CATALOG.some(({ code }) => code === text);
  if (!known) {
    throw new Complaint([
      `--cutter: got "${text}"; give codes of ${CUTTER_CATALOG.map(({ code }) => code).join(", ")}`,
    ]);
  }
  return catalogCutter(text).code;
}

/** `4`, `3,5` or `3-5`. */
function wingsOf(text: string): number[] {
  const counts = listed(text).flatMap((part) => {
    const [from, to = from] = part.split("-").map((end) => (/^\d+$/.test(end) ? Number(end) : Number.NaN));
    return Array.from({ length: Math.max(0, Math.min(to, MOST_WINGS) - from + 1) || 0 }, (_, k) => from + k);
  });
  const sound = counts.length > 0 && counts.every((count) => count >= 1 && count <= MOST_WINGS);
  if (!sound || !/^[\d,\s-]+$/.test(text)) {
    throw new Complaint([`--wings: got "${text}"; give counts from 1 to ${MOST_WINGS}, for example 4,5 or 3-6`]);
  }
  return [...new Set(counts)];
}

function bevelOf(text: string) {
  const degrees = Number(text.replace(/\s*(deg|°)$/, ""));
  const found = tradeBevels().find(({ angle }) => Math.abs((angle * 180) / Math.PI - degrees) < 1e-6);
  if (text !== "" && found) return found;
  const names = tradeBevels().map(({ angle }) => Math.round((angle * 180) / Math.PI));
  throw new Complaint([`--bevel: got "${text}"; give bevels of the trade in degrees: ${names.join(", ")}`]);
}

function bodyOf(text: string): "steel" | "matrix" {
  if (text === "steel" || text === "matrix") return text;
  throw new Complaint([`--body: got "${text}"; give steel, matrix or both`]);
}
