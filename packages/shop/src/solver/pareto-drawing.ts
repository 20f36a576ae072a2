import { MEASURE_WORDS, type SolvedLayout } from "@bitwright/engine";
import { formatQuantity, inUnit, type LayoutStudy, type UnitSystem } from "@bitwright/traveler";
import { type ChartPanel, levelLine, onPanel, panelAxes, rangeAround, rangeFromZero } from "../chart/index.ts";
import {
  CUT_RAMP,
  DRAWING_ROOM,
  drawingSheet,
  HALO,
  INK,
  linesWithin,
  PAPER,
  type SheetTitle,
  SOFT_INK,
  STEEL,
  TYPE,
  textAt,
} from "../sheet/index.ts";
import { element, linePath, type PagePoint, type Svg } from "../svg/index.ts";
import { numberedPlaces } from "./numbered-places.ts";
import { BALANCE_MARKS, placeOf, sideForce, unevenness } from "./pareto-place.ts";
import { plainMarks } from "./plain-marks.ts";

/** What the sheet of layouts to choose from is made from. */
export interface ParetoDrawingInput {
  readonly study: LayoutStudy;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  /** The hole in words, with both units. */
  readonly hole?: string;
  /** Start of every id in the drawing; `pareto` where not given. */
  readonly id?: string;
}

const LEFT = DRAWING_ROOM.left + 14;
const RIGHT = DRAWING_ROOM.right - 4;
const GAP = 26;

/**
 * Unevenness against side force of all layouts to choose from, and of the plain generator's: the whole on top, under it the
 * choices alone, drawn large.
 */
export function paretoDrawing({ study, title, units, hole, id = "pareto" }: ParetoDrawingInput): string {
  const { solved, bed } = study;
  const { choices, best, plain, steadied } = solved;
  const all = [plain, steadied, ...choices];
  const top = DRAWING_ROOM.top + 8;
  const bottom = DRAWING_ROOM.bottomOfChart - 38;
  const middle = top + (bottom - top) * 0.46;
  const whole: ChartPanel = {
    left: LEFT,
    right: RIGHT,
    top,
    bottom: middle - GAP / 2,
    x: rangeFromZero(all.map(unevenness), 12),
    y: rangeFromZero(all.map(sideForce)),
  };
  const near: ChartPanel = {
    left: LEFT,
    right: RIGHT,
    top: middle + GAP / 2,
    bottom,
    x: rangeAround(choices.map(unevenness), { ofSpan: 0.1, ofLargest: 0.02, least: 0.1, most: 12 }),
    y: rangeFromZero(choices.map(sideForce)),
  };
  const across = `unevenness of the ${MEASURE_WORDS[solved.measure]} over all cutters but the centre one: deviation over mean, %`;
  const sub = [
    choices.length === 1
      ? "One layout: none that was found is more even, and none steadier."
      : `${choices.length} layouts to choose from: more even costs side force. Ring: the best compromise, ${best + 1}.`,
    `Judged in ${bed ?? "shale"} at ${advances(study, units)}, the worst counted.`,
  ];
  return drawingSheet({
    id,
    heading: "Layouts to choose from",
    subheading: sub,
    description: `Unevenness against side force. ${sub.join(" ")}`,
    title,
    view: "unevenness against side force",
    units: "%",
    hole: hole ?? title.hole ?? "",
    drawing: [
      panelAxes(whole, { up: "side force, % of weight", across, heading: "Against the plain generator" }),
      ...marks(whole),
      ...dots(whole, choices),
      ...plainMarks(whole, study),
      panelAxes(near, { up: "side force, % of weight", across, heading: "The choices alone, with their numbers" }),
      ...marks(near),
      steps(near, choices),
      ...numbered(near, choices, best),
      ...legend(study, units, bottom + 16),
    ],
  });
}

