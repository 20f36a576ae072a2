import { engage, MEASURE_WORDS, traceEdges, USUAL_ADVANCES } from "@bitwright/engine";
import type { LayoutStudy, Workup } from "@bitwright/traveler";
import { faceDrawing } from "../face/index.ts";
import { profileDrawing } from "../profile/index.ts";
import { holeOf, type Sheet, type SheetOptions, titleOf } from "../sheets.ts";
import { paretoDrawing } from "./pareto-drawing.ts";

/**
 * The sheets of a search for layouts: face and profile of one of them, the best compromise where none is named, the picture
 * of all, and every one as a layout file.
 */
export function layoutSheets(
  workup: Workup,
  study: LayoutStudy,
  {
    units,
    program,
    choice = study.solved.best,
  }: SheetOptions & {
    /** Which of the layouts is drawn, from 0 [-]. */
    readonly choice?: number;
  },
): Sheet[] {
  const { choices, measure } = study.solved;
  const chosen = choices[choice];
  const plainTitle = titleOf(workup, program);
  const title = { ...plainTitle, bit: `${plainTitle.bit}, layout ${choice + 1} of ${choices.length}` };
  const hole = holeOf(workup);
  const files = choices.map(({ bit }, at) => ({
    name: `layout-${at + 1}.json`,
    text: `${JSON.stringify(bit.layout, null, 2)}\n`,
  }));
  const pareto = paretoDrawing({ study, units, hole, title: { ...plainTitle, sheet: "1 of 3" } });
  if (!chosen) return files;
  const { layout, profile } = chosen.bit;
  const trace = traceEdges(layout);
  const advances = study.question.advances ?? USUAL_ADVANCES;
  return [
    { name: "pareto.svg", text: pareto },
    {
      name: "face.svg",
      text: faceDrawing({ layout, units, ports: workup.bit.ports, title: { ...title, sheet: "2 of 3" } }),
    },
    {
      name: "profile.svg",
      text: profileDrawing({
        trace,
        profile,
        engagement: engage(trace, Math.max(...advances)),
        share: { of: MEASURE_WORDS[measure], perCutter: chosen.figures.overMean },
        units,
        title: { ...title, sheet: "3 of 3" },
      }),
    },
    ...files,
  ];
}
