import { type BandsStudy, formatQuantity, type MapStudy, type Workup } from "@bitwright/traveler";
import { bandsCsv, bandsDrawings } from "./bands/index.ts";
import { mapDrawing, mapLinesCsv, mapTableCsv } from "./map/index.ts";
import { type Sheet, type SheetOptions, titleOf } from "./sheets.ts";

/** The sheets of the maps of a workup: one drawing for each bed, the table of rates and the lines of the limits. */
export function mapSheets(workup: Workup, study: MapStudy, { units, program }: SheetOptions): Sheet[] {
  const title = titleOf(workup, program);
  const hole = holeWords(workup);
  return [
    ...study.beds.map((bed, k) => ({
      name: `map-${bed.number}.svg`,
      text: mapDrawing({ bed, units, hole, title: { ...title, sheet: `${k + 1} of ${study.beds.length}` } }),
    })),
    { name: "map-rates.csv", text: mapTableCsv(study, units) },
    { name: "map-lines.csv", text: mapLinesCsv(study, units) },
  ];
}

/** The sheets of the spread of a workup: the drawing, on more sheets where the beds are many, and the table. */
export function bandsSheets(workup: Workup, study: BandsStudy, { units, program }: SheetOptions): Sheet[] {
  const drawings = bandsDrawings({ study, units, hole: holeWords(workup), title: titleOf(workup, program) });
  return [
    ...drawings.map((text, k) => ({ name: drawings.length === 1 ? "bands.svg" : `bands-${k + 1}.svg`, text })),
    { name: "bands.csv", text: bandsCsv(study, units) },
  ];
}

/** The hole as it was typed, and in millimetres where it was typed in something else. */
function holeWords({ inquiry }: Workup): string {
  const { diameter, diameterAsTyped } = inquiry.inquiry.bitHole;
  if (/mm\s*$/.test(diameterAsTyped)) return diameterAsTyped;
  return `${diameterAsTyped} (${formatQuantity("diameter", diameter, "metric", { figures: 6 })})`;
}
