import { element, type Svg } from "../svg/index.ts";
import type { DrawingScale } from "./drawing-scale.ts";
import { INK, PAPER } from "./palette.ts";
import { checkBar, scaleBars } from "./scale-bars.ts";
import { TYPE, textAt } from "./text.ts";
import { linesWithin } from "./text-width.ts";
import { type SheetTitle, TITLE_HEIGHT, titleBlock } from "./title-block.ts";

/** The sheet: narrow enough for A4, short enough for US letter, so that both print it at full size [mm]. */
const SHEET = { width: 210, height: 279, margin: 8 } as const;

const INNER = SHEET.width - 2 * SHEET.margin;
const TITLE_TOP = SHEET.height - SHEET.margin - TITLE_HEIGHT;
const BARS_TOP = TITLE_TOP - 8.5;

/** Where the drawing itself may stand [mm]; a sheet without a scale has no bars under it and may go on to `bottomOfChart`. */
export const DRAWING_ROOM = {
  left: SHEET.margin + 8,
  right: SHEET.width - SHEET.margin - 2,
  top: SHEET.margin + 19,
  bottom: BARS_TOP - 2,
  bottomOfChart: TITLE_TOP - 4,
} as const;

/** Everything a sheet needs around its drawing. */
export interface SheetParts {
  /** Start of every id in the drawing, so that two drawings can stand in one page. */
  readonly id: string;
  readonly heading: string;
  /** One or two lines under the heading. */
  readonly subheading: readonly string[];
  /** What the picture shows, for those who cannot see it. */
  readonly description: string;
  readonly title: SheetTitle;
  readonly view: string;
  readonly units: string;
  readonly hole: string;
  /** Left out for a chart, which has axes and no scale to measure by. */
  readonly scale?: DrawingScale;
  readonly definitions?: readonly Svg[];
  readonly drawing: readonly Svg[];
}

/** A whole sheet as SVG text, at full size in millimetres. */
export function drawingSheet(parts: SheetParts): string {
  const { id, title, scale, view, units, hole } = parts;
  const { margin } = SHEET;
  const frame = { x: margin, y: margin, width: INNER, height: SHEET.height - 2 * margin };
  const sub = parts.subheading.flatMap((line) => linesWithin(line, TYPE.note, INNER - 6, 1));
  const sheet = element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      width: `${SHEET.width}mm`,
      height: `${SHEET.height}mm`,
      viewBox: `0 0 ${SHEET.width} ${SHEET.height}`,
      role: "img",
      "aria-labelledby": `${id}-title ${id}-desc`,
      "font-family": "sans-serif",
    },
    element("title", { id: `${id}-title` }, `${parts.heading}: ${title.bit}, ${title.job}`),
    element("desc", { id: `${id}-desc` }, parts.description),
    ...(parts.definitions?.length ? [element("defs", {}, ...parts.definitions)] : []),
    element("rect", { width: SHEET.width, height: SHEET.height, fill: PAPER }),
    element("rect", { ...frame, fill: "none", stroke: INK, "stroke-width": 0.4 }),
    textAt([margin + 3, margin + 7.2], parts.heading, TYPE.heading, { "font-weight": "bold" }),
    ...sub.map((line, k) => textAt([margin + 3, margin + 12.4 + k * 4.2], line, TYPE.note)),
    ...parts.drawing,
    ...(scale ? [scaleBars([margin + 10, BARS_TOP], scale), checkBar([margin + 5, TITLE_TOP - 3])] : []),
    titleBlock([margin, TITLE_TOP], INNER, title, { view, scale: scale?.text ?? "none, a chart", units, hole }),
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${sheet.markup}\n`;
}
