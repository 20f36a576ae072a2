import { type FlowCase, type FlowStudy, inUnit, type UnitSystem } from "@bitwright/traveler";
import { CHART_ROOM, type ChartPanel, onPanel, panelAxes, panelLine, rangeFromZero } from "../chart/index.ts";
import {
  CUT_RAMP,
  DRAWING_ROOM,
  drawingSheet,
  HALO,
  INK,
  linesWithin,
  PAPER,
  type SheetTitle,
  STEEL,
  TYPE,
  textAt,
} from "../sheet/index.ts";
import { type Figures, figuresIn } from "../summary/figures.ts";
import { element, type Svg, svgNumber } from "../svg/index.ts";
import { HOLD_WORDS, portsInWords, pumpsInWords } from "./flow-table.ts";

/** What the sheets of a flow study are made from. */
export interface FlowDrawingInput {
  readonly study: Pick<FlowStudy, "present" | "changed">;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
}

/** Pump against circuit as a sheet of SVG: pressure over flow of both, now and changed, and where they meet. */
export function pumpDrawing({ study, title, units }: FlowDrawingInput): string {
  const { present, changed } = study;
  const figures = figuresIn(units);
  const flowUnit = units === "field" ? "gpm" : "L/min";
  const pressureUnit = units === "field" ? "psi" : "kPa";
  const at = (curve: FlowCase["pumpCurve"]) =>
    curve.map(
      ({ flow, pressure }) => [inUnit("flow", flow, flowUnit), inUnit("pressure", pressure, pressureUnit)] as const,
    );
  const cases = [
    { of: present, word: "now", number: "1", dash: undefined },
    ...(changed ? [{ of: changed, word: "changed", number: "2", dash: "2.4 1.2" }] : []),
  ];
  const lines = cases.map(({ of, ...look }) => ({ ...look, of, circuit: at(of.circuitCurve), pump: at(of.pumpCurve) }));
  const last = lines[0].circuit[lines[0].circuit.length - 1][0];
  const met = cases.map(({ of }) => inUnit("pressure", of.circuit.pumpPressure, pressureUnit));
  const tops = lines.flatMap(({ pump }) => pump.map(([, up]) => up));
  const y = rangeFromZero([...tops, ...met], 6);
  const panel: ChartPanel = {
    left: CHART_ROOM.left,
    right: CHART_ROOM.right,
    top: DRAWING_ROOM.top + 8,
    bottom: DRAWING_ROOM.bottomOfChart - 58,
    x: { from: 0, to: last },
    y,
  };
  const inside = (points: readonly (readonly [number, number])[]) => clippedAbove(points, y.to);
  const words = cases.map(({ of, word }) => {
    const flow = of.heldBy === "nothing moves" ? "no flow" : figures.of("flow", of.flow);
    return `${word === "now" ? "Now" : "Changed"}: ${flow} at ${figures.of("pressure", of.circuit.pumpPressure)}, ${HOLD_WORDS[of.heldBy]}.`;
  });
  return drawingSheet({
    id: "pump",
    heading: "Pump against circuit",
    subheading: words,
    description: `Pressure over flow: what the circuit asks for and what the pump can give. ${words.join(" ")}`,
    title,
    view: "pump and circuit",
    units: `${flowUnit}, ${pressureUnit}`,
    hole: title.hole ?? "",
    drawing: [
      panelAxes(panel, {
        up: pressureUnit,
        heading: "Pressure that the circuit asks for, and that the pump can give",
        across: `flow, ${flowUnit}`,
      }),
      ...lines.flatMap(({ circuit, pump, dash }) => [
        panelLine(panel, pump, { stroke: STEEL.face, width: 0.7, class: "pump", ...(dash ? { dash } : {}) }),
        panelLine(panel, inside(circuit), {
          stroke: CUT_RAMP[3],
          width: 0.7,
          class: "circuit",
          ...(dash ? { dash } : {}),
        }),
      ]),
      ...cases.flatMap(({ of, number }, k) =>
        of.heldBy === "nothing moves" ? [] : [meeting(panel, inUnit("flow", of.flow, flowUnit), met[k], number)],
      ),
      ...legend(cases, panel.bottom + 17, figures),
    ],
  });
}

/** The part of a rising line that lies under a level, its last point on it. */
function clippedAbove(points: readonly (readonly [number, number])[], most: number): (readonly [number, number])[] {
  const over = points.findIndex(([, up]) => up > most);
  if (over < 0) return [...points];
  if (over === 0) return [];
  const [[x0, y0], [x1, y1]] = [points[over - 1], points[over]];
  return [...points.slice(0, over), [x0 + ((most - y0) / (y1 - y0)) * (x1 - x0), most]];
}

function meeting(panel: ChartPanel, across: number, up: number, number: string): Svg {
  const [x, y] = onPanel(panel, across, up);
  return element(
    "g",
    { class: "operating-point" },
    element("circle", { cx: x, cy: y, r: 2.5, fill: PAPER, stroke: INK, "stroke-width": 0.5 }),
    textAt([x, y + 1.15], number, TYPE.number, { "text-anchor": "middle", "font-weight": "bold" }),
  );
}

interface LegendCase {
  readonly of: FlowCase;
  readonly word: string;
  readonly number: string;
  readonly dash: string | undefined;
}

function legend(cases: readonly LegendCase[], top: number, figures: Figures): Svg[] {
  const { left } = DRAWING_ROOM;
  const line = (y: number, stroke: string, dash: string | undefined) =>
    element("path", {
      d: `M${svgNumber(left)} ${svgNumber(y)}h12`,
      stroke,
      "stroke-width": 0.7,
      "stroke-dasharray": dash,
    });
  const rows = cases.flatMap(({ of, word, number, dash }) => [
    { stroke: STEEL.face, dash, text: `pump, ${word} (${number}): ${pumpsInWords(of)}` },
    { stroke: CUT_RAMP[3], dash, text: `circuit, ${word} (${number}): ${portsInWords(of, figures)}` },
  ]);
  const notes = linesWithin(
    "A piston pump gives the flow asked up to its pressure rating; over that it is run slower, or blows off. A centrifugal pump gives what the crossing says. Both at the depth of the finished hole, where losses are greatest.",
    TYPE.caption,
    180,
    3,
  );
  const under = top + rows.length * 5 + 2;
  return [
    ...rows.flatMap(({ stroke, dash, text }, k) => [
      line(top + k * 5 - 1, stroke, dash),
      textAt([left + 15, top + k * 5], text, TYPE.note, HALO),
    ]),
    ...notes.map((text, k) => textAt([left, under + k * 4], text, TYPE.caption)),
  ];
}
