import type { LifeBed } from "@bitwright/engine";
import { formatQuantity, type UnitSystem } from "@bitwright/traveler";
import { INK, linesWithin, SOFT_INK, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";
import { bedLook } from "./bed-look.ts";

const SAMPLE = 9;
/** Height of a row with a second line, and of one without [mm]. */
const TALL = 7.6;
const LOW = 4;
/** With more beds than this a row names the bed alone. */
const MOST_TALL = 10;

const rowHeight = (beds: number) => (beds > MOST_TALL ? LOW : TALL);

/** Height of the legend of so many beds, in two columns [mm]. */
export function legendHeightOf(beds: number): number {
  return Math.ceil(beds / 2) * rowHeight(beds);
}

/** The beds by number with their ground or their line, in two columns, and how each is run. */
export function bedsLegend(
  id: string,
  beds: readonly LifeBed[],
  units: UnitSystem,
  asLines: boolean,
  {
    left,
    right,
    top,
  }: {
    /** [mm] */
    readonly left: number;
    /** [mm] */
    readonly right: number;
    /** [mm] */
    readonly top: number;
  },
): Svg {
  const rows = Math.ceil(beds.length / 2);
  const column = (right - left) / 2;
  const row = rowHeight(beds.length);
  const feet = (si: number) => formatQuantity("depth", si, units, { figures: 3 });
  return element(
    "g",
    { class: "beds" },
    ...beds.flatMap((bed, at) => {
      const x = left + Math.floor(at / rows) * column;
      const y = top + (at % rows) * row;
      const { stroke, dash, fill } = bedLook(id, at);
      const rpm = formatQuantity("rotary speed", bed.rotarySpeed, units, { figures: 3 });
      const most = formatQuantity("force", bed.weight, units, { figures: 3 });
      const run = `${feet(bed.top)} to ${feet(bed.bottom)}, ${rpm}, up to ${most}`;
      const sample = asLines
        ? element("path", {
            d: linePath([
              [x + 4, y + 1.6],
              [x + 4 + SAMPLE, y + 1.6],
            ]),
            stroke,
            "stroke-width": 0.5,
            "stroke-dasharray": dash,
          })
        : element("rect", { x: x + 4, y, width: SAMPLE, height: 3.2, fill, stroke: INK, "stroke-width": 0.15 });
      const width = column - SAMPLE - 7;
      return [
        textAt([x, y + 2.6], String(at + 1), TYPE.caption, { "font-weight": "bold" }),
        sample,
        ...linesWithin(bed.name, TYPE.caption, width, 1).map((line) =>
          textAt([x + SAMPLE + 5.5, y + 2.6], line, TYPE.caption),
        ),
        ...(row === TALL
          ? linesWithin(run, TYPE.caption, width, 1).map((line) =>
              textAt([x + SAMPLE + 5.5, y + 5.8], line, TYPE.caption, { fill: SOFT_INK }),
            )
          : []),
      ];
    }),
  );
}
