import { CUT_RAMP, HALO, INK, PAPER, ROCK, SOFT_INK, STEEL, TYPE, textAt, textWidth } from "../sheet/index.ts";
import { element, linePath, type PagePoint, type Svg, softPath, thinned } from "../svg/index.ts";
import { crescentOutline } from "./crescent-outline.ts";
import { holeBottom } from "./hole-bottom.ts";
import { numberPlaces, type Tip } from "./number-places.ts";
import type { PassingPlane, PlaneLine } from "./passing-plane.ts";
import type { NamedZone } from "./profile-line.ts";
import type { UncutRings } from "./uncut-words.ts";

/** What the main picture of the profile sheet is drawn from. */
export interface PlaneViewInput {
  readonly plane: PassingPlane;
  readonly tips: readonly Tip[];
  /** Step of the colour ramp for each cutter [-]. */
  readonly steps: readonly number[];
  readonly numbers: readonly string[];
  readonly uncut: UncutRings;
  readonly zones: readonly NamedZone[];
  /** The line of the profile, from the axis outward. */
  readonly profile: PlaneLine;
  /** Hole radius [m]. */
  readonly holeRadius: number;
  readonly toPage: (radius: number, height: number) => PagePoint;
  /** Page heights between which the picture stands [mm]. */
  readonly top: number;
  /** [mm] */
  readonly bottom: number;
  /** Start of every id in the drawing. */
  readonly id: string;
}

const ROCK_BEYOND = 9;

/** All cutters in one plane with the crescent each cuts, the rock, the axis and the gauge. */
export function planeView(view: PlaneViewInput): Svg[] {
  const { plane, numbers, steps, toPage } = view;
  const outlines = plane.outlines.map((line, k) =>
    element("path", {
      class: "face",
      "data-cutter": numbers[k],
      d: linePath(thinned(pointsOf(line, toPage), 0.002), true),
      fill: STEEL.tint,
      "fill-opacity": 0.35,
      stroke: STEEL.line,
      "stroke-width": 0.2,
    }),
  );
  const crescents = plane.crescents.map((crescent) =>
    element("path", {
      class: "crescent",
      "data-cutter": numbers[crescent.cutter],
      d: linePath(crescentOutline(crescent, plane.cellWidth, toPage), true),
      fill: CUT_RAMP[steps[crescent.cutter]],
      stroke: INK,
      "stroke-width": 0.1,
      "stroke-linejoin": "round",
    }),
  );
  return [
    rock(view),
    element("g", { class: "faces" }, ...outlines),
    profileLine(view),
    element("g", { class: "crescents" }, ...crescents),
    ...uncutMarks(view),
    axisAndGauge(view),
    ...zoneNames(view),
    ...cutterNumbers(view),
  ];
}

/** The hatch of what no cutter sweeps. */
export function uncutHatch(id: string): Svg {
  return element(
    "pattern",
    { id: `${id}-uncut`, width: 1.6, height: 1.6, patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)" },
    element("rect", { width: 1.6, height: 1.6, fill: PAPER }),
    element("rect", { width: 0.45, height: 1.6, fill: INK }),
  );
}

function pointsOf({ radius, height }: PlaneLine, toPage: PlaneViewInput["toPage"]): PagePoint[] {
  return radius.map((at, k) => toPage(at, height[k]));
}

/** The rock that is left: under the bottom of the hole, beyond its wall, and in rings that no cutter sweeps. */
function rock({ plane, holeRadius, toPage, top, bottom, uncut }: PlaneViewInput): Svg {
  const { cellWidth } = plane;
  const line: PagePoint[] = [];
  for (const [cell, height] of holeBottom(plane.crescents, cellWidth)) {
    line.push(toPage(cell * cellWidth, height), toPage((cell + 1) * cellWidth, height));
  }
  for (const [from, to] of uncut) line.push([toPage(from, 0)[0], top], [toPage(to, 0)[0], top]);
  line.sort((a, b) => a[0] - b[0]);
  const wall = toPage(holeRadius, 0)[0];
  const axis = toPage(0, 0)[0];
  const outline: PagePoint[] = [
    ...thinned(line, 0.01),
    [wall, top],
    [wall + ROCK_BEYOND, top],
    [wall + ROCK_BEYOND, bottom],
    [axis, bottom],
  ];
  return element("path", { class: "rock", d: linePath(outline, true), fill: ROCK });
}

