import { inUnit, unitFor } from "@bitwright/traveler";
import { CHART_ROOM, type ChartPanel, panelAxes, rangeFromZero, stackedPanels } from "../chart/index.ts";
import { CUT_RAMP, DRAWING_ROOM, drawingSheet, STEEL } from "../sheet/index.ts";
import { bedLinesOn, bedMarks, stretches } from "./bed-stretches.ts";
import type { DepthDrawingInput } from "./weight-drawing.ts";

type Joint = DepthDrawingInput["joints"][number];

/** What the flow cleans beside what the bit does, and how long chips take up, by depth, as a sheet of SVG. */
export function ceilingDrawing({ joints, from, title, units }: DepthDrawingInput): string {
  const rateUnit = unitFor("rate", units);
  const depthUnit = unitFor("depth", units);
  const depth = (joint: Joint) => inUnit("depth", joint.depth, depthUnit);
  const lines = (up: (joint: Joint) => number | undefined) => stretches(joints, depth, up);
  const ceiling = (side: "low" | "mid" | "high") =>
    lines(({ cleaning }) => cleaning && inUnit("rate", cleaning.rateCeiling[side], rateUnit));
  const minutes = (seconds: number | undefined) => (seconds === undefined ? undefined : seconds / 60);
  const rate = lines((joint) => inUnit("rate", joint.rate, rateUnit));
  const [low, mid, high] = [ceiling("low"), ceiling("mid"), ceiling("high")];
  const chips = lines(({ cleaning }) => minutes(cleaning?.chipsUpTime));
  const bottomsUp = lines(({ cleaning }) => minutes(cleaning?.bottomsUpTime));
  const connection = lines(({ cleaning }) => minutes(cleaning?.circulationTime));
  const values = (of: readonly (readonly [number, number][])[]) => of.flat().map(([, up]) => up);
  const frames = stackedPanels(2, {
    ...CHART_ROOM,
    bottom: DRAWING_ROOM.bottomOfChart - 12,
    gap: 10,
  });
  const x = { from: inUnit("depth", from, depthUnit), to: Math.max(...joints.map(depth)) };
  const rates: ChartPanel = { ...frames[0], x, y: rangeFromZero(values([...rate, ...high])) };
  const times: ChartPanel = { ...frames[1], x, y: rangeFromZero(values([...chips, ...bottomsUp, ...connection])) };
  const draw = (panel: ChartPanel, of: readonly [number, number][][], stroke: string, name: string, dash?: string) =>
    bedLinesOn(panel, of, { stroke, class: name, ...(dash ? { dash } : {}) });
  const over = joints.filter((joint) => joint.rate > (joint.cleaning?.rateCeiling.mid ?? Number.POSITIVE_INFINITY));
  const sub = [
    over.length === 0
      ? "The flow carries the chips of every bed at the rate of the card."
      : `At ${over.length} of ${joints.length} joints the bit makes more chips than the flow carries: hold the rate to the ceiling.`,
    "Two published methods of slip part the ceiling; the chips of each bed are as large as its deepest cut.",
  ];
  return drawingSheet({
    id: "rate-ceiling",
    heading: "What the flow cleans, by depth",
    subheading: sub,
    description: `Rate that the flow cleans beside the rate of the bit, and times to circulate, over the depth of the bit. ${sub.join(" ")}`,
    title,
    view: "rate ceiling by depth",
    units: `${depthUnit}, ${rateUnit}, min`,
    hole: title.hole ?? "",
    drawing: [
      panelAxes(rates, {
        up: rateUnit,
        heading: "Blue: what the flow cleans, dashed by the forms of slip; brown: what the bit does",
      }),
      ...bedMarks(rates, joints, depth),
      ...draw(rates, low, STEEL.face, "ceiling-low", "1.4 0.8"),
      ...draw(rates, high, STEEL.face, "ceiling-high", "1.4 0.8"),
      ...draw(rates, mid, STEEL.face, "ceiling"),
      ...draw(rates, rate, CUT_RAMP[4], "rate"),
      panelAxes(times, {
        up: "minutes",
        heading: "Brown: chips up, before a trip; blue: bottoms up; dashed: before a connection",
        across: `depth of the bit, ${depthUnit}`,
      }),
      ...bedMarks(times, joints, depth),
      ...draw(times, bottomsUp, STEEL.face, "bottoms-up"),
      ...draw(times, connection, CUT_RAMP[4], "connection", "1.4 0.8"),
      ...draw(times, chips, CUT_RAMP[4], "chips-up"),
    ],
  });
}
