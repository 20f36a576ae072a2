import { type BedBands, type BedFigure, formatQuantity, type UnitSystem } from "@bitwright/traveler";
import { CUT_RAMP, INK, linesWithin, PAPER, SOFT_INK, STEEL, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";
import { bandText, driversText, heldText } from "./band-words.ts";

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

const BAR = { top: 8, height: 6 } as const;
const STRIP = { top: 16.8, height: 2.6 } as const;
const STRIP_FILLS = [STEEL.face, STEEL.line, STEEL.edge, STEEL.carbide, STEEL.tint] as const;

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
    ...(band ? bar(band, bed, top + BAR.top, x) : []),
    ...strip(drivers, left, right, top + STRIP.top),
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

function bar(
  { low, mid, high }: { readonly low: number; readonly mid: number; readonly high: number },
  { worked }: BedBands,
  y: number,
  x: RowPlace["x"],
): Svg[] {
  const box = (from: number, to: number, fill: string) =>
    element("rect", {
      x: x(from),
      y,
      width: Math.max(0.4, x(to) - x(from)),
      height: BAR.height,
      fill,
      stroke: INK,
      "stroke-width": 0.2,
    });
  return [
    box(low, mid, CUT_RAMP[1]),
    box(mid, high, CUT_RAMP[2]),
    element("path", {
      class: "median",
      d: linePath([
        [x(mid), y - 0.8],
        [x(mid), y + BAR.height + 0.8],
      ]),
      stroke: INK,
      "stroke-width": 0.9,
    }),
    element("circle", {
      class: "worked",
      cx: x(worked.rate),
      cy: y + BAR.height / 2,
      r: 1.4,
      fill: PAPER,
      stroke: STEEL.face,
      "stroke-width": 0.6,
    }),
  ];
}

/** The drivers as parts of one strip, darkest first. */
function strip(
  drivers: BedBands["bands"]["figures"]["rate"]["drivers"],
  left: number,
  right: number,
  y: number,
): Svg[] {
  let from = left;
  return drivers.flatMap(({ share }, k) => {
    const width = share * (right - left);
    const at = from;
    from += width;
    if (width < 0.3) return [];
    return [
      element("rect", {
        class: "driver",
        x: at,
        y,
        width,
        height: STRIP.height,
        fill: STRIP_FILLS[Math.min(k, STRIP_FILLS.length - 1)],
        stroke: PAPER,
        "stroke-width": 0.2,
      }),
    ];
  });
}
