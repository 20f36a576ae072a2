import { DRAWING_ROOM, HALO, INK, SOFT_INK, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type PagePoint, pair, type Svg, thinned } from "../svg/index.ts";
import type { AxisRange } from "./axis-range.ts";
import { tickStep } from "./axis-ticks.ts";
import { plain } from "./plain-number.ts";

/** One chart on the page: its frame in millimetres and what its axes run over. */
export interface ChartPanel {
  /** [mm] */
  readonly left: number;
  /** [mm] */
  readonly right: number;
  /** [mm] */
  readonly top: number;
  /** [mm] */
  readonly bottom: number;
  readonly x: AxisRange;
  readonly y: AxisRange;
}

/** Where charts stand on a sheet, with room at the left for the name and figures of an upright axis [mm]. */
export const CHART_ROOM = {
  left: DRAWING_ROOM.left + 13,
  right: DRAWING_ROOM.right - 3,
  top: DRAWING_ROOM.top + 10,
} as const;
/** Faint lines behind a chart: seen where looked for, lighter than anything drawn on them. */
export const GRID = "#dfe3e7";

/** Where a point of the chart lies on the page. */
export function onPanel({ left, right, top, bottom, x, y }: ChartPanel, across: number, up: number): PagePoint {
  return [
    left + ((across - x.from) / (x.to - x.from)) * (right - left),
    bottom - ((up - y.from) / (y.to - y.from)) * (bottom - top),
  ];
}

/** The line round a panel. */
export function panelFrame({ left, right, top, bottom }: Pick<ChartPanel, "left" | "right" | "top" | "bottom">): Svg {
  return element("rect", {
    x: left,
    y: top,
    width: right - left,
    height: bottom - top,
    fill: "none",
    stroke: INK,
    "stroke-width": 0.25,
  });
}

/** Frame, ticks, faint lines across and names of a panel; figures under it only where they are asked for. */
export function panelAxes(
  panel: ChartPanel,
  names: { readonly up: string; readonly across?: string; readonly heading?: string },
): Svg {
  const { left, right, top, bottom, x, y } = panel;
  const upStep = tickStep(y.to - y.from, 5);
  const acrossStep = tickStep(x.to - x.from, 12);
  const ups = multiples(y, upStep);
  const acrosses = multiples(x, acrossStep);
  const middle: PagePoint = [left - 12.5, (top + bottom) / 2];
  return element(
    "g",
    { class: "axes" },
    element("path", {
      d: ups
        .map((up) =>
          linePath([
            [left, onPanel(panel, x.from, up)[1]],
            [right, onPanel(panel, x.from, up)[1]],
          ]),
        )
        .join(""),
      stroke: GRID,
      "stroke-width": 0.2,
    }),
    panelFrame(panel),
    element("path", {
      d: acrosses
        .map((across) => {
          const [at] = onPanel(panel, across, y.from);
          return linePath([
            [at, bottom],
            [at, bottom + 1.2],
          ]);
        })
        .join(""),
      stroke: INK,
      "stroke-width": 0.2,
    }),
    ...ups.map((up) =>
      textAt([left - 1.6, onPanel(panel, x.from, up)[1] + 1], plain(up), TYPE.caption, { "text-anchor": "end" }),
    ),
    ...(names.across === undefined
      ? []
      : [
          ...acrosses.map((across) =>
            textAt([onPanel(panel, across, y.from)[0], bottom + 4.4], plain(across), TYPE.caption, {
              "text-anchor": "middle",
            }),
          ),
          textAt([(left + right) / 2, bottom + 8.6], names.across, TYPE.note, { "text-anchor": "middle" }),
        ]),
    textAt(middle, names.up, TYPE.caption, { "text-anchor": "middle", transform: `rotate(-90 ${pair(middle)})` }),
    ...(names.heading === undefined ? [] : [textAt([left, top - 1.6], names.heading, TYPE.note)]),
  );
}

function multiples({ from, to }: AxisRange, step: number): number[] {
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => (first + k) * step);
}

/** A line through the points of a chart. */
export function panelLine(
  panel: ChartPanel,
  points: readonly (readonly [across: number, up: number])[],
  look: { readonly stroke: string; readonly width?: number; readonly dash?: string; readonly class?: string },
): Svg {
  const line = thinned(
    points.map(([across, up]) => onPanel(panel, across, up)),
    0.02,
  );
  return element("path", {
    class: look.class,
    d: linePath(line),
    fill: "none",
    stroke: look.stroke,
    "stroke-width": look.width ?? 0.45,
    "stroke-linejoin": "round",
    "stroke-dasharray": look.dash,
  });
}

/** A level line across a panel, its words at the right end over it where there are any. */
export function levelLine(panel: ChartPanel, up: number, words?: string): Svg[] {
  if (up < panel.y.from || up > panel.y.to) return [];
  const [, y] = onPanel(panel, panel.x.from, up);
  return [
    element("path", {
      d: linePath([
        [panel.left, y],
        [panel.right, y],
      ]),
      stroke: SOFT_INK,
      "stroke-width": 0.3,
      "stroke-dasharray": "2 1",
    }),
    ...(words === undefined
      ? []
      : [textAt([panel.right - 1, y - 0.8], words, TYPE.caption, { "text-anchor": "end", fill: SOFT_INK, ...HALO })]),
  ];
}

/** A dot on a line with its words beside it, on the side where there is room. */
export function markedPoint(panel: ChartPanel, across: number, up: number, words: string): Svg {
  const [x, y] = onPanel(panel, across, up);
  const toLeft = x > (panel.left + panel.right) / 2;
  const high = y < panel.top + 3.6;
  return element(
    "g",
    { class: "marked-point" },
    element("circle", { cx: x, cy: y, r: 0.8, fill: INK }),
    textAt([x + (toLeft ? -1.8 : 1.8), y + (high ? 3.4 : -1.4)], words, TYPE.caption, {
      "text-anchor": toLeft ? "end" : "start",
      ...HALO,
    }),
  );
}

/** Rows of panels, one under the other, that share their left and right edges [mm]. */
export function stackedPanels(
  count: number,
  { left, right, top, bottom, gap }: Record<"left" | "right" | "top" | "bottom" | "gap", number>,
): Pick<ChartPanel, "left" | "right" | "top" | "bottom">[] {
  const height = (bottom - top - gap * (count - 1)) / count;
  return Array.from({ length: count }, (_, k) => {
    const start = top + k * (height + gap);
    return { left, right, top: start, bottom: start + height };
  });
}
