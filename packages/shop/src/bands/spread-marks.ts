import type { Band, BandDriver } from "@bitwright/engine";
import { CUT_RAMP, INK, PAPER, STEEL } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";

/** Height of a spread's bar [mm]. */
export const BAR_HEIGHT = 6;
const STRIP_HEIGHT = 2.6;
const STRIP_FILLS = [STEEL.face, STEEL.line, STEEL.edge, STEEL.carbide, STEEL.tint] as const;

/** The spread of a figure as a bar: from P10 to P50 and on to P90, with a circle at the figure worked with. */
export function spreadBar(
  { low, mid, high }: Band,
  worked: number,
  /** Top of the bar [mm]. */
  y: number,
  /** Page x of a figure [mm]. */
  x: (figure: number) => number,
): Svg[] {
  const box = (from: number, to: number, fill: string) =>
    element("rect", {
      x: x(from),
      y,
      width: Math.max(0.4, x(to) - x(from)),
      height: BAR_HEIGHT,
      fill,
      stroke: INK,
      "stroke-width": 0.2,
    });
  return [
    box(low, mid, CUT_RAMP[1]),
    box(mid, high, CUT_RAMP[2]),
    element("path", {
      class: "median",
      d: linePath([
        [x(mid), y - 0.8],
        [x(mid), y + BAR_HEIGHT + 0.8],
      ]),
      stroke: INK,
      "stroke-width": 0.9,
    }),
    element("circle", {
      class: "worked",
      cx: x(worked),
      cy: y + BAR_HEIGHT / 2,
      r: 1.4,
      fill: PAPER,
      stroke: STEEL.face,
      "stroke-width": 0.6,
    }),
  ];
}

/** What drives a spread as parts of one strip, the strongest first and darkest. */
export function driversStrip(
  drivers: readonly Pick<BandDriver, "share">[],
  left: number,
  right: number,
  y: number,
): Svg[] {
  let from = left;
  return drivers.flatMap(({ share }, k) => {
    const width = share * (right - left);
    const at = from;
    from += width;
    if (width < 0.3) return [];
    return [
      element("rect", {
        class: "driver",
        x: at,
        y,
        width,
        height: STRIP_HEIGHT,
        fill: STRIP_FILLS[Math.min(k, STRIP_FILLS.length - 1)],
        stroke: PAPER,
        "stroke-width": 0.2,
      }),
    ];
  });
}
