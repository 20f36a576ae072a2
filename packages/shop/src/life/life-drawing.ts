import {
  COBALT_TABLE_LIMIT,
  LEACHED_TABLE_LIMIT,
  type Life,
  type LifeBed,
  type LifeLimits,
  type LifeStep,
  WEAR_QUICKENS_TEMPERATURE,
  type WearState,
} from "@bitwright/engine";
import { formatQuantity, inUnit, type QuantityKind, type UnitSystem } from "@bitwright/traveler";
import {
  type AxisRange,
  type ChartPanel,
  levelLine,
  panelAxes,
  panelLine,
  plain,
  rangeFromZero,
  stackedPanels,
} from "../chart/index.ts";
import { DRAWING_ROOM, drawingSheet, type SheetTitle, STEEL } from "../sheet/index.ts";
import type { Svg } from "../svg/index.ts";
import { bedGrounds } from "./bed-look.ts";
import { bedsLegend, legendHeightOf } from "./beds-legend.ts";
import { bedLines, bedNumbers, endWords, groundBehind } from "./life-lines.ts";
import { growingSeries, type LifeSeries, manyHoles, type SeriesPoint, stretchSeries } from "./life-series.ts";

/** What the sheet of a life is made from. */
export interface LifeDrawingInput {
  readonly life: Pick<Life, "end" | "start" | "steps" | "footage" | "holes" | "findings">;
  readonly beds: readonly LifeBed[];
  readonly limits: LifeLimits;
  /** Footage at the ends of what is known of wear [m]. */
  readonly footageBand?: { readonly low: number; readonly high: number };
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  /** The hole in words, with both units. */
  readonly hole?: string;
  /** Start of every id in the drawing; `life` where not given. */
  readonly id?: string;
}

/** Units of the axes of a life. */
const UNITS = {
  field: { depth: "ft", rate: "ft/h", force: "lbf", torque: "ft-lbf", temperature: "°F", length: "in" },
  metric: { depth: "m", rate: "m/h", force: "kN", torque: "N m", temperature: "°C", length: "mm" },
} as const satisfies Record<UnitSystem, Partial<Record<QuantityKind, string>>>;

type Measure = keyof (typeof UNITS)["field"];

const GAP = 6.4;

/**
 * Rate, weight, torque, heat, wear grades and gauge loss of a bit against the hole it has drilled, as a sheet of SVG. Over a
 * few holes one line goes through the beds as they come, with the ground behind it; over many each bed has its own line.
 */
