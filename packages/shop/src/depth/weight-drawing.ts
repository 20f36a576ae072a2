import { FEED_DEAD_BAND } from "@bitwright/engine";
import { type DepthStudy, inUnit, type UnitSystem, unitFor } from "@bitwright/traveler";
import {
  CHART_ROOM,
  type ChartPanel,
  levelLine,
  onPanel,
  panelAxes,
  rangeFromZero,
  stackedPanels,
} from "../chart/index.ts";
import {
  CUT_RAMP,
  DRAWING_ROOM,
  drawingSheet,
  HALO,
  INK,
  type SheetTitle,
  STEEL,
  TYPE,
  textAt,
  textWidth,
} from "../sheet/index.ts";
import { element, type Svg } from "../svg/index.ts";
import { bedLinesOn, bedMarks, stretches } from "./bed-stretches.ts";

type Joint = DepthStudy["joints"][number];

/** What a sheet by depth is made from. */
export interface DepthDrawingInput {
  readonly joints: readonly Joint[];
  /** Depth at which the bit starts [m]. */
  readonly from: number;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
}

/** Weight wanted and of the string, feed with its crossing to hold-back, gauge and neutral point, by depth, as a sheet of SVG. */
export function weightDrawing({ joints, from, title, units }: DepthDrawingInput): string {
  const forceUnit = units === "field" ? "lbf" : "kN";
  const pressureUnit = units === "field" ? "psi" : "kPa";
  const depthUnit = unitFor("depth", units);
  const depth = (joint: Joint) => inUnit("depth", joint.depth, depthUnit);
  const force = (si: number) => inUnit("force", si, forceUnit);
  const lines = (up: (joint: Joint) => number | undefined) => stretches(joints, depth, up);
  const wanted = lines(({ targetWeight }) => force(targetWeight));
  const hanging = lines(({ hangingWeight }) => force(hangingWeight));
  const feed = lines(({ feedForce }) => force(feedForce));
  const gauge = lines(({ gaugeReading }) =>
    gaugeReading === undefined ? undefined : inUnit("pressure", gaugeReading, pressureUnit),
  );
  const neutral = lines(({ neutralPoint }) =>
    neutralPoint === undefined ? undefined : inUnit("depth", neutralPoint, depthUnit),
  );
  const values = (of: readonly (readonly [number, number][])[]) => of.flat().map(([, up]) => up);
  const known = values(gauge).length > 0;
  const parted = values(neutral).length > 0;
  const ups = [
    values([...wanted, ...hanging]),
    values(feed),
    ...(known ? [values(gauge)] : []),
    ...(parted ? [values(neutral)] : []),
  ];
  const frames = stackedPanels(ups.length, {
    ...CHART_ROOM,
    bottom: DRAWING_ROOM.bottomOfChart - 12,
    gap: 10,
  });
  const x = { from: inUnit("depth", from, depthUnit), to: Math.max(...joints.map(depth)) };
  const panels = ups.map((up, k): ChartPanel => ({ ...frames[k], x, y: rangeFromZero(up) }));
  const headings = [
    "Brown: weight wanted on the bit; blue: weight of the string in fluid",
    "Feed of the rig: over the line it pushes, under it it holds back",
    ...(known ? ["Feed gauge that gives the weight"] : []),
    ...(parted ? ["Neutral point, height above the bit; where no line is, the whole string is pressed"] : []),
  ];
  const upUnits = [forceUnit, forceUnit, ...(known ? [pressureUnit] : []), ...(parted ? [depthUnit] : [])];
  const across = `depth of the bit, ${depthUnit}`;
  const draw = (panel: ChartPanel, of: readonly [number, number][][], stroke: string, name: string) =>
    bedLinesOn(panel, of, { stroke, class: name });
  const held = joints.filter(({ feedForce }) => feedForce <= -FEED_DEAD_BAND).length;
  const sub = [
    held === 0
      ? "The string is never heavier than the weight wanted: the rig pushes all the way."
      : `The rig holds back at ${held} of ${joints.length} joints, where the string alone is heavier than the weight wanted.`,
    "Each joint drilled down, in fluid, top head and drag counted. Check by weighing the string.",
  ];
  return drawingSheet({
    id: "weight-by-depth",
    heading: "Weight by depth",
    subheading: sub,
    description: `Weight wanted, weight of the string, feed, gauge and neutral point over the depth of the bit. ${sub.join(" ")}`,
    title,
    view: "weight and feed by depth",
    units: `${depthUnit}, ${forceUnit}, ${pressureUnit}`,
    hole: title.hole ?? "",
    drawing: [
      ...panels.flatMap((panel, k) => [
        panelAxes(panel, {
          up: upUnits[k],
          heading: headings[k],
          ...(k === panels.length - 1 ? { across } : {}),
        }),
        ...bedMarks(panel, joints, depth),
      ]),
      ...draw(panels[0], hanging, STEEL.face, "hanging"),
      ...draw(panels[0], wanted, CUT_RAMP[4], "wanted"),
      ...levelLine(panels[1], 0),
      ...draw(panels[1], feed, CUT_RAMP[4], "feed"),
      ...crossings(feed).map((at) => crossingMark(panels[1], at, `hold back from ${Math.round(at)} ${depthUnit}`)),
      ...(known ? draw(panels[2], gauge, CUT_RAMP[4], "gauge") : []),
      ...(parted ? draw(panels[panels.length - 1], neutral, STEEL.face, "neutral") : []),
    ],
  });
}

/** Depths within beds at which the feed passes from pushing to holding back, on the straight line between two joints. */
function crossings(beds: readonly [number, number][][]): number[] {
  return beds.flatMap((points) =>
    points.slice(1).flatMap(([to, below], k) => {
      const [from, above] = points[k];
      return above > 0 && below <= 0 ? [from + ((to - from) * above) / (above - below)] : [];
    }),
  );
}

/** A crossing with its words over the falling line to the right, or under it to the left where the sheet ends. */
function crossingMark(panel: ChartPanel, at: number, words: string): Svg {
  const [cx, cy] = onPanel(panel, at, 0);
  const fits = cx + 3 + textWidth(words, TYPE.caption) < panel.right;
  const place = fits ? ([cx + 1.8, cy - 1.4] as const) : ([cx - 1.8, cy + 3.6] as const);
  return element(
    "g",
    { class: "crossing" },
    element("circle", { cx, cy, r: 0.8, fill: INK }),
    textAt(place, words, TYPE.caption, { "text-anchor": fits ? "start" : "end", ...HALO }),
  );
}
