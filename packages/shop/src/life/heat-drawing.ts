import type { LifeBed } from "@bitwright/engine";
import { formatQuantity, type HeatCurve, type HeatCurves, inUnit, type UnitSystem } from "@bitwright/traveler";
import { type ChartPanel, markedPoint, onPanel, panelAxes, panelLine, rangeFromZero } from "../chart/index.ts";
import {
  CUT_RAMP,
  DRAWING_ROOM,
  drawingSheet,
  HALO,
  INK,
  type SheetTitle,
  STEEL,
  spread,
  TYPE,
  textAt,
} from "../sheet/index.ts";
import { element, linePath, type PagePoint, type Svg } from "../svg/index.ts";

/** What the sheet of critical weights is made from. */
export interface HeatDrawingInput {
  readonly heatCurves: HeatCurves;
  readonly beds: readonly LifeBed[];
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  /** The hole in words, with both units. */
  readonly hole?: string;
  /** Start of every id in the drawing; `heat` where not given. */
  readonly id?: string;
}

const FORCE = { field: "lbf", metric: "kN" } as const;
/** A curve this many times over the weight of the run is of no use to anyone and is not drawn that high [-]. */
const MOST_OVER_RUN = 2;

/** Weight against speed at which the hottest cutter of a worn bit reaches its marks, at full and at less flow. */
export function heatDrawing({ heatCurves, beds, title, units, hole, id = "heat" }: HeatDrawingInput): string {
  const { bed: name, grade, curves } = heatCurves;
  const bed = beds.find((one) => one.name === name) ?? beds[0];
  const force = (si: number) => inUnit("force", si, FORCE[units]);
  const rpm = (si: number) => inUnit("rotary speed", si, "rpm");
  const speeds = curves[0].points.map(({ rotarySpeed }) => rpm(rotarySpeed));
  const highest = MOST_OVER_RUN * force(bed.weight);
  const weights = curves.flatMap(({ points }) =>
    points.flatMap(({ weight }) => (weight === undefined ? [] : [force(weight)])),
  );
  const panel: ChartPanel = {
    left: DRAWING_ROOM.left + 16,
    right: DRAWING_ROOM.right - 3,
    top: DRAWING_ROOM.top + 10,
    bottom: DRAWING_ROOM.bottomOfChart - 50,
    x: { from: speeds[0], to: speeds[speeds.length - 1] },
    y: rangeFromZero([1.25 * force(bed.weight), ...weights.map((weight) => Math.min(weight, highest))], 8),
  };
  const drawn = curves.map((curve) => ({
    curve,
    points: curve.points.flatMap(({ rotarySpeed, weight }): [number, number][] =>
      weight === undefined ? [] : [[rpm(rotarySpeed), force(weight)]],
    ),
  }));
  const shown = drawn.filter(({ points }) => points.some(([, weight]) => weight <= panel.y.to));
  const sub = [
    `Weight at which the hottest cutter gets so hot in ${name}; every cutter worn level to grade ${grade}.`,
    shown.length === 0
      ? "No weight that is run gets any cutter so hot."
      : "Stay under the curves. Where one is missing no weight gets a cutter so hot.",
    "How well the flow cools is known within a factor of ten either way: a warning, never a permission.",
  ];
  return drawingSheet({
    id,
    heading: "Heat: critical weight against speed",
    subheading: sub,
    description: `${sub.join(" ")} ${drawn.map(({ curve }) => curveWords(curve, units)).join("; ")}.`,
    title,
    view: `${name}, grade ${grade}`,
    units: `${FORCE[units]}, rpm`,
    hole: hole ?? title.hole ?? "",
    definitions: [
      element(
        "clipPath",
        { id: `${id}-frame` },
        element("rect", {
          x: panel.left,
          y: panel.top,
          width: panel.right - panel.left,
          height: panel.bottom - panel.top,
        }),
      ),
    ],
    drawing: [
      panelAxes(panel, { up: `weight on bit, ${FORCE[units]}`, across: "rotary speed, rpm" }),
      element(
        "g",
        { "clip-path": `url(#${id}-frame)`, class: "curves" },
        ...shown.map(({ curve, points }) => panelLine(panel, points, lookOf(curve, curves))),
      ),
      ...curveLabels(panel, shown, units),
      markedPoint(panel, rpm(bed.rotarySpeed), force(bed.weight), "most weight of this run"),
    ],
  });
}

/** Which mark by colour and width, which flow by dash. */
function lookOf({ temperature, flowShare }: HeatCurve, curves: readonly HeatCurve[]) {
  const coolest = Math.min(...curves.map((curve) => curve.temperature));
  return {
    stroke: temperature === coolest ? CUT_RAMP[3] : STEEL.face,
    width: 0.6,
    class: "critical-weight",
    ...(flowShare === 1 ? {} : { dash: "2.4 0.8" }),
  };
}

function curveWords({ temperature, flowShare }: HeatCurve, units: UnitSystem): string {
  const flow = flowShare === 1 ? "full flow" : `${Math.round(100 * flowShare)} % of the flow`;
  return `${formatQuantity("temperature", temperature, units, { figures: 3 })} at ${flow}`;
}

/** Words at the right ends of the curves that show, none over another. */
function curveLabels(
  panel: ChartPanel,
  shown: readonly { readonly curve: HeatCurve; readonly points: readonly [number, number][] }[],
  units: UnitSystem,
): Svg[] {
  const ends = shown
    .flatMap(({ curve, points }) => {
      const last = points.filter(([, weight]) => weight <= panel.y.to).at(-1);
      return last ? [{ words: curveWords(curve, units), at: onPanel(panel, last[0], last[1]) }] : [];
    })
    .sort((one, other) => one.at[1] - other.at[1]);
  const heights = spread(
    ends.map(({ at }) => at[1] + 6),
    4.2,
  );
  return ends.flatMap(({ words, at }, k) => {
    const x = Math.min(at[0], panel.right) - 3;
    const foot: PagePoint = [x + 0.4, heights[k] - 1];
    return [
      element("path", { d: linePath([at, foot]), stroke: INK, "stroke-width": 0.15 }),
      textAt([x, heights[k]], words, TYPE.caption, { "text-anchor": "end", ...HALO }),
    ];
  });
}