function profileLine({ profile, toPage, top }: PlaneViewInput): Svg {
  return element("path", {
    class: "profile",
    // A gauge longer than the cutters on it goes on beyond the picture.
    d: softPath(pointsOf(profile, toPage).filter(([, y]) => y >= top)),
    fill: "none",
    stroke: STEEL.face,
    "stroke-width": 0.35,
    "stroke-dasharray": "2.4 1.2",
  });
}

function axisAndGauge({ holeRadius, toPage, top, bottom }: PlaneViewInput): Svg {
  const axis = toPage(0, 0)[0];
  const wall = toPage(holeRadius, 0)[0];
  const name = (x: number, text: string, anchor: string) =>
    textAt([x, bottom + 3.4], text, TYPE.caption, { "text-anchor": anchor });
  return element(
    "g",
    { class: "axis-and-gauge" },
    element("path", {
      d: linePath([
        [axis, top - 3],
        [axis, bottom],
      ]),
      stroke: INK,
      "stroke-width": 0.25,
      "stroke-dasharray": "6 1.2 1.2 1.2",
    }),
    element("path", {
      d: linePath([
        [wall, top - 3],
        [wall, bottom],
      ]),
      stroke: INK,
      "stroke-width": 0.35,
    }),
    name(axis, "bit axis", "middle"),
    name(wall + 1, "hole wall", "start"),
  );
}

function uncutMarks({ uncut, toPage, top, bottom, id }: PlaneViewInput): Svg[] {
  return uncut.map(([from, to]) => {
    const x = toPage(from, 0)[0];
    const width = Math.max(0.5, toPage(to, 0)[0] - x);
    return element("rect", {
      class: "uncut",
      x,
      y: top,
      width,
      height: bottom - top,
      fill: `url(#${id}-uncut)`,
      "fill-opacity": 0.75,
    });
  });
}

function zoneNames({ zones, toPage, top }: PlaneViewInput): Svg[] {
  const y = top - 4;
  return zones.map(({ name, from, to }) => {
    const left = toPage(from, 0)[0];
    const right = toPage(to, 0)[0];
    // The gauge stands upright and has no width: its name goes beside it.
    if (right - left < 1) return textAt([right + 1, y], name, TYPE.caption);
    const fits = textWidth(name, TYPE.caption) < right - left;
    const bracket = linePath([
      [left + 0.3, y + 2.2],
      [left + 0.3, y + 1],
      [right - 0.3, y + 1],
      [right - 0.3, y + 2.2],
    ]);
    return element(
      "g",
      { class: "zone" },
      element("path", { d: bracket, fill: "none", stroke: SOFT_INK, "stroke-width": 0.2 }),
      ...(fits ? [textAt([(left + right) / 2, y], name, TYPE.caption, { "text-anchor": "middle" })] : []),
    );
  });
}

function cutterNumbers({ tips, numbers, toPage }: PlaneViewInput): Svg[] {
  return numberPlaces(tips, toPage(0, 0)[0]).map(({ cutter, tip, at }) =>
    element(
      "g",
      { class: "cutter-number" },
      element("path", { d: linePath([tip, at]), stroke: INK, "stroke-width": 0.15 }),
      textAt([at[0], at[1] + TYPE.number * 0.36], numbers[cutter], TYPE.number, {
        "text-anchor": "middle",
        ...HALO,
        stroke: ROCK,
      }),
    ),
  );
}
