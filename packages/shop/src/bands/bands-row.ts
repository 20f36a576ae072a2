import { type BedBands, type BedFigure, formatQuantity, type UnitSystem } from "@bitwright/traveler";
import { linesWithin, SOFT_INK, TYPE, textAt } from "../sheet/index.ts";
import { element, type Svg } from "../svg/index.ts";
import { bandText, driversText, heldText } from "./band-words.ts";
import { driversStrip, spreadBar } from "./spread-marks.ts";

/** Where a row stands on the page. */
export interface RowPlace {
  /** [mm] */
  readonly left: number;
  /** [mm] */
  readonly right: number;
  /** [mm] */
  readonly top: number;
  /** Page x of a rate [m/s] → [mm]. */
  readonly x: (rate: number) => number;
}

/** Least height of one row [mm]. */
export const ROW_HEIGHT = 35;

const BAR_TOP = 8;
const STRIP_TOP = 16.8;

/** One bed: the bar of its rate, what drives the spread as a strip, and the other figures in words. */
export function bandsRow(bed: BedBands, { left, right, top, x }: RowPlace, units: UnitSystem): Svg {
  const { band, drivers } = bed.bands.figures.rate;
  const depth = (si: number) => formatQuantity("depth", si, units, { figures: 3 });
  const force = formatQuantity("force", bed.weight, units, { figures: 3 });
  const speed = formatQuantity("rotary speed", bed.rotarySpeed, units, { figures: 3 });
  const [name = ""] = linesWithin(bed.name, TYPE.value, 80, 1);
  const line = (text: string, y: number, more = {}) =>
    linesWithin(text, TYPE.caption, right - left, 1).map((one) => textAt([left, top + y], one, TYPE.caption, more));
  const other = (figure: BedFigure) => bandText(figure, bed.bands.figures[figure].band, units);
  const wanted = formatQuantity("rate", bed.worked.freeRate, units, { figures: 2 });
  return element(
    "g",
    { class: "bed-bands" },
    textAt([left, top + 4], name, TYPE.value, { "font-weight": "bold" }),
    textAt(
      [right, top + 4],
      `${depth(bed.top)} to ${depth(bed.bottom)}, ${bed.rock}; ${force} at ${speed}`,
      TYPE.caption,
      {
        "text-anchor": "end",
        fill: SOFT_INK,
      },
    ),
    ...(band ? spreadBar(band, bed.worked.rate, top + BAR_TOP, x) : []),
    ...driversStrip(drivers, left, right, top + STRIP_TOP),
    ...line(`Driven by ${driversText(bed, "rate") || "nothing: it does not spread"}.`, 23),
    ...line(`Rate ${bandText("rate", band, units)}. Held by ${heldText(bed)} of the samples.`, 27),
    ...line(
      `Weight for ${wanted}: ${other("weightForRate")}. Torque ${other("torque")}. MSE ${other("mechanicalEnergy")}.`,
      31,
      {
        fill: SOFT_INK,
      },
    ),
  );
}