export function lifeDrawing(input: LifeDrawingInput): string {
  const { life, beds, limits, title, units, hole, id = "life" } = input;
  const { steps } = life;
  const unit = UNITS[units];
  const shown = (kind: Measure, si: number) => inUnit(kind, si, unit[kind]);
  const many = manyHoles(steps);
  const legendHeight = legendHeightOf(beds.length);
  const frames = stackedPanels(6, {
    left: DRAWING_ROOM.left + 15,
    right: DRAWING_ROOM.right - (many ? 8 : 3),
    top: DRAWING_ROOM.top + 7,
    bottom: DRAWING_ROOM.bottomOfChart - 14 - legendHeight,
    gap: GAP,
  });
  const x: AxisRange = { from: 0, to: shown("depth", life.footage) * 1.01 || 1 };
  const panel = (at: number, y: AxisRange): ChartPanel => ({ ...frames[at], x, y });
  const stretch = (kind: Measure, of: (step: LifeStep) => number) =>
    stretchSeries(steps, of).map(
      ({ points, ...series }): LifeSeries => ({
        ...series,
        points: points.map(([feet, value]): SeriesPoint => [shown("depth", feet), shown(kind, value)]),
      }),
    );
  const growing = (of: (state: WearState) => number) =>
    growingSeries(life, of).map(([feet, value]): SeriesPoint => [shown("depth", feet), value]);
  const rate = stretch("rate", (step) => step.rate);
  const weight = stretch("force", (step) => step.weight);
  const torque = stretch("torque", (step) => step.torque);
  const heat = stretch("temperature", (step) => step.hottestTemperature);
  const inner = growing((step) => step.innerGrade);
  const outer = growing((step) => step.outerGrade);
  const gauge = growing((step) => shown("length", step.undergauge));
  const cutters = growing((step) => shown("length", step.cutterUndergauge));
  const marks = [WEAR_QUICKENS_TEMPERATURE, COBALT_TABLE_LIMIT, LEACHED_TABLE_LIMIT].filter(
    (mark) => mark <= limits.temperature * (1 + 1e-9),
  );
  const hottest = heat.flatMap(({ points }) => points.map(([, value]) => value));
  // The next mark over the hottest is shown, those beyond it would only press the lines down.
  const nextMark = marks.map((mark) => shown("temperature", mark)).find((mark) => mark > Math.max(...hottest, 0));
  const gaugeLimit = shown("length", limits.undergauge);
  const panels = {
    rate: panel(0, rangeFromZero(values(rate), 4)),
    weight: panel(1, rangeFromZero(values(weight), 4)),
    torque: panel(2, rangeFromZero(values(torque), 4)),
    heat: panel(3, rangeFromZero([...hottest, ...(nextMark === undefined ? [] : [nextMark])], 4)),
    grade: panel(
      4,
      rangeFromZero(
        [...inner, ...outer].map(([, value]) => value),
        4,
      ),
    ),
    gauge: panel(5, rangeFromZero([...cutters.map(([, value]) => value), gaugeLimit], 4)),
  };
  const footageWords = `hole drilled with this bit, ${unit.depth}`;
  const drawing: Svg[] = [
    ...(many ? [] : Object.values(panels).map((each) => groundBehind(id, each, steps, (si) => shown("depth", si)))),
    panelAxes(panels.rate, { up: unit.rate, heading: "Rate" }),
    panelAxes(panels.weight, { up: unit.force, heading: "Weight on bit" }),
    panelAxes(panels.torque, { up: unit.torque, heading: "Torque at the bit" }),
    panelAxes(panels.heat, { up: unit.temperature, heading: "Hottest rubbing surface" }),
    panelAxes(panels.grade, { up: "grade, of 8", heading: "Mean wear grade of inner and outer cutters" }),
    panelAxes(panels.gauge, { up: unit.length, heading: "Diameter lost at the gauge", across: footageWords }),
    ...marks.flatMap((mark) =>
      levelLine(panels.heat, shown("temperature", mark), HEAT_WORDS.get(mark) ?? "the diamond table's limit"),
    ),
    ...levelLine(panels.grade, limits.grade, "pulled at this grade"),
    ...(["rate", "weight", "torque", "heat"] as const).flatMap((name) =>
      bedLines(id, panels[name], { rate, weight, torque, heat }[name]),
    ),
    panelLine(panels.grade, inner, { stroke: STEEL.line, dash: "2.4 0.8", class: "inner-grade" }),
    panelLine(panels.grade, outer, { stroke: STEEL.face, width: 0.6, class: "outer-grade" }),
    ...endWords(panels.grade, [
      { words: "inner", at: inner.at(-1) },
      { words: "outer", at: outer.at(-1) },
    ]),
    panelLine(panels.gauge, cutters, { stroke: STEEL.line, dash: "2.4 0.8", class: "cutter-gauge-loss" }),
    panelLine(panels.gauge, gauge, { stroke: STEEL.face, width: 0.6, class: "gauge-loss" }),
    // Over the lines, so that its words stand clear of them.
    ...levelLine(panels.gauge, gaugeLimit, "pulled at this loss"),
    ...(padsHold(life) ? endWords(panels.gauge, [{ words: "gauge cutters alone", at: cutters.at(-1) }]) : []),
    ...(many ? [] : bedNumbers(panels.rate, steps, (si) => shown("depth", si))),
    bedsLegend(id, beds, units, many, {
      left: DRAWING_ROOM.left,
      right: DRAWING_ROOM.right,
      top: DRAWING_ROOM.bottomOfChart - legendHeight,
    }),
  ];
  const sub = subheading(input);
  return drawingSheet({
    id,
    heading: "Life of the bit",
    subheading: sub,
    description: `Rate, weight, torque, hottest temperature, wear grades and gauge loss against the hole drilled. ${sub.join(" ")}`,
    title,
    view: many ? "one line for each bed" : "as the beds come",
    units: [unit.depth, unit.rate, unit.force, unit.torque, unit.temperature, unit.length].join(", "),
    hole: hole ?? title.hole ?? "",
    definitions: bedGrounds(id),
    drawing,
  });
}

const HEAT_WORDS: ReadonlyMap<number, string> = new Map([
  [WEAR_QUICKENS_TEMPERATURE, "wear quickens"],
  [COBALT_TABLE_LIMIT, "limit of diamond with cobalt"],
  [LEACHED_TABLE_LIMIT, "limit of leached diamond"],
]);

/** Whether pads hold the gauge in the end by so much that two lines are seen. */
const padsHold = ({ steps }: LifeDrawingInput["life"]): boolean => {
  const last = steps.at(-1);
  return last !== undefined && last.undergauge < 0.95 * last.cutterUndergauge;
};

const values = (series: readonly LifeSeries[]): number[] =>
  series.flatMap(({ points }) => points.map(([, value]) => value));

function subheading({ life, footageBand, units }: LifeDrawingInput): string[] {
  const depth = (si: number) => formatQuantity("depth", si, units, { figures: 2 });
  const ended = life.findings.find(({ code }) => code.startsWith("life-ends-"));
  const holes = life.holes === 1 ? "1 hole" : `${plain(life.holes)} holes`;
  const first = `${depth(life.footage)} in ${holes} and a part. ${ended?.message ?? ""}`;
  return [
    life.end.by === "holes drilled" ? first.replace(" and a part", "") : first,
    footageBand && footageBand.high > 1.01 * footageBand.low
      ? `An order of magnitude: ${depth(footageBand.low)} to ${depth(footageBand.high)} over what is known of wear. Bits that come back set it right.`
      : "An order of magnitude: wear is known within a factor of ten. Bits that come back set it right.",
  ];
}
