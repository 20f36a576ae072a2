import { HALO, INK, SOFT_INK, type StandingBox, TYPE, textAt, textWidth } from "../sheet/index.ts";
import { element, linePath, type PagePoint, pair, type Svg, svgNumber } from "../svg/index.ts";
import type { WingBand } from "./wing-bands.ts";

/** Room around the hole for wing names, the arrow and the width of the hole [mm]. */
export const AROUND_HOLE = { side: 14, above: 13, below: 16 } as const;

/** The hole on the page. */
export interface DrawnHole {
  readonly middle: PagePoint;
  /** On paper [mm]. */
  readonly radius: number;
}

/** A piece of text and the room it takes on the page. */
export interface PlacedName extends StandingBox {
  readonly text: string;
}

/** Path data of an upright cross. */
export function crossAt([x, y]: PagePoint, arm: number): string {
  return `${linePath([
    [x - arm, y],
    [x + arm, y],
  ])}${linePath([
    [x, y - arm],
    [x, y + arm],
  ])}`;
}

/** The hole, its centre and its width. */
export function holeMark({ middle: [cx, cy], radius }: DrawnHole, text: string): Svg {
  const y = cy + radius + AROUND_HOLE.below - 5;
  const tick = (x: number, toward: number) =>
    `M${pair([x + toward * 2.4, y - 0.9])}L${pair([x, y])}L${pair([x + toward * 2.4, y + 0.9])}`;
  const extension = (x: number) =>
    linePath([
      [x, cy],
      [x, y + 1.5],
    ]);
  const width = textWidth(text, TYPE.note) + 3;
  const fine = { fill: "none", stroke: INK, "stroke-width": 0.18 };
  return element(
    "g",
    { class: "hole" },
    element("circle", { cx, cy, r: radius, fill: "none", stroke: INK, "stroke-width": 0.5 }),
    element("path", { d: crossAt([cx, cy], 4), ...fine, "stroke-width": 0.25 }),
    element("circle", { cx, cy, r: 1.2, ...fine }),
    element("path", { d: `${extension(cx - radius)}${extension(cx + radius)}`, ...fine, "stroke-dasharray": "2 1" }),
    element("path", {
      d: `${linePath([
        [cx - radius, y],
        [cx - width / 2, y],
      ])}${linePath([
        [cx + width / 2, y],
        [cx + radius, y],
      ])}${tick(cx - radius, 1)}${tick(cx + radius, -1)}`,
      ...fine,
    }),
    textAt([cx, y + 1.1], text, TYPE.note, { "text-anchor": "middle" }),
  );
}

/** Where the name of each wing stands: outside the hole, off the wing's outermost cutter. */
export function wingNamePlaces(bands: readonly WingBand[], hole: DrawnHole): PlacedName[] {
  return bands.map(({ wing, azimuth }) => {
    const text = `wing ${wing}`;
    const width = textWidth(text, TYPE.note);
    const height = TYPE.note;
    const out = 2.4 + (Math.abs(Math.cos(azimuth)) * width) / 2 + (Math.abs(Math.sin(azimuth)) * height) / 2;
    return { text, width, height, at: onCircle(hole, azimuth, out) };
  });
}

/** The names of the wings at their places. */
export function wingNameMarks(names: readonly PlacedName[]): Svg[] {
  return names.map(({ text, at }) =>
    textAt([at[0], at[1] + TYPE.note * 0.36], text, TYPE.note, { "text-anchor": "middle", ...HALO, fill: SOFT_INK }),
  );
}

/** Point outside the hole at an azimuth. */
function onCircle({ middle, radius }: DrawnHole, azimuth: number, out: number): PagePoint {
  return [middle[0] + (radius + out) * Math.cos(azimuth), middle[1] - (radius + out) * Math.sin(azimuth)];
}

/** Bent arrow outside the hole, in the gap between wing names nearest the top. */
export function turnArrow(bands: readonly WingBand[], hole: DrawnHole): Svg {
  const out = 3.2;
  const half = 11 / hole.radius;
  const middle = gapNearTop(bands, half + 10 / hole.radius);
  const from = onCircle(hole, middle - half, out);
  const to = onCircle(hole, middle + half, out);
  const r = svgNumber(hole.radius + out);
  const tangent = middle + half + Math.PI / 2;
  const barb = (turn: number): PagePoint => [
    to[0] - 2.8 * Math.cos(tangent + turn),
    to[1] + 2.8 * Math.sin(tangent + turn),
  ];
  const side = Math.cos(middle);
  const words = onCircle(hole, middle, out + 2.6 + 3 * Math.abs(side));
  return element(
    "g",
    { class: "turn" },
    element("path", {
      d: `M${pair(from)}A${r} ${r} 0 0 0 ${pair(to)}M${pair(barb(0.45))}L${pair(to)}L${pair(barb(-0.45))}`,
      fill: "none",
      stroke: INK,
      "stroke-width": 0.5,
    }),
    textAt(words, "turns this way", TYPE.note, {
      "text-anchor": side > 0.2 ? "start" : side < -0.2 ? "end" : "middle",
    }),
  );
}

/** Azimuth near the top of the page with so much room to either side of every wing name; the top where there is none. */
function gapNearTop(bands: readonly WingBand[], room: number): number {
  const top = Math.PI / 2;
  const away = (a: number, b: number) => Math.abs(Math.atan2(Math.sin(a - b), Math.cos(a - b)));
  const steps = Array.from({ length: 13 }, (_, k) => k).flatMap((k) => (k === 0 ? [0] : [k, -k]));
  const free = steps.find((k) => bands.every(({ azimuth }) => away(azimuth, top + (k * Math.PI) / 36) > room));
  return top + ((free ?? 0) * Math.PI) / 36;
}
