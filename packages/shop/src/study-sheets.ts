import type { BandsStudy, MapStudy, Workup } from "@bitwright/traveler";
import { bandsCsv, bandsDrawings } from "./bands/index.ts";
import { mapDrawing, mapLinesCsv, mapTableCsv } from "./map/index.ts";
import { holeOf, type Sheet, type SheetOptions, titleOf } from "./sheets.ts";

/** The sheets of the maps of a workup: one drawing for each bed, the table of rates and the lines of the limits. */
export function mapSheets(workup: Workup, study: MapStudy, { units, program }: SheetOptions): Sheet[] {
  const title = titleOf(workup, program);
  const hole = holeOf(workup);
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
  const drawings = bandsDrawings({ study, units, hole: holeOf(workup), title: titleOf(workup, program) });
  return [
    ...drawings.map((text, k) => ({ name: drawings.length === 1 ? "bands.svg" : `bands-${k + 1}.svg`, text })),
    { name: "bands.csv", text: bandsCsv(study, units) },
  ];
}
