import type { Life } from "@bitwright/engine";
import { inUnit, type LifeBands, type LifeFigure, type UnitSystem, unitFor } from "@bitwright/traveler";
import { BAR_HEIGHT, driversStrip, spreadBar } from "../bands/spread-marks.ts";
import { evenAxis, plain } from "../chart/index.ts";
import {
  DRAWING_ROOM,
  drawingSheet,
  INK,
  linesWithin,
  type SheetTitle,
  SOFT_INK,
  TYPE,
  textAt,
} from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";
import { endsText, LIFE_FIGURES, lifeBandText, lifeDriversText } from "./life-bands-words.ts";

/** What the sheet of a life's spread is made from. */
export interface LifeBandsDrawingInput {
  readonly spread: LifeBands;
  /** The life at the best single values. */
  readonly life: Pick<Life, "footage" | "timeOnBottom">;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  readonly hole: string;
}

const ROOM = { left: DRAWING_ROOM.left + 2, right: DRAWING_ROOM.right - 9, top: DRAWING_ROOM.top + 8 } as const;
const ROW = 52;

/** How far a bit may go, over what is not known of wear and ground, as a sheet of SVG: hole, hours and mean rate. */
export function lifeBandsDrawing({ spread, life, title, units, hole }: LifeBandsDrawingInput): string {
  const { samples, asked, seed } = spread.bands;
  const worked: Readonly<Record<(typeof SHOWN)[number], number>> = {
    footage: life.footage,
    timeOnBottom: life.timeOnBottom,
    meanRate: life.timeOnBottom > 0 ? life.footage / life.timeOnBottom : 0,
  };
  const counted = samples < asked ? `Stopped early: ${samples} of ${asked} lives` : `${samples} lives`;
  const sub = [
    "Bar: eight of ten such bits lie in it, one below and one above. Line in it: as many do worse as better.",
    "Circle: the figure worked with. Blue strip: what drives the spread, by rank. An estimate, never a permission.",
    `${counted}, seed ${seed}. Ended by ${endsText(spread)}.`,
  ];
  return drawingSheet({
    id: "life-bands",
    heading: "How far it may go",
    subheading: sub,
    description: `Spread of a bit's life: hole drilled ${lifeBandText(spread, "footage", units)}. ${sub[2]}`,
    title,
    view: "P10, P50, P90 of a life",
    units: `${unitFor("depth", units)}, h, ${unitFor("rate", units)}`,
    hole,
    drawing: SHOWN.flatMap((figure, k) => row(spread, figure, worked[figure], ROOM.top + k * ROW, units)),
  });
}

const SHOWN = ["footage", "timeOnBottom", "meanRate"] as const satisfies readonly LifeFigure[];

function row(spread: LifeBands, figure: (typeof SHOWN)[number], worked: number, top: number, units: UnitSystem): Svg[] {
  const { band, drivers } = spread.bands.figures[figure];
  const { name } = LIFE_FIGURES[figure];
  const unit = figure === "timeOnBottom" ? "h" : unitFor(figure === "footage" ? "depth" : "rate", units);
  const head = textAt([ROOM.left, top + 4], name, TYPE.value, { "font-weight": "bold" });
  if (!band) return [head, textAt([ROOM.left, top + 10], "No life has such a figure.", TYPE.caption)];
  const kind = LIFE_FIGURES[figure].kind ?? "depth";
  const amount = (si: number) => inUnit(kind, si, unit);
  const axis =
    figure === "meanRate"
      ? evenSteps(amount(Math.max(band.high, worked)))
      : decades(amount(band.low), amount(Math.max(band.high, worked)));
  const x = (si: number) => ROOM.left + axis.share(amount(si)) * (ROOM.right - ROOM.left);
  const at = (value: number) => ROOM.left + axis.share(value) * (ROOM.right - ROOM.left);
  const bottom = top + 8 + BAR_HEIGHT + 3;
  const lines = [
    `${lifeBandText(spread, figure, units)}. Driven by ${lifeDriversText(spread, figure) || "nothing: it does not spread"}.`,
  ].flatMap((text) => linesWithin(text, TYPE.caption, ROOM.right - ROOM.left, 2));
  return [
    head,
    element("path", {
      class: "axis",
      d: `${linePath([
        [ROOM.left, bottom],
        [ROOM.right, bottom],
      ])}${axis.ticks
        .map((value) =>
          linePath([
            [at(value), bottom],
            [at(value), bottom + 1.4],
          ]),
        )
        .join("")}`,
      fill: "none",
      stroke: INK,
      "stroke-width": 0.3,
    }),
    ...axis.ticks.map((value) =>
      textAt([at(value), bottom + 4.8], plain(value), TYPE.caption, { "text-anchor": "middle" }),
    ),
    textAt(
      [ROOM.right, top + 4],
      `${unit}${figure === "meanRate" ? "" : ", each step ten times the last"}`,
      TYPE.caption,
      {
        "text-anchor": "end",
        fill: SOFT_INK,
      },
    ),
    element("g", { class: "spread" }, ...spreadBar(band, worked, top + 8, x)),
    ...driversStrip(drivers, ROOM.left, ROOM.right, bottom + 8),
    ...lines.map((text, k) => textAt([ROOM.left, bottom + 15 + 4 * k], text, TYPE.caption)),
  ];
}

/** An axis of a figure in its unit: its ticks, and where a figure stands as a share of its length. */
interface Axis {
  readonly ticks: readonly number[];
  readonly share: (value: number) => number;
}

function evenSteps(largest: number): Axis {
  const { end, ticks } = evenAxis(1.04 * largest, 8);
  return { ticks, share: (value) => value / end };
}

/** Powers of ten; what is less than the first stands at its beginning. */
function decades(least: number, largest: number): Axis {
  const last = Math.ceil(Math.log10(Math.max(largest, 10)) - 1e-9);
  const first = Math.min(last - 1, Math.max(0, Math.floor(Math.log10(Math.max(least, 1)) + 1e-9)));
  return {
    ticks: Array.from({ length: last - first + 1 }, (_, k) => 10 ** (first + k)),
    share: (value) => (Math.log10(Math.max(value, 10 ** first)) - first) / (last - first),
  };
}
