import {
  type BitLayout,
  type CutterGroup,
  cutterFrame,
  type Imbalance,
  minus,
  times,
  worstGroup,
} from "@bitwright/engine";
import { formatQuantity, type UnitSystem } from "@bitwright/traveler";
import { holeMark, turnArrow, wingNameMarks, wingNamePlaces } from "../face/around-hole.ts";
import { seenCutter, type ToPage } from "../face/seen-cutter.ts";
import { viewFromBelow } from "../face/view-from-below.ts";
import { wingBands } from "../face/wing-bands.ts";
import {
  CUT_RAMP,
  DRAWING_ROOM,
  drawingSheet,
  HALO,
  holeInBoth,
  INK,
  linesWithin,
  type SheetTitle,
  SOFT_INK,
  STEEL,
  TYPE,
  textAt,
} from "../sheet/index.ts";
import { element, linePath, type PagePoint, type Svg, softPath } from "../svg/index.ts";

/** What the sheet of the side force is made from. */
export interface SideForceDrawingInput {
  readonly layout: BitLayout;
  readonly imbalance: Imbalance;
  /** Side force of each cutter along x and y of the bit frame, in the order of the layout [N]. */
  readonly cutterForces: {
    readonly x: ArrayLike<number>;
    readonly y: ArrayLike<number>;
  };
  /** Name of the bed. */
  readonly bed: string;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  /** Start of every id in the drawing; `side-force` where not given. */
  readonly id?: string;
}

const NOTES = 44;
/** The longest arrow on paper, as a share of the hole radius. */
const LONGEST = 0.62;

/**
 * The side force on the face of the bit as a sheet of SVG: seen from below, each cutter's own push from its face, the sum
 * of all from the centre with its drag and radial part, and the neighbours that push most one way.
 */
export function sideForceDrawing(input: SideForceDrawingInput): string {
  const { layout, imbalance, cutterForces, bed, title, units, id = "side-force" } = input;
  const { whole, drag, radial, direction } = imbalance;
  const { scale, perMetre, toPage, hole } = viewFromBelow(layout, NOTES);
  const { middle } = hole;
  const bands = wingBands(layout);
  const force = (si: number) => formatQuantity("force", si, units, { figures: 3 });
  const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
  const typed = title.hole ?? formatQuantity("diameter", layout.holeDiameter, units);
  const holeText = holeInBoth(typed, layout.holeDiameter);
  const longest = Math.max(whole.force, drag.force, radial.force);
  const perNewton = longest > 0 ? (LONGEST * hole.radius) / longest : 0;
  const sizes = layout.cutters.map((_, k) => Math.hypot(cutterForces.x[k], cutterForces.y[k]));
  const largest = Math.max(...sizes, 0);
  const perCutterNewton = largest > 0 ? (0.24 * hole.radius) / largest : 0;
  const end = (
    from: PagePoint,
    { force: size, azimuth }: { force: number; azimuth: number },
    per: number,
  ): PagePoint => [from[0] + per * size * Math.cos(azimuth), from[1] - per * size * Math.sin(azimuth)];
  const sumEnd = end(middle, whole, perNewton);
  const dragEnd = end(middle, drag, perNewton);
  const where = direction ? `, ${direction.words}` : "";
  const sub = [
    `In ${bed}, seen from below: ${force(whole.force)}, ${percent(whole.share)} of the weight${where}.`,
    "Thick: all cutters together; dashed: its two parts; thin: each cutter's own push, not to the same scale.",
  ];
  return drawingSheet({
    id,
    heading: "Side force and balance",
    subheading: sub,
    description: `The bit seen from below in a hole of ${holeText}. ${sub[0]}`,
    title,
    view: "from below",
    units: `mm, ${units === "field" ? "lbf" : "N"}`,
    hole: holeText,
    scale,
    definitions: [
      element("clipPath", { id: `${id}-hole` }, element("circle", { cx: middle[0], cy: middle[1], r: hole.radius })),
    ],
    drawing: [
      element(
        "g",
        { "clip-path": `url(#${id}-hole)` },
        ...bands.map((band) =>
          element("path", {
            d: softPath(band.middle.map(toPage)),
            fill: "none",
            stroke: STEEL.tint,
            "stroke-width": band.thickness * perMetre,
            "stroke-linecap": "round",
          }),
        ),
        ...layout.cutters.map((cutter) =>
          element("path", {
            d: seenCutter(cutter, toPage).cylinder,
            fill: STEEL.carbide,
            "fill-opacity": 0.7,
            stroke: STEEL.edge,
            "stroke-width": 0.15,
          }),
        ),
      ),
      holeMark(hole, holeText),
      ...wingNameMarks(wingNamePlaces(bands, hole)),
      turnArrow(bands, hole),
      ...layout.cutters.flatMap((cutter, k) => {
        const from = seenCutter(cutter, toPage).at;
        const push = { force: sizes[k], azimuth: Math.atan2(cutterForces.y[k], cutterForces.x[k]) };
        return sizes[k] > 0.02 * largest
          ? [
              arrow(from, end(from, push, perCutterNewton), {
                stroke: SOFT_INK,
                width: 0.3,
                head: 1.3,
                class: "cutter-push",
              }),
            ]
          : [];
      }),
      ...cutterNumbers(layout, toPage),
      ...(whole.force > 0
        ? [
            arrow(middle, dragEnd, { stroke: INK, width: 0.45, head: 2.2, dash: "2 1", class: "drag-part" }),
            arrow(dragEnd, sumEnd, { stroke: INK, width: 0.45, head: 2.2, dash: "0.8 0.8", class: "radial-part" }),
            arrow(middle, sumEnd, { stroke: CUT_RAMP[4], width: 1.3, head: 4, class: "side-force" }),
            ...arrowNames(middle, dragEnd, sumEnd),
          ]
        : []),
      ...notes(imbalance, DRAWING_ROOM.bottom - NOTES + 6, force, percent),
    ],
  });
}

