import type { BitLayout } from "@bitwright/engine";
import { formatQuantity, type UnitSystem } from "@bitwright/traveler";
import { drawingSheet, holeInBoth, INK, PAPER, type SheetTitle, STEEL } from "../sheet/index.ts";
import { element, type PagePoint, type Svg, softPath, svgNumber } from "../svg/index.ts";
import { crossAt, holeMark, turnArrow, wingNameMarks, wingNamePlaces } from "./around-hole.ts";
import { numberMarks } from "./cutter-numbers.ts";
import { type DrawnPorts, portPlaces } from "./port-places.ts";
import { type SeenCutter, seenCutter, type ToPage } from "./seen-cutter.ts";
import { viewFromBelow } from "./view-from-below.ts";
import { type WingBand, wingBands } from "./wing-bands.ts";

/** What the face drawing is made from. */
export interface FaceDrawingInput {
  readonly layout: BitLayout;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  readonly ports?: DrawnPorts;
  /** What to write at each cutter; its number in the layout, from 1, where not given. */
  readonly numbers?: readonly string[];
  /** Start of every id in the drawing; `face` where not given. */
  readonly id?: string;
}

const MM_PER_M = 1000;

/**
 * The bit from below as a sheet of SVG: every cutter as its tilted cylinder really projects, numbered, on the wings that
 * carry it, with ports, centre and hole, at a true scale.
 */
export function faceDrawing(input: FaceDrawingInput): string {
  const { layout, title, units, ports } = input;
  const id = input.id ?? "face";
  const { scale, perMetre, toPage, hole } = viewFromBelow(layout);
  const bands = wingBands(layout);
  const seen = layout.cutters.map((cutter) => seenCutter(cutter, toPage));
  const farToNear = fromFarToNear(layout);
  const places = ports ? portPlaces(layout, bands, ports).map(toPage) : [];
  const portRadius = ((ports?.diameter ?? 0) * perMetre) / 2;
  const wingNames = wingNamePlaces(bands, hole);
  const numbers = layout.cutters.map((_, k) => input.numbers?.[k] ?? String(k + 1));
  const holeText = title.hole ?? formatQuantity("diameter", layout.holeDiameter, units);
  const counts = countsLine(layout, bands, units, ports);
  return drawingSheet({
    id,
    heading: "Face of the bit",
    subheading: [
      "Seen from below, looking up the hole. From here the bit turns counter-clockwise, as the arrow shows.",
      counts,
    ],
    description: `The bit seen from below in a hole of ${holeText}: ${counts} Each cutter is drawn as its tilted cylinder projects and carries its number.`,
    title,
    view: "from below",
    units: units === "field" ? "mm; hole in inches, mm" : "mm",
    hole: holeInBoth(holeText, layout.holeDiameter),
    scale,
    definitions: [
      element(
        "clipPath",
        { id: `${id}-hole` },
        element("circle", { cx: hole.middle[0], cy: hole.middle[1], r: hole.radius }),
      ),
    ],
    drawing: [
      element("g", { "clip-path": `url(#${id}-hole)` }, ...wingShapes(bands, toPage, perMetre)),
      ...portMarks(places, portRadius),
      element(
        "g",
        { class: "cutters", "clip-path": `url(#${id}-hole)` },
        ...farToNear.map((k) => cutterMark(seen[k], numbers[k])),
      ),
      holeMark(hole, holeInBoth(holeText, layout.holeDiameter)),
      ...wingNameMarks(wingNames),
      ...numberMarks({ seen, farToNear, numbers, hole, wingNames, ports: places, portRadius }),
      turnArrow(bands, hole),
    ],
  });
}

function countsLine(
  layout: BitLayout,
  bands: readonly WingBand[],
  units: UnitSystem,
  ports: DrawnPorts | undefined,
): string {
  const plural = (count: number, noun: string) => `${count} ${noun}${count === 1 ? "" : "s"}`;
  const sizes = [...new Set(layout.cutters.map(({ faceDiameter }) => svgNumber(faceDiameter * MM_PER_M)))];
  const cutters = `${plural(layout.cutters.length, "cutter")}${sizes.length ? ` of ${sizes.join(" and ")} mm` : ""}`;
  const wings = bands.length ? ` on ${plural(bands.length, "wing")}` : ", wings not known";
  if (!ports || ports.count === 0) return `${cutters}${wings}.`;
  const size = formatQuantity("diameter", ports.diameter, units);
  const where = bands.length ? "drawn where the slots leave room" : "place not known";
  return `${cutters}${wings}; ${plural(ports.count, "port")} of ${size}, ${where}.`;
}

function fromFarToNear(layout: BitLayout): number[] {
  return layout.cutters
    .map((cutter, k) => ({ k, height: cutter.height }))
    .sort((a, b) => a.height - b.height || a.k - b.k)
    .map(({ k }) => k);
}

/** All edges first, then all fills: where two wings meet they flow into one. */
function wingShapes(bands: readonly WingBand[], toPage: ToPage, perMetre: number): Svg[] {
  const line = (band: WingBand, more: number, stroke: string) =>
    element("path", {
      d: softPath(band.middle.map(toPage)),
      fill: "none",
      stroke,
      "stroke-width": band.thickness * perMetre + more,
      "stroke-linecap": "round",
      "stroke-linejoin": "round",
    });
  return [
    ...bands.map((band) => line(band, 0.5, STEEL.edge)),
    ...bands.map((band) => element("g", { "data-wing": band.wing }, line(band, 0, STEEL.tint))),
  ];
}

function cutterMark(cutter: SeenCutter, number: string): Svg {
  const outline = { stroke: STEEL.line, "stroke-width": 0.2 };
  const cylinder = element("path", { class: "cylinder", d: cutter.cylinder, fill: STEEL.carbide, ...outline });
  const back = element("path", { class: "back", d: cutter.back, fill: "none", ...outline, "stroke-opacity": 0.55 });
  const face = element("path", {
    class: "face",
    d: cutter.face,
    fill: cutter.faceInView ? STEEL.face : "none",
    stroke: STEEL.face,
    "stroke-width": 0.3,
    "stroke-dasharray": cutter.faceInView ? undefined : "0.8 0.6",
  });
  return element("g", { "data-cutter": number }, cylinder, back, face);
}

function portMarks(places: readonly PagePoint[], radius: number): Svg[] {
  return places.map((at) =>
    element(
      "g",
      { class: "port" },
      element("circle", { cx: at[0], cy: at[1], r: radius, fill: PAPER, stroke: INK, "stroke-width": 0.35 }),
      element("path", { d: crossAt(at, radius * 0.45), stroke: INK, "stroke-width": 0.2 }),
    ),
  );
}
