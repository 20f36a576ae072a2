import { CUT_RAMP, INK, linesWithin, SOFT_INK, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type PagePoint, pair, type Svg } from "../svg/index.ts";

/** What the strip of bars is drawn from. */
export interface ShareBarsInput {
  /** What is shared out: `area of cut`. */
  readonly of: string;
  /** Share of each cutter, 0 to 1 [-]. */
  readonly shares: readonly number[];
  readonly steps: readonly number[];
  readonly numbers: readonly string[];
  /** Top of the colour ramp, 0 to 1 [-]. */
  readonly rampTop: number;
  /** [mm] */
  readonly left: number;
  /** [mm] */
  readonly right: number;
  /** Page y of the foot of the bars [mm]. */
  readonly foot: number;
  /** Height of the longest bar [mm]. */
  readonly height: number;
}

/** Share of each cutter as a bar over its number; the bars carry the colours of the picture and so are its legend. */
export function shareBars(input: ShareBarsInput): Svg {
  const { of, shares, steps, numbers, left, right, foot, height, rampTop } = input;
  const pitch = Math.min(9, (right - left) / Math.max(1, shares.length));
  const largest = Math.max(...shares, 1e-12);
  // Figures that would touch their neighbours are set upright; only past sixty cutters do they also shrink.
  const upright = pitch < 5.4;
  const size = Math.min(TYPE.caption, pitch / 1.05);
  const figure = (at: PagePoint, text: string, end: string, fill: string): Svg =>
    upright
      ? textAt([at[0] + size * 0.36, at[1]], text, size, {
          "text-anchor": end,
          fill,
          transform: `rotate(-90 ${pair([at[0] + size * 0.36, at[1]])})`,
        })
      : textAt(at, text, size, { "text-anchor": "middle", fill });
  const bars = shares.map((share, k) => {
    const tall = ((upright ? height - 4 : height) * share) / largest;
    const x = left + k * pitch;
    const middle = x + pitch / 2;
    return element(
      "g",
      { class: "share" },
      element("rect", {
        x: x + pitch * 0.14,
        y: foot - tall,
        width: pitch * 0.72,
        height: tall,
        fill: CUT_RAMP[steps[k]],
        stroke: INK,
        "stroke-width": 0.15,
      }),
      figure([middle, foot + (upright ? 0.8 : TYPE.caption + 0.4)], numbers[k], "end", INK),
      figure([middle, foot - tall - 0.8], percent(share), "start", SOFT_INK),
    );
  });
  const captionY = foot - height - TYPE.caption - 2.4;
  return element(
    "g",
    { class: "shares" },
    ...linesWithin(`Share by cutter, in %: ${of}`, TYPE.note, right - left - CUT_RAMP.length * LEGEND_BOX - 2, 1).map(
      (line) => textAt([left, captionY], line, TYPE.note),
    ),
    ...legend(right, captionY, rampTop),
    ...bars,
    element("path", {
      d: linePath([
        [left, foot],
        [left + pitch * shares.length, foot],
      ]),
      stroke: INK,
      "stroke-width": 0.25,
    }),
  );
}

/** One decimal under ten, none above. */
function percent(share: number): string {
  const hundredths = 100 * share;
  return hundredths === 0 ? "0" : hundredths.toFixed(hundredths < 9.95 ? 1 : 0);
}

/** Room of one step of the legend [mm]. */
const LEGEND_BOX = 15;

function legend(right: number, y: number, rampTop: number): Svg[] {
  return CUT_RAMP.flatMap((fill, k) => {
    const x = right - (CUT_RAMP.length - k) * LEGEND_BOX;
    const from = (100 * rampTop * k) / CUT_RAMP.length;
    const to = (100 * rampTop * (k + 1)) / CUT_RAMP.length;
    return [
      element("rect", { x, y: y - 2.4, width: 3, height: 3, fill, stroke: INK, "stroke-width": 0.15 }),
      textAt([x + 3.8, y], `${short(from)}–${short(to)}`, TYPE.caption),
    ];
  });
}

const short = (value: number): string => value.toFixed(1).replace(/\.0$/, "");
