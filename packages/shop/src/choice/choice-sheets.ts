import { type ChoiceStudy, formatQuantity, type ResolvedBitSpec, type Workup } from "@bitwright/traveler";
import { holeOf, type Sheet, type SheetOptions, titleOf } from "../sheets.ts";
import { choiceCsv } from "./choice-csv.ts";
import { choiceDrawing } from "./choice-drawing.ts";

/** The sheets of a choice: the picture, the table of every candidate, and the first as it is written in a traveler. */
export function choiceSheets(workup: Workup, study: ChoiceStudy, { units, program }: SheetOptions): Sheet[] {
  const style = { units, currency: workup.inquiry.job.currency };
  const csv = { name: "candidates.csv", text: choiceCsv(study, style) };
  if (!study.bestSpec) return [csv];
  const title = { ...titleOf(workup, program), sheet: "1 of 1" };
  return [
    { name: "choice.svg", text: choiceDrawing({ study, style, hole: holeOf(workup), title }) },
    csv,
    { name: "best-bit.json", text: `${JSON.stringify({ spec: specAsTyped(study.bestSpec) }, null, 2)}\n` },
  ];
}

/** A specification as a person would type it: what the candidate names, ready for `bit` of a traveler. */
function specAsTyped(spec: ResolvedBitSpec): Record<string, unknown> {
  const angle = (si: number) => formatQuantity("angle", si, "field");
  const { cutter, wings, cuttersPerWing, backRake, chamferAngle = 0, chamferWidth = 0, body, ports } = spec;
  return {
    cutter,
    wings,
    cuttersPerWing,
    ...(backRake ? { backRake: { centre: angle(backRake.centre), gauge: angle(backRake.gauge) } } : {}),
    chamferAngle: angle(chamferAngle),
    chamferWidth: formatQuantity("length", chamferWidth, "metric"),
    body,
    ...(ports ? { ports: { count: ports.count, diameter: formatQuantity("diameter", ports.diameter, "field") } } : {}),
  };
}
