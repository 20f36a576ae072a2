import type { DepthStudy, Workup } from "@bitwright/traveler";
import { holeOf, type Sheet, type SheetOptions, titleOf } from "../sheets.ts";
import { ceilingDrawing } from "./ceiling-drawing.ts";
import { depthCsv } from "./depth-csv.ts";
import { weightDrawing } from "./weight-drawing.ts";

/** The sheets of weight and cleaning by depth: weight with feed and gauge, rate ceiling with times, and the table of joints. */
export function depthSheets(workup: Workup, study: DepthStudy, { units, program }: SheetOptions): Sheet[] {
  const { joints } = study;
  if (joints.length === 0) return [];
  const cleaned = joints.some(({ cleaning }) => cleaning);
  const count = cleaned ? 2 : 1;
  const from = Math.min(...workup.cut.beds.map(({ bed }) => bed.top));
  const title = (sheet: number) => ({
    ...titleOf(workup, program),
    hole: holeOf(workup),
    sheet: `${sheet} of ${count}`,
  });
  return [
    { name: "weight-by-depth.svg", text: weightDrawing({ joints, from, units, title: title(1) }) },
    ...(cleaned ? [{ name: "rate-ceiling.svg", text: ceilingDrawing({ joints, from, units, title: title(2) }) }] : []),
    { name: "depth.csv", text: depthCsv(study, units) },
  ];
}
