import { element, linePath, type PagePoint, pair, type Svg } from "../svg/index.ts";
import type { DrawingScale } from "./drawing-scale.ts";
import { INK, PAPER } from "./palette.ts";
import { TYPE, textAt } from "./text.ts";

const MM_PER_INCH = 25.4;
const WIDEST = 70;
const BAR = 1.6;

/** Lengths of the bars and of their steps, long to short. */
const MM_BARS = [
  [200, 50],
  [100, 20],
  [50, 10],
  [20, 5],
  [10, 2],
] as const;
const INCH_BARS = [
  [8, 2],
  [4, 1],
  [2, 0.5],
  [1, 0.25],
  [0.5, 0.125],
] as const;

/** Two bars for reading lengths of the thing drawn, in millimetres and in inches; `at` is the top left corner. */
export function scaleBars([x, y]: PagePoint, scale: DrawingScale): Svg {
  return element(
    "g",
    { class: "scale-bars" },
    bar([x, y], scale.factor, MM_BARS, 1, "mm"),
    bar([x + WIDEST + 24, y], scale.factor, INCH_BARS, MM_PER_INCH, "in"),
  );
}

function bar(
  [x, y]: PagePoint,
  factor: number,
  bars: readonly (readonly [number, number])[],
  unitMm: number,
  unit: string,
): Svg {
  const [length, step] = bars.find(([long]) => long * unitMm * factor <= WIDEST) ?? bars[bars.length - 1];
  const steps = Math.round(length / step);
  const width = step * unitMm * factor;
  const boxes = Array.from({ length: steps }, (_, k) =>
    element("rect", {
      x: x + k * width,
      y,
      width,
      height: BAR,
      fill: k % 2 === 0 ? INK : PAPER,
      stroke: INK,
      "stroke-width": 0.2,
    }),
  );
  return element(
    "g",
    {},
    ...boxes,
    textAt([x, y + BAR + 3], "0", TYPE.caption),
    textAt([x + steps * width, y + BAR + 3], `${length} ${unit}`, TYPE.caption, { "text-anchor": "middle" }),
  );
}

/** Length of the bar that shows whether the print came out at full size [mm]. */
const CHECK_LENGTH = 100;

/** The upright line to lay a rule on before anything is measured off the paper; `at` is its lower end. */
export function checkBar([x, y]: PagePoint): Svg {
  const top = y - CHECK_LENGTH;
  const line = linePath([
    [x - 1.5, y],
    [x + 1.5, y],
    [x, y],
    [x, top],
    [x - 1.5, top],
    [x + 1.5, top],
  ]);
  const middle: PagePoint = [x - 1.2, y - CHECK_LENGTH / 2];
  return element(
    "g",
    { class: "check-bar" },
    element("path", { d: line, fill: "none", stroke: INK, "stroke-width": 0.3 }),
    textAt(middle, "100 mm on a print at full size", TYPE.caption, {
      "text-anchor": "middle",
      transform: `rotate(-90 ${pair(middle)})`,
    }),
  );
}
