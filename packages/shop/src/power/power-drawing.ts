import { inUnit, type PowerStation, type UnitSystem } from "@bitwright/traveler";
import { type ChartPanel, GRID, onPanel, panelFrame, plain, rangeFromZero, tickStep, ticks } from "../chart/index.ts";
import {
  DRAWING_ROOM,
  drawingSheet,
  HALO,
  INK,
  linesWithin,
  PAPER,
  type SheetTitle,
  TYPE,
  textAt,
  textWidth,
} from "../sheet/index.ts";
import { type Figures, figuresIn } from "../summary/figures.ts";
import { element, type Svg, svgNumber } from "../svg/index.ts";
import { partsOf } from "./engine-parts.ts";

/** What the sheet of the engine is made from. */
export interface PowerDrawingInput {
  readonly power: PowerStation;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
}

/** Room for the names of beds [mm]. */
const NAMES = 38;
/** A row is as high as this where there is room [mm]. */
const MOST_ROW = 30;
/** Rows lower than this have their words beside the bar, where there is room, and not under it [mm]. */
const LOW_ROW = 8;
/** Room over the bars for the legend [mm]. */
const LEGEND = 12;

/** Power of each bed, its parts stacked, against the line of the engine, with its fuel, as a sheet of SVG. */
export function powerDrawing({ power, title, units }: PowerDrawingInput): string {
  const { beds, ratedPower } = power;
  const unit = units === "field" ? "hp" : "kW";
  const figures = figuresIn(units);
  const inUnits = (si: number) => inUnit("power", si, unit);
  const top = DRAWING_ROOM.top + LEGEND;
  const height = Math.min(DRAWING_ROOM.bottomOfChart - 14 - top, MOST_ROW * beds.length);
  const panel: ChartPanel = {
    left: DRAWING_ROOM.left + NAMES,
    right: DRAWING_ROOM.right - 4,
    top,
    bottom: top + height,
    x: rangeFromZero([inUnits(ratedPower), ...beds.map(({ enginePower }) => inUnits(enginePower.high))], 10),
    y: { from: 0, to: beds.length },
  };
  const hardest = beds.reduce((most, bed) => (bed.enginePower.mid > most.enginePower.mid ? bed : most));
  const words = [
    `Most in ${hardest.name}: ${figures.of("power", hardest.enginePower.mid)} of ${figures.of("power", ratedPower)}, ${figures.of("share", hardest.engineShare.mid)}.`,
    "Whisker: what drives and pump may lose, by common practice; nothing of what is not known of the ground.",
  ];
  return drawingSheet({
    id: "power",
    heading: "What the engine gives, bed by bed",
    subheading: words,
    description: `Power of the engine in each bed, by its parts, against its rating, with the fuel. ${words.join(" ")}`,
    title,
    view: "power by bed",
    units: unit,
    hole: title.hole ?? "",
    drawing: [
      ...legend(power, panel.left, DRAWING_ROOM.top + 4),
      axis(panel, unit),
      ...beds.map((bed, at) => bar({ power, bed, at, panel, inUnits, figures })),
      ...ratedLine(panel, inUnits(ratedPower), figures.of("power", ratedPower)),
    ],
  });
}

function legend(power: PowerStation, left: number, y: number): Svg[] {
  let x = left;
  return partsOf(power).map(({ name, fill }) => {
    const at = x;
    x += 7 + textWidth(name, TYPE.note);
    return element(
      "g",
      { class: "legend" },
      element("rect", { x: at, y: y - 2.4, width: 3, height: 3, fill, stroke: INK, "stroke-width": 0.2 }),
      textAt([at + 4, y], name, TYPE.note),
    );
  });
}

interface BarParts {
  readonly power: PowerStation;
  readonly bed: PowerStation["beds"][number];
  readonly at: number;
  readonly panel: ChartPanel;
  readonly inUnits: (si: number) => number;
  readonly figures: Figures;
}