function arrow(
  from: PagePoint,
  to: PagePoint,
  look: {
    readonly stroke: string;
    readonly width: number;
    readonly head: number;
    readonly dash?: string;
    readonly class: string;
  },
): Svg {
  const size = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (!(size > 0)) return element("g", { class: look.class });
  const [ux, uy] = [(to[0] - from[0]) / size, (to[1] - from[1]) / size];
  const head = Math.min(look.head, size);
  const foot: PagePoint = [to[0] - head * ux, to[1] - head * uy];
  const barb = (side: number): PagePoint => [foot[0] - side * 0.36 * head * uy, foot[1] + side * 0.36 * head * ux];
  return element(
    "g",
    { class: look.class },
    element("path", {
      d: linePath([from, foot]),
      stroke: look.stroke,
      "stroke-width": look.width,
      "stroke-dasharray": look.dash,
    }),
    element("path", { d: linePath([to, barb(1), barb(-1)], true), fill: look.stroke }),
  );
}

/** Names beside the arrows, away from the triangle they make. */
function arrowNames(middle: PagePoint, dragEnd: PagePoint, sumEnd: PagePoint): Svg[] {
  const inside: PagePoint = [(middle[0] + dragEnd[0] + sumEnd[0]) / 3, (middle[1] + dragEnd[1] + sumEnd[1]) / 3];
  const beside = (from: PagePoint, to: PagePoint, share: number, text: string, more: object): Svg[] => {
    const along: PagePoint = [to[0] - from[0], to[1] - from[1]];
    const size = Math.hypot(...along);
    if (size < 6) return [];
    const spot: PagePoint = [from[0] + share * along[0], from[1] + share * along[1]];
    const [nx, ny] = [-along[1] / size, along[0] / size];
    const outward = (spot[0] - inside[0]) * nx + (spot[1] - inside[1]) * ny >= 0 ? 1 : -1;
    const [x, y] = [spot[0] + 2.4 * outward * nx, spot[1] + 2.4 * outward * ny];
    const anchor = outward * nx > 0.3 ? "start" : outward * nx < -0.3 ? "end" : "middle";
    return [textAt([x, y + 1 + outward * ny], text, TYPE.note, { "text-anchor": anchor, ...HALO, ...more })];
  };
  return [
    ...beside(middle, dragEnd, 0.72, "drag part", {}),
    ...beside(dragEnd, sumEnd, 0.5, "radial part", {}),
    ...beside(middle, sumEnd, 0.6, "side force", { "font-weight": "bold", fill: CUT_RAMP[4] }),
  ];
}

/** The number of each cutter on its cylinder, behind where its push begins. */
function cutterNumbers(layout: BitLayout, toPage: ToPage): Svg[] {
  return layout.cutters.map((cutter, k) => {
    const { centre, faceNormal } = cutterFrame(cutter);
    const [x, y] = toPage(minus(centre, times(0.6 * cutter.length, faceNormal)));
    return textAt([x, y + TYPE.caption * 0.36], String(k + 1), TYPE.caption, {
      class: "cutter-number",
      "text-anchor": "middle",
      ...HALO,
      stroke: STEEL.carbide,
      fill: STEEL.face,
    });
  });
}

function notes(
  { drag, radial, betweenAngle, pairs, triples }: Imbalance,
  top: number,
  force: (si: number) => string,
  percent: (share: number) => string,
): Svg[] {
  const group = (worst: CutterGroup | undefined, count: string) =>
    worst
      ? [
          `Worst ${count} neighbours on the profile: cutters ${worst.cutters.join(", ")}, ${force(worst.lateralForce)}, ${percent(worst.lateralShare)} of the weight; ${percent(worst.leanShare)} of their pushes do not cancel.`,
        ]
      : [];
  const degrees = Math.round((betweenAngle * 180) / Math.PI);
  const lines = [
    `Drag part ${force(drag.force)}, radial part ${force(radial.force)}, ${degrees}° between them: near 0° they add up, near 180° they take from each other.`,
    ...group(worstGroup(pairs), "two"),
    ...group(worstGroup(triples), "three"),
    "Under 5 % of the weight counts as well balanced, under 10 % as accepted (common practice).",
  ];
  const set = lines.flatMap((text) => linesWithin(text, TYPE.note, DRAWING_ROOM.right - DRAWING_ROOM.left - 8, 2));
  return set.map((text, k) => textAt([DRAWING_ROOM.left + 4, top + k * 4.4], text, TYPE.note));
}
