import type { StabilityStudy, StudiedStability, Workup } from "@bitwright/traveler";
import type { SheetTitle } from "../sheet/index.ts";
import { holeOf, type Sheet, type SheetOptions, titleOf } from "../sheets.ts";
import { crossingDrawing } from "./crossing-drawing.ts";
import { sideForceDrawing } from "./side-force-drawing.ts";
import { speedsDrawing } from "./speeds-drawing.ts";
import { crossingsCsv, speedsCsv } from "./stability-csv.ts";
import { stickSlipDrawing } from "./stick-slip-drawing.ts";

/**
 * The sheets of the steadiness of a bit: for each bed its side force, the march in time and the speeds of the rotary, for
 * each boundary the way across, and the tables of the last two.
 */
export function stabilitySheets(
  workup: Workup,
  { beds }: Pick<StabilityStudy, "beds">,
  { units, program }: SheetOptions,
): Sheet[] {
  const drawn = beds.flatMap((bed) => drawingsOf(workup, bed, units));
  const title = { ...titleOf(workup, program), hole: holeOf(workup) };
  return [
    ...drawn.map(({ name, draw }, k) => ({ name, text: draw({ ...title, sheet: `${k + 1} of ${drawn.length}` }) })),
    ...(beds.length === 0
      ? []
      : [
          { name: "crossings.csv", text: crossingsCsv(beds, units) },
          { name: "speeds.csv", text: speedsCsv(beds, units) },
        ]),
  ];
}

interface Drawn {
  readonly name: string;
  readonly draw: (title: SheetTitle) => string;
}

function drawingsOf(
  { bit }: Workup,
  { number, name: bed, weight, rotarySpeed, review, speeds }: StudiedStability,
  units: SheetOptions["units"],
): Drawn[] {
  const { loads, imbalance, crossings, string } = review;
  const running = { rotarySpeed, weight, bed, units };
  return [
    {
      name: `side-force-${number}.svg`,
      draw: (title) =>
        sideForceDrawing({
          layout: bit.layout,
          imbalance,
          cutterForces: { x: loads.lateralX, y: loads.lateralY },
          bed,
          title,
          units,
        }),
    },
    ...crossings.map((crossed, k) => ({
      name: crossings.length === 1 ? `crossing-${number}.svg` : `crossing-${number}-${k + 1}.svg`,
      draw: (title: SheetTitle) => crossingDrawing({ crossed, title, units }),
    })),
    ...(string
      ? [
          {
            name: `stick-slip-${number}.svg`,
            draw: (title: SheetTitle) =>
              stickSlipDrawing({ march: string.march, scaled: string.scaled, ...running, title }),
          },
        ]
      : []),
    ...(string && speeds && speeds.tried.length > 1
      ? [
          {
            name: `speeds-${number}.svg`,
            draw: (title: SheetTitle) => speedsDrawing({ string, speeds, ...running, title }),
          },
        ]
      : []),
  ];
}
