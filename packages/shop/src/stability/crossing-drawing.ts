import { ACCEPTED_LATERAL_SHARE, GOOD_LATERAL_SHARE, type ReviewedCrossing } from "@bitwright/engine";
import { formatQuantity, inUnit, type QuantityKind, type UnitSystem } from "@bitwright/traveler";
import {
  CHART_ROOM,
  type ChartPanel,
  levelLine,
  markedPoint,
  onPanel,
  panelAxes,
  panelLine,
  rangeFromZero,
  stackedPanels,
} from "../chart/index.ts";
import { CUT_RAMP, DRAWING_ROOM, drawingSheet, type SheetTitle, STEEL } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";

/** What the sheet of a bed crossing is made from. */
export interface CrossingDrawingInput {
  readonly crossed: ReviewedCrossing;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  /** Start of every id in the drawing; `crossing` where not given. */
  readonly id?: string;
}

const UNITS = {
  field: { length: "in", force: "lbf", advance: "in/rev", torque: "ft-lbf" },
  metric: { length: "mm", force: "kN", advance: "mm/rev", torque: "N m" },
} as const satisfies Record<UnitSystem, Partial<Record<QuantityKind, string>>>;

type Kind = keyof (typeof UNITS)["field"];

/**
 * The way of a bit from one bed into the next as a sheet of SVG: weight and torque if the feed is held, advance, the
 * heaviest cutter and side force if the weight is held, over the way since the first edge touched.
 */
export function crossingDrawing({ crossed, title, units, id = "crossing" }: CrossingDrawingInput): string {
  const { from, to, intoHarder, crossing } = crossed;
  const { curve, span, peak, before, after, mostWeight, mostLateral } = crossing;
  const unit = UNITS[units];
  const amount = (kind: Kind, si: number) => inUnit(kind, si, unit[kind]);
  const said = (kind: Kind, si: number) =>
    formatQuantity(kind, si, units, { figures: 3, unit: unit[kind], fractions: false });
  const x = { from: 0, to: amount("length", span) };
  const frames = stackedPanels(4, { ...CHART_ROOM, bottom: DRAWING_ROOM.bottomOfChart - 12, gap: 9 });
  const row = (of: (place: (typeof curve)[number]) => number) =>
    curve.map((place) => [amount("length", place.entered), of(place)] as const);
  const weights = row(({ heldAdvance }) => amount("force", heldAdvance.weight));
  const advances = row(({ heldWeight }) => amount("advance", heldWeight.advance));
  const heaviest = row(({ heldWeight }) => amount("force", Math.max(...heldWeight.cutterForces)));
  const sides = row(({ heldWeight }) => 100 * heldWeight.lateralShare);
  const sidesHeld = row(({ heldAdvance }) => 100 * heldAdvance.lateralShare);
  const panel = (k: number, ...rows: readonly (readonly (readonly [number, number])[])[]): ChartPanel => ({
    ...frames[k],
    x,
    y: rangeFromZero(rows.flatMap((points) => points.map(([, up]) => up))),
  });
  const held = said("force", before.weight);
  const feed = said("advance", before.advance);
  const steadyPeak = Math.max(...before.cutterForces, ...after.cutterForces);
  const way = (si: number) => amount("length", si);
  const byWeight = panel(0, weights);
  const byAdvance = panel(1, advances);
  const cutters = panel(2, heaviest, [[0, amount("force", steadyPeak)]]);
  const lateral = panel(3, sides, sidesHeld, [[0, 100 * ACCEPTED_LATERAL_SHARE]]);
  const line = { stroke: CUT_RAMP[4], width: 0.6 };
  const heaviestCutter = `cutter ${peak.cutter}: ${said("force", peak.force)}, ${peak.overloadRatio.toFixed(2)} × the most it bears in one bed`;
  const sub = [
    `Out of ${from}, over the way since the first edge touched; all edges are in after ${said("length", span)}.`,
    "Steady at each place: a bit that drops through within a turn or two does worse than this.",
  ];
  return drawingSheet({
    id,
    heading: `Into a ${intoHarder ? "harder" : "softer"} bed: ${to}`,
    subheading: sub,
    description: `${sub.join(" ")} Held feed: weight up to ${said("force", mostWeight.heldAdvance.weight)}. Held weight of ${held}: ${heaviestCutter}.`,
    title,
    view: `${from} into ${to}`,
    units: `${unit.length}, ${unit.force}, ${unit.advance}`,
    hole: title.hole ?? "",
    drawing: [
      panelAxes(byWeight, { up: `weight, ${unit.force}`, heading: `Feed held at ${feed}: weight on bit` }),
      panelLine(byWeight, weights, { ...line, class: "weight" }),
      markedPoint(
        byWeight,
        way(mostWeight.entered),
        amount("force", mostWeight.heldAdvance.weight),
        `${said("force", mostWeight.heldAdvance.weight)}, ${said("torque", mostWeight.heldAdvance.torque)}`,
      ),
      panelAxes(byAdvance, { up: `advance, ${unit.advance}`, heading: `Weight held at ${held}: advance per turn` }),
      panelLine(byAdvance, advances, { ...line, class: "advance" }),
      panelAxes(cutters, {
        up: `force, ${unit.force}`,
        heading: `Weight held at ${held}: force on the hardest pressed cutter`,
      }),
      ...levelLine(cutters, amount("force", steadyPeak), "most on any cutter in one bed alone"),
      panelLine(cutters, heaviest, { ...line, class: "heaviest" }),
      markedPoint(cutters, way(peak.entered), amount("force", peak.force), heaviestCutter),
      panelAxes(lateral, {
        up: "side force, % of weight",
        across: `way into ${to}, ${unit.length}`,
        heading: "Side force: full line with the weight held, dashed with the feed held",
      }),
      ...levelLine(lateral, 100 * GOOD_LATERAL_SHARE, "well balanced below this"),
      ...levelLine(lateral, 100 * ACCEPTED_LATERAL_SHARE, "accepted below this"),
      panelLine(lateral, sidesHeld, { stroke: STEEL.line, dash: "1.6 1", class: "side-force-held-feed" }),
      panelLine(lateral, sides, { ...line, class: "side-force" }),
      markedPoint(
        lateral,
        way(mostLateral.entered),
        100 * mostLateral.heldWeight.lateralShare,
        `${(100 * mostLateral.heldWeight.lateralShare).toFixed(1)} %`,
      ),
      ...[byWeight, byAdvance, cutters, lateral].map((each) => sharedWay(each, way(peak.entered))),
    ],
  });
}

/** A faint upright line where the heaviest moment lies, through all panels. */
function sharedWay(panel: ChartPanel, at: number): Svg {
  const { top, bottom } = panel;
  const [x] = onPanel(panel, at, panel.y.from);
  return element("path", {
    d: linePath([
      [x, top],
      [x, bottom],
    ]),
    stroke: STEEL.edge,
    "stroke-width": 0.2,
    "stroke-dasharray": "0.8 0.8",
  });
}
