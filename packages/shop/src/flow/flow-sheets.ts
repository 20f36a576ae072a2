import type { FlowStudy, Workup } from "@bitwright/traveler";
import { holeOf, type Sheet, type SheetOptions, titleOf } from "../sheets.ts";
import { flowCsv, flowCurvesCsv } from "./flow-csv.ts";
import { lossesDrawing } from "./losses-drawing.ts";
import { pumpDrawing } from "./pump-drawing.ts";

/** The sheets of a circuit: where the pressure goes, pump against circuit, and the tables of both. */
export function flowSheets(workup: Workup, study: FlowStudy, { units, program }: SheetOptions): Sheet[] {
  const title = { ...titleOf(workup, program), hole: holeOf(workup) };
  return [
    { name: "losses.svg", text: lossesDrawing({ study, units, title: { ...title, sheet: "1 of 2" } }) },
    { name: "pump.svg", text: pumpDrawing({ study, units, title: { ...title, sheet: "2 of 2" } }) },
    { name: "flow.csv", text: flowCsv(study, units) },
    { name: "flow-curves.csv", text: flowCurvesCsv(study, units) },
  ];
}
