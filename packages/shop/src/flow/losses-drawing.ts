import { type FlowCase, inUnit, lossesInOrder, type PartLoss } from "@bitwright/traveler";
import { type ChartPanel, GRID, onPanel, panelFrame, plain, rangeFromZero, tickStep, ticks } from "../chart/index.ts";
import {
  CUT_RAMP,
  DRAWING_ROOM,
  drawingSheet,
  HALO,
  INK,
  linesWithin,
  PAPER,
  SOFT_INK,
  STEEL,
  TYPE,
  textAt,
} from "../sheet/index.ts";
import { figuresIn } from "../summary/figures.ts";
import { element, type Svg, svgNumber } from "../svg/index.ts";
import { caseInWords } from "./flow-table.ts";
import type { FlowDrawingInput } from "./pump-drawing.ts";

const FILL: Readonly<Record<PartLoss["part"], string>> = {
  "surface gear": STEEL.tint,
  pipe: STEEL.carbide,
  ports: CUT_RAMP[2],
  annulus: STEEL.edge,
};
/** Wide enough for the name of most annuli [mm]. */
const NAMES = 42;
/** Room for one part [mm]; a long string has many and they stand closer. */
const MOST_ROW = 15;

/** Where the pressure of the pump goes as a sheet of SVG: part after part from the pump back to the pit, now and changed. */
export function lossesDrawing({ study, title, units }: FlowDrawingInput): string {
  const { present, changed } = study;
  const figures = figuresIn(units);
  const unit = units === "field" ? "psi" : "kPa";
  const cases = [{ of: present, word: "Now" }, ...(changed ? [{ of: changed, word: "Changed" }] : [])];
  const most = Math.max(...cases.map(({ of }) => inUnit("pressure", of.circuit.pumpPressure, unit)));
  const top = DRAWING_ROOM.top + 8;
  const gap = 20;
  const room = (DRAWING_ROOM.bottomOfChart - 14 - top - gap * (cases.length - 1)) / cases.length;
  const words = cases.map(
    ({ of, word }) =>
      `${word}: ${figures.of("pressure", of.circuit.pumpPressure)} at ${figures.of("flow", of.flow > 0 ? of.flow : of.asked)} with ${caseInWords(of, figures)}; ${figures.of("share", of.circuit.shareAtPorts)} of it at the ports.`,
  );
  return drawingSheet({
    id: "losses",
    heading: "Where the pump's pressure goes",
    subheading: words,
    description: `Pressure left along the way of the fluid, from the pump back to the pit. ${words.join(" ")}`,
    title,
    view: "losses by part",
    units: unit,
    hole: title.hole ?? "",
    drawing: cases.flatMap(({ of, word }, k) => {
      const rows = lossesInOrder(of.circuit);
      const height = Math.min(room, MOST_ROW * (rows.length + 1));
      const start = top + k * (MOST_ROW * (rows.length + 1) < room ? height + gap : room + gap);
      const panel: ChartPanel = {
        left: DRAWING_ROOM.left + NAMES,
        right: DRAWING_ROOM.right - 4,
        top: start,
        bottom: start + height,
        x: rangeFromZero([most], 10),
        y: { from: 0, to: rows.length + 1 },
      };
      return waterfall(panel, { rows, of, word, unit, shown: (si) => figures.of("pressure", si) });
    }),
  });
}

interface WaterfallParts {
  readonly rows: readonly PartLoss[];
  readonly of: FlowCase;
  readonly word: string;
  readonly unit: string;
  readonly shown: (pressure: number) => string;
}

function waterfall(panel: ChartPanel, { rows, of, word, unit, shown }: WaterfallParts): Svg[] {
  const pump = of.circuit.pumpPressure;
  const across = (pressure: number) => onPanel(panel, inUnit("pressure", pressure, unit), 0)[0];
  const row = (panel.bottom - panel.top) / (rows.length + 1);
  let left = pump;
  const bars = [
    bar({ name: "pump", from: 0, to: pump, fill: STEEL.face, at: 0 }),
    ...rows.map(({ name, part, loss }, k) => {
      const to = left;
      left -= loss;
      // The last part ends where the fluid is free again: rounding leaves no gap.
      const from = k === rows.length - 1 ? 0 : left;
      return bar({ name: part === "annulus" ? `annulus, ${name}` : name, from, to, fill: FILL[part], at: k + 1 });
    }),
  ];
  function bar(one: { name: string; from: number; to: number; fill: string; at: number }): Svg {
    const y = panel.top + one.at * row;
    const [from, to] = [across(one.from), across(one.to)];
    const lines = linesWithin(one.name, TYPE.caption, NAMES - 2, 2);
    const middle = y + row / 2;
    return element(
      "g",
      { class: "loss" },
      element("title", {}, `${one.name}: ${shown(one.to - one.from)}`),
      ...lines.map((text, k) =>
        textAt([panel.left - 2, middle + 1 + (k - (lines.length - 1) / 2) * 3.2], text, TYPE.caption, {
          "text-anchor": "end",
        }),
      ),
      element("rect", {
        x: from,
        y: y + row * 0.16,
        width: Math.max(to - from, 0.3),
        height: row * 0.68,
        fill: one.fill,
        stroke: INK,
        "stroke-width": 0.2,
      }),
      // The next part starts where this one ends.
      ...(one.at === rows.length
        ? []
        : [
            element("path", {
              d: `M${svgNumber(one.at === 0 ? to : from)} ${svgNumber(y + row * 0.84)}v${svgNumber(row * 0.32)}`,
              stroke: SOFT_INK,
              "stroke-width": 0.25,
            }),
          ]),
      textAt([to + 1.2, middle + 1.1], shown(one.to - one.from), TYPE.note, { ...HALO, stroke: PAPER }),
    );
  }
  return [
    textAt([DRAWING_ROOM.left, panel.top - 2], `${word}: pressure left, from the pump to the pit`, TYPE.note),
    axis(panel, unit),
    ...bars,
  ];
}

/** Frame, upright lines at even pressures and the figures under them. */
function axis(panel: ChartPanel, unit: string): Svg {
  const { left, right, top, bottom, x } = panel;
  const step = tickStep(x.to - x.from, 10);
  const places = ticks(x.to, step).map((value) => ({
    value,
    at: left + ((value - x.from) / (x.to - x.from)) * (right - left),
  }));
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
    textAt([(left + right) / 2, bottom + 8.6], unit, TYPE.note, { "text-anchor": "middle" }),
  );
}
