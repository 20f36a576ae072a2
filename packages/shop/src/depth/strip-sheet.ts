import type { Workup } from "@bitwright/traveler";
import { holeOf, type Sheet, type SheetOptions, titleOf } from "../sheets.ts";
import { stripDrawing } from "./strip-drawing.ts";

/** The sheet of the ground of a worked-up job. */
export function stripSheet(workup: Workup, { units, program }: SheetOptions): Sheet {
  const { ground, advice, inquiry } = workup;
  const { depth } = advice.casing;
  const text = stripDrawing({
    beds: ground.beds,
    fits: advice.fits,
    bitHole: inquiry.inquiry.bitHole,
    ...(depth === undefined ? {} : { shoe: depth }),
    title: { ...titleOf(workup, program), hole: holeOf(workup), sheet: "1 of 1" },
    units,
  });
  return { name: "ground.svg", text };
}
