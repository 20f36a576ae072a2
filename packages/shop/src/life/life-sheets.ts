import type { LifeBands, LifeStation, Workup } from "@bitwright/traveler";
import { holeOf, type Sheet, type SheetOptions, titleOf } from "../sheets.ts";
import { heatDrawing } from "./heat-drawing.ts";
import { lifeBandsDrawing } from "./life-bands-drawing.ts";
import { lifeCsv } from "./life-csv.ts";
import { lifeDrawing } from "./life-drawing.ts";

/** The sheets of a life: the march as a drawing and as a table, the curves of critical weight, its spread where it was sampled; none without a life. */
export function lifeSheets(
  workup: Workup,
  { life, beds, limits, footageBand, heatCurves }: LifeStation,
  { units, program }: SheetOptions,
  spread?: LifeBands,
): Sheet[] {
  if (!life) return [];
  const title = titleOf(workup, program);
  const hole = holeOf(workup);
  const of = 1 + (heatCurves ? 1 : 0) + (spread ? 1 : 0);
  return [
    {
      name: "life.svg",
      text: lifeDrawing({
        life,
        beds,
        limits,
        units,
        hole,
        title: { ...title, sheet: `1 of ${of}` },
        ...(footageBand ? { footageBand } : {}),
      }),
    },
    ...(heatCurves
      ? [
          {
            name: "heat.svg",
            text: heatDrawing({ heatCurves, beds, units, hole, title: { ...title, sheet: `2 of ${of}` } }),
          },
        ]
      : []),
    ...(spread
      ? [
          {
            name: "life-bands.svg",
            text: lifeBandsDrawing({ spread, life, units, hole, title: { ...title, sheet: `${of} of ${of}` } }),
          },
        ]
      : []),
    { name: "life.csv", text: lifeCsv(life, { beds, units }) },
  ];
}
