import { tickStep, ticks } from "../chart/index.ts";
import { CUT_RAMP, INK, PAPER, TYPE, textAt, textWidth } from "../sheet/index.ts";
import { element, linePath, type PagePoint, pair, type Svg } from "../svg/index.ts";
import { crescentOutline } from "./crescent-outline.ts";
import { holeBottom } from "./hole-bottom.ts";
import type { Crescent, PassingPlane } from "./passing-plane.ts";
import type { UncutRings } from "./uncut-words.ts";

/** What the picture of the cut laid flat is drawn from. */
export interface FlatLayersInput {
  readonly plane: PassingPlane;
  /** Advance per revolution [m]. */
  readonly advance: number;
  /** Hole radius [m]. */
  readonly holeRadius: number;
  readonly steps: readonly number[];
  readonly numbers: readonly string[];
  readonly uncut: UncutRings;
  /** Page x of the axis [mm]. */
  readonly left: number;
  /** Page y of the bottom of the cut [mm]. */
  readonly bottom: number;
  /** Paper for each metre of radius [mm/m]. */
  readonly perMetre: number;
  /** Room for the layers [mm]. */
  readonly height: number;
  /** The advance as text: `1.5 mm`. */
  readonly advanceText: string;
  readonly id: string;
}

const STRETCHES = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
const MM_PER_INCH = 25.4;

/** By how much the depth is stretched so that one advance fills the room [-]. */
function depthStretch({ advance, perMetre, height }: Pick<FlatLayersInput, "advance" | "perMetre" | "height">): number {
  return Math.max(...STRETCHES.filter((stretch) => stretch === 1 || advance * perMetre * stretch <= height));
}

/**
 * The cut of one turn with the bottom of the hole drawn level: what each cutter takes as a layer, deepest last, the depth
 * stretched. Where the hole is covered the layers fill one advance.
 */
export function flatLayers(input: FlatLayersInput): Svg[] {
  const { plane, advance, steps, numbers, left, bottom, perMetre } = input;
  const stretch = depthStretch(input);
  const levelled = layLevel(plane);
  const toPage = (radius: number, height: number): PagePoint => [
    left + radius * perMetre,
    bottom + height * perMetre * stretch,
  ];
  const layers = levelled.map((layer) =>
    element("path", {
      class: "layer",
      "data-cutter": numbers[layer.cutter],
      d: linePath(crescentOutline(layer, plane.cellWidth, toPage), true),
      fill: CUT_RAMP[steps[layer.cutter]],
      stroke: INK,
      "stroke-width": 0.1,
      "stroke-linejoin": "round",
    }),
  );
  return [
    textAt(
      [left, toPage(0, -advance)[1] - 2.2],
      `The same cut with the bottom of the hole laid flat, depth × ${stretch}: one turn takes ${input.advanceText}`,
      TYPE.note,
    ),
    element("g", { class: "layers" }, ...layers),
    ...uncutColumns(input, toPage),
    ...levelled.flatMap((layer) => layerNumber(layer, numbers[layer.cutter], steps[layer.cutter], toPage)),
    axes(input, toPage),
  ];
}

function layLevel({ crescents, cellWidth }: PassingPlane): Crescent[] {
  const bottom = holeBottom(crescents, cellWidth);
  const level = (radius: readonly number[], heights: readonly number[]) =>
    heights.map((height, k) => height - (bottom.get(Math.floor(radius[k] / cellWidth)) ?? height));
  return crescents.map(({ cutter, radius, lower, upper }) => ({
    cutter,
    radius,
    lower: level(radius, lower),
    upper: level(radius, upper),
  }));
}

/** The number of a layer, as near the middle of its area as it has room; none where it has no room at all. */
function layerNumber(
  layer: Crescent,
  number: string,
  step: number,
  toPage: (radius: number, height: number) => PagePoint,
): Svg[] {
  const size = TYPE.caption;
  const half = textWidth(number, size) / 2;
  const rims = layer.radius.map((radius, k) => ({
    x: toPage(radius, 0)[0],
    low: toPage(radius, layer.lower[k])[1],
    high: toPage(radius, layer.upper[k])[1],
  }));
  const area = rims.reduce((sum, { low, high }) => sum + low - high, 0);
  const centre = rims.reduce((sum, { x, low, high }) => sum + x * (low - high), 0) / (area || 1);
  const [first, last] = [rims[0].x, rims[rims.length - 1].x];
  const fits = ({ x, low, high }: (typeof rims)[number]) => {
    const middle = (low + high) / 2;
    if (x - half < first || x + half > last) return false;
    return rims.every(
      (rim) => Math.abs(rim.x - x) > half || (rim.low >= middle + size * 0.42 && rim.high <= middle - size * 0.42),
    );
  };
  const place = [...rims].sort((a, b) => Math.abs(a.x - centre) - Math.abs(b.x - centre)).find(fits);
  if (!place) return [];
  const at: PagePoint = [place.x, (place.low + place.high) / 2 + size * 0.36];
  const onDark = step === CUT_RAMP.length - 1;
  return [textAt(at, number, size, { "text-anchor": "middle", ...(onDark ? { fill: PAPER } : {}) })];
}

function uncutColumns(
  { uncut, advance, id }: FlatLayersInput,
  toPage: (radius: number, height: number) => PagePoint,
): Svg[] {
  return uncut.map(([from, to]) => {
    const [x, y] = toPage(from, -advance);
    const [right, low] = toPage(to, 0);
    return element("rect", { x, y, width: Math.max(0.5, right - x), height: low - y, fill: `url(#${id}-uncut)` });
  });
}

/** Radius in millimetres and inches under the layers, depth at their left. */
function axes(
  { advance, holeRadius, left, bottom, perMetre }: FlatLayersInput,
  toPage: (radius: number, height: number) => PagePoint,
): Svg {
  const top = toPage(0, -advance)[1];
  const right = left + holeRadius * perMetre;
  const scale = (y: number, unitMm: number, unit: string, most: number): Svg[] => {
    const perUnit = (unitMm * perMetre) / 1000;
    const length = (right - left) / perUnit;
    const step = tickStep(length, most);
    const places = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
    const marks = ticks(length, step);
    return [
      element("path", {
        d: marks
          .map((mark) =>
            linePath([
              [left + mark * perUnit, y],
              [left + mark * perUnit, y + 1.2],
            ]),
          )
          .join(""),
        stroke: INK,
        "stroke-width": 0.2,
      }),
      ...marks.map((mark) =>
        textAt([left + mark * perUnit, y + 4], mark.toFixed(places), TYPE.caption, { "text-anchor": "middle" }),
      ),
      textAt([right + 2.5, y + 4], unit, TYPE.caption),
    ];
  };
  return element(
    "g",
    { class: "axes" },
    element("path", {
      d: `${linePath([
        [left, top],
        [left, bottom],
        [right, bottom],
        [right, top],
      ])}${linePath([
        [left - 1.2, top],
        [left, top],
      ])}`,
      fill: "none",
      stroke: INK,
      "stroke-width": 0.25,
    }),
    ...scale(bottom, 1, "mm radius", 16),
    ...scale(bottom + 4.6, MM_PER_INCH, "in radius", 12),
    textAt([left - 1.8, (top + bottom) / 2], "one turn", TYPE.caption, {
      "text-anchor": "middle",
      transform: `rotate(-90 ${pair([left - 1.8, (top + bottom) / 2])})`,
    }),
  );
}