/** The marks of balance across a panel, their words at the left, where no layout is. */
function marks(panel: ChartPanel): Svg[] {
  // A mark at the very top would write over the heading.
  return BALANCE_MARKS.filter(({ at }) => at < 0.95 * panel.y.to).flatMap(({ at, words }) => [
    ...levelLine(panel, at),
    textAt([panel.left + 1.4, onPanel(panel, panel.x.from, at)[1] - 0.9], words, TYPE.caption, {
      fill: SOFT_INK,
      ...HALO,
    }),
  ]);
}

function dots(panel: ChartPanel, choices: readonly SolvedLayout[]): Svg[] {
  return choices.map((choice) => {
    const [cx, cy] = placeOf(panel, choice);
    return element("circle", { class: "choice", cx, cy, r: 0.9, fill: STEEL.face, stroke: PAPER, "stroke-width": 0.2 });
  });
}

/** The border of what was found: to the right of it and above nothing is worth having. */
function steps(panel: ChartPanel, choices: readonly SolvedLayout[]): Svg {
  const corners = choices.flatMap((choice, at): PagePoint[] => {
    const [x, y] = placeOf(panel, choice);
    const before = choices[at - 1];
    return before
      ? [
          [x, placeOf(panel, before)[1]],
          [x, y],
        ]
      : [
          [x, panel.top],
          [x, y],
        ];
  });
  const last = corners[corners.length - 1];
  return element("path", {
    class: "border",
    d: linePath([...corners, [panel.right, last?.[1] ?? panel.bottom]]),
    fill: "none",
    stroke: STEEL.edge,
    "stroke-width": 0.4,
  });
}

function numbered(panel: ChartPanel, choices: readonly SolvedLayout[], best: number): Svg[] {
  const at = choices.map((choice) => placeOf(panel, choice));
  const places = numberedPlaces(at, panel);
  const marks = at.map(([cx, cy], k) =>
    element(
      "g",
      { class: k === best ? "choice best" : "choice" },
      element("path", { d: linePath([[cx, cy], places[k]]), stroke: SOFT_INK, "stroke-width": 0.15 }),
      element("circle", { cx, cy, r: 0.9, fill: STEEL.face }),
      ...(k === best
        ? [element("circle", { cx, cy, r: 2, fill: "none", stroke: CUT_RAMP[3], "stroke-width": 0.6 })]
        : []),
    ),
  );
  return [
    ...marks,
    ...places.map(([x, y], k) =>
      textAt([x, y + 1], String(k + 1), TYPE.number, {
        "text-anchor": "middle",
        ...(k === best ? { "font-weight": "bold" } : {}),
        ...HALO,
      }),
    ),
  ];
}

function advances({ question }: LayoutStudy, units: UnitSystem): string {
  const shown = (question.advances ?? []).map((one) => formatQuantity("advance", one, units, { figures: 3 }));
  return shown.length > 0 ? shown.join(" and ") : "the usual advances";
}

/** The best compromise and the plain layouts in figures. */
function legend({ solved }: LayoutStudy, units: UnitSystem, top: number): Svg[] {
  const { choices, best, plain, steadied } = solved;
  const percent = (share: number) => `${inUnit("share", share, "%").toFixed(1)} %`;
  const line = (name: string, { figures }: SolvedLayout) =>
    `${name}: unevenness ${percent(figures.evenness)}, largest ${figures.peak.toFixed(2)} of the mean, side force ${percent(figures.imbalance)}, thinnest wall ${formatQuantity("length", figures.thinnestWall, units, { figures: 3 })}, largest port ${formatQuantity("diameter", figures.largestPort, units)}.`;
  const chosen = choices[best];
  const lines = [
    ...(chosen ? [line(`Layout ${best + 1}, the best compromise`, chosen)] : []),
    line("Plain generator", plain),
    line("The same, wings in the steadiest order", steadied),
  ];
  return lines
    .flatMap((text) => linesWithin(text, TYPE.caption, RIGHT - DRAWING_ROOM.left, 2))
    .map((text, k) => textAt([DRAWING_ROOM.left, top + 4 * k], text, TYPE.caption, { fill: INK }));
}
