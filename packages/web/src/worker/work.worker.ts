import { depthSheets, flowSheets, type Sheet, sheetsOf, stripSheet } from "@bitwright/shop";
import {
  bedsFromLas,
  bedsFromLithologyTable,
  depthStudy,
  flowStudy,
  type GroundImport,
  type ImportRefusal,
  type LasBedsOptions,
  type LithologyBedsOptions,
  type Problem,
  parseTraveler,
  readLas,
  type UnitSystem,
  type Workup,
  workUp,
} from "@bitwright/traveler";
import { expose } from "comlink";
import { PROGRAM } from "./program.ts";

/** A job worked up, or why it cannot be. */
export type Worked =
  | {
      readonly ok: true;
      readonly workup: Workup;
      /** Time that reading and working up took [s]. */
      readonly took: number;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Groups of sheets that a screen shows together. */
export type SheetGroup = "ground" | "bit" | "string" | "flow";

let last: Workup | undefined;

function work(document: unknown): Worked {
  const began = performance.now();
  const parsed = parseTraveler(document);
  if (!parsed.ok) return parsed;
  last = workUp(parsed);
  return { ok: true, workup: last, took: (performance.now() - began) / 1000 };
}

/** Sheets of the job that was last worked up; none before that. */
function sheets(group: SheetGroup, units: UnitSystem): Sheet[] {
  if (!last) return [];
  const options = { units, program: PROGRAM };
  if (group === "ground") return [stripSheet(last, options)];
  // The workup itself is a file for other programs, and too large to be sent about for a picture.
  if (group === "bit") return sheetsOf(last, options).filter(({ name }) => name !== "workup.json");
  if (group === "string") return depthSheets(last, depthStudy(last), options);
  const study = flowStudy(last);
  return study ? flowSheets(last, study, options) : [];
}

/** How a text of ground is to be read. */
export type GroundText =
  | { readonly as: "table"; readonly options: LithologyBedsOptions }
  | { readonly as: "log"; readonly options: LasBedsOptions };

/** Beds out of a table of intervals or a log, with the report of how it was read. */
function readGround(text: string | Uint8Array, how: GroundText): GroundImport | ImportRefusal {
  if (how.as === "table") return bedsFromLithologyTable(text, how.options);
  const las = readLas(text);
  return "refused" in las && las.refused ? las : bedsFromLas(las as Exclude<typeof las, ImportRefusal>, how.options);
}

const bench = { work, sheets, readGround };

export type Bench = typeof bench;

expose(bench);