function bar({ power, bed, at, panel, inUnits, figures }: BarParts): Svg {
  const row = (panel.bottom - panel.top) / panel.y.to;
  const top = panel.top + at * row;
  const middle = top + row / 2;
  const across = (si: number) => onPanel(panel, inUnits(si), 0)[0];
  const names = linesWithin(bed.name, TYPE.caption, NAMES - 2, 2);
  let from = 0;
  const pieces = partsOf(power).map(({ part, name, fill }) => {
    const start = from;
    from += bed.parts[part];
    return element(
      "rect",
      {
        x: across(start),
        y: top + row * 0.2,
        width: across(from) - across(start),
        height: row * 0.5,
        fill,
        stroke: INK,
        "stroke-width": 0.2,
      },
      element("title", {}, `${bed.name}, ${name}: ${figures.of("power", bed.parts[part])}`),
    );
  });
  const { low, high } = bed.enginePower;
  const fuel = bed.fuelPerLength ? `, ${figures.of("fuel per length", bed.fuelPerLength.mid)}` : "";
  function saidAt(words: string): Svg[] {
    const halo = { ...HALO, stroke: PAPER };
    if (row >= LOW_ROW) return [textAt([panel.left + 1.5, top + row * 0.92], words, TYPE.caption, halo)];
    const x = across(high) + 2;
    return x + textWidth(words, TYPE.caption) < panel.right ? [textAt([x, middle + 1], words, TYPE.caption, halo)] : [];
  }
  const said = `${figures.of("share", bed.engineShare.mid)} of the engine, ${figures.of("fuel flow", bed.fuelFlow.mid)}${fuel}`;
  return element(
    "g",
    { class: "bed-power" },
    ...names.map((text, k) =>
      textAt([panel.left - 2, middle + (k - (names.length - 1) / 2) * 3.2], text, TYPE.caption, {
        "text-anchor": "end",
      }),
    ),
    ...pieces,
    element("path", {
      class: "whisker",
      d: `M${svgNumber(across(low))} ${svgNumber(middle - row * 0.05)}H${svgNumber(across(high))}`,
      stroke: INK,
      "stroke-width": 0.5,
    }),
    ...saidAt(said),
  );
}

/** The rating of the engine as an upright line over the bars, its words at the top. */
function ratedLine(panel: ChartPanel, rated: number, words: string): Svg[] {
  const [x] = onPanel(panel, rated, 0);
  const toLeft = x + textWidth(`engine ${words}`, TYPE.caption) > panel.right;
  return [
    element("path", {
      class: "rated",
      d: `M${svgNumber(x)} ${svgNumber(panel.top)}V${svgNumber(panel.bottom)}`,
      stroke: INK,
      "stroke-width": 0.5,
      "stroke-dasharray": "2.4 1.2",
    }),
    textAt([x, panel.top - 1.6], `engine ${words}`, TYPE.caption, {
      "text-anchor": toLeft ? "end" : "middle",
      ...HALO,
    }),
  ];
}

/** Frame, upright lines at even powers and the figures under them. */
function axis(panel: ChartPanel, unit: string): Svg {
  const { left, right, top, bottom, x } = panel;
  const places = ticks(x.to, tickStep(x.to - x.from, 10)).map((value) => ({ value, at: onPanel(panel, value, 0)[0] }));
  return element(
    "g",
    { class: "axes" },
    element("path", {
      d: places.map(({ at }) => `M${svgNumber(at)} ${svgNumber(top)}V${svgNumber(bottom)}`).join(""),
      stroke: GRID,
      "stroke-width": 0.2,
    }),
    panelFrame(panel),
    ...places.map(({ value, at }) =>
      textAt([at, bottom + 4.4], plain(value), TYPE.caption, { "text-anchor": "middle" }),
    ),
    textAt([(left + right) / 2, bottom + 8.6], `power at the engine, ${unit}`, TYPE.note, { "text-anchor": "middle" }),
  );
}
