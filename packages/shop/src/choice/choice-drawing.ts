import type { CandidateBit } from "@bitwright/engine";
import { type ChoiceStudy, inUnit, unitFor } from "@bitwright/traveler";
import { type ChartPanel, onPanel, panelAxes, rangeAround } from "../chart/index.ts";
import { freePlace } from "../map/free-place.ts";
import {
  CUT_RAMP,
  DRAWING_ROOM,
  drawingSheet,
  HALO,
  PAPER,
  type SheetTitle,
  STEEL,
  type StandingBox,
  TYPE,
  textAt,
  textWidth,
} from "../sheet/index.ts";
import { NUMBER_ROOM, numberedPlaces } from "../solver/numbered-places.ts";
import { element, linePath, type PagePoint, type Svg } from "../svg/index.ts";
import { withRuled } from "./choice-rows.ts";
import { costUnit, type MoneyStyle } from "./choice-words.ts";
import { costRows, ROWS_HEIGHT } from "./cost-rows.ts";

/** What the sheet of a choice is made from. */
export interface ChoiceDrawingInput {
  readonly study: ChoiceStudy;
  readonly title: SheetTitle;
  readonly style: MoneyStyle;
  /** The hole in words, with both units. */
  readonly hole?: string;
}

/** Candidates that have a number on the sheet [-]. */
const NUMBERED = 10;

/** Cost against rate of every candidate, the first ten numbered; under it those with the band of their cost. */
export function choiceDrawing({ study, title, style, hole }: ChoiceDrawingInput): string {
  const { ranking, byRule } = study;
  const shown = ranking.ranked.slice(0, NUMBERED);
  const { ruled, rows } = withRuled(study, shown);
  const bottom = DRAWING_ROOM.bottomOfChart - 12;
  const middle = bottom - rows.length * ROWS_HEIGHT - 22;
  const all = ranking.ranked.map(({ candidate }) => candidate);
  const placed = byRule.figures ? [...all, byRule] : all;
  const panel: ChartPanel = {
    left: DRAWING_ROOM.left + 14,
    right: DRAWING_ROOM.right - 4,
    top: DRAWING_ROOM.top + 8,
    bottom: middle,
    x: rangeAround(placed.map(rateOf(style)), { ofSpan: 0.08, ofLargest: 0.01, most: 12 }),
    y: rangeAround(placed.map(costOf(style)), { ofSpan: 0.08, ofLargest: 0.01, most: 5 }),
  };
  const points = shown.map(({ candidate }) => placeOf(panel, candidate, style));
  const numbers = numberedPlaces(points, panel);
  const standing = [
    ...all.map((one): StandingBox => ({ at: placeOf(panel, one, style), width: 2, height: 2 })),
    ...numbers.map((at): StandingBox => ({ at, ...NUMBER_ROOM })),
  ];
  const sub = [
    `${ranking.ranked.length} candidates by what a length of hole costs with them, each pulled where it is cheapest.`,
    "Ring: the first. Square: the rules of thumb. Bars: over what is not known of wear, alike for all.",
  ];
  return drawingSheet({
    id: "choice",
    heading: "Which bit costs least",
    subheading: sub,
    description: `Cost of a length of hole against the rate on bottom of ${ranking.ranked.length} candidate bits. ${sub.join(" ")}`,
    title,
    view: "cost against rate",
    units: `${costUnit(style)}, ${unitFor("rate", style.units)}`,
    hole: hole ?? title.hole ?? "",
    drawing: [
      panelAxes(panel, {
        up: `cost of hole, ${costUnit(style)}`,
        across: `rate on bottom, new until pulled, ${unitFor("rate", style.units)}`,
        heading: "Every candidate that was looked at",
      }),
      ...all.slice(NUMBERED).map((candidate) => dot(panel, candidate, style)),
      ...ruleMark(panel, byRule, standing, style),
      ...numbered(points, numbers),
      ...costRows({ rows, ruled, style, top: middle + 19, bottom }),
    ],
  });
}

const rateOf =
  ({ units }: MoneyStyle) =>
  ({ figures }: CandidateBit) =>
    inUnit("rate", figures?.meanRate ?? 0, unitFor("rate", units));
const costOf =
  ({ units }: MoneyStyle) =>
  ({ figures }: CandidateBit) =>
    inUnit("price of length", figures?.costPerLength.mid ?? 0, unitFor("price of length", units));

function placeOf(panel: ChartPanel, candidate: CandidateBit, style: MoneyStyle): PagePoint {
  return onPanel(panel, rateOf(style)(candidate), costOf(style)(candidate));
}

function dot(panel: ChartPanel, candidate: CandidateBit, style: MoneyStyle): Svg {
  const [cx, cy] = placeOf(panel, candidate, style);
  return element("circle", {
    class: "candidate",
    cx,
    cy,
    r: 0.8,
    fill: STEEL.edge,
    stroke: PAPER,
    "stroke-width": 0.2,
  });
}

/** The pick of the rules: a square with its words, clear of points and numbers where there is room. */
function ruleMark(panel: ChartPanel, byRule: CandidateBit, standing: readonly StandingBox[], style: MoneyStyle): Svg[] {
  if (!byRule.figures || byRule.excludedBy.length > 0) return [];
  const [x, y] = placeOf(panel, byRule, style);
  const words = "rules of thumb";
  const size = { width: textWidth(words, TYPE.caption), height: TYPE.caption };
  const tried = [4.5, 8, 12, 17, 23].flatMap((far): PagePoint[] => [
    [x, y - far],
    [x, y + far],
    [x - size.width / 2 - 3, y - far],
    [x + size.width / 2 + 3, y - far],
  ]);
  const place = freePlace(tried, size, standing, panel) ?? tried[0];
  return [
    element(
      "g",
      { class: "rule" },
      element("path", { d: linePath([[x, y], place]), stroke: CUT_RAMP[4], "stroke-width": 0.15 }),
      element("rect", {
        x: x - 1.8,
        y: y - 1.8,
        width: 3.6,
        height: 3.6,
        fill: "none",
        stroke: CUT_RAMP[4],
        "stroke-width": 0.5,
      }),
      element("circle", { cx: x, cy: y, r: 0.8, fill: STEEL.face }),
      textAt([place[0], place[1] + 1], words, TYPE.caption, { "text-anchor": "middle", ...HALO }),
    ),
  ];
}

function numbered(points: readonly PagePoint[], places: readonly PagePoint[]): Svg[] {
  return [
    ...points.map(([cx, cy], k) =>
      element(
        "g",
        { class: k === 0 ? "candidate best" : "candidate" },
        element("path", { d: linePath([[cx, cy], places[k]]), stroke: STEEL.edge, "stroke-width": 0.15 }),
        element("circle", { cx, cy, r: 0.9, fill: STEEL.face }),
        ...(k === 0
          ? [element("circle", { cx, cy, r: 2, fill: "none", stroke: CUT_RAMP[3], "stroke-width": 0.6 })]
          : []),
      ),
    ),
    ...places.map(([x, y], k) =>
      textAt([x, y + 1], String(k + 1), TYPE.number, {
        "text-anchor": "middle",
        ...(k === 0 ? { "font-weight": "bold" } : {}),
        ...HALO,
      }),
    ),
  ];
}
