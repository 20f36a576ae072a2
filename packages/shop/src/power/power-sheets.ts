import type { Workup } from "@bitwright/traveler";
import { holeOf, type Sheet, type SheetOptions, titleOf } from "../sheets.ts";
import { powerCsv } from "./power-csv.ts";
import { powerDrawing } from "./power-drawing.ts";

/** The sheets of the engine: power by bed against its rating, and the table; none where the bit drills nothing. */
export function powerSheets(workup: Workup, { units, program }: SheetOptions): Sheet[] {
  const { power } = workup;
  if (!power) return [];
  const title = { ...titleOf(workup, program), hole: holeOf(workup), sheet: "1 of 1" };
  return [
    { name: "power.svg", text: powerDrawing({ power, units, title }) },
    { name: "power.csv", text: powerCsv(power, units) },
  ];
}
