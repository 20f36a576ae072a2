import { CUT_RAMP, INK, ROCK, SOFT_INK, STEEL } from "../sheet/index.ts";
import { element, type Svg } from "../svg/index.ts";

/** How the line and the ground of one bed are drawn, told apart in grey as well as in colour. */
export interface BedLook {
  readonly stroke: string;
  readonly dash?: string;
  /** Fill of the bed's ground: a pattern of its own. */
  readonly fill: string;
}

const STROKES = [STEEL.face, CUT_RAMP[3], SOFT_INK, STEEL.line, CUT_RAMP[4], INK] as const;
const DASHES = [undefined, "2.4 0.8", "0.6 0.8", "2.4 0.8 0.6 0.8"] as const;

/** The look of a bed by its place in the column, from 0; looks come round again only after two dozen beds. */
export function bedLook(id: string, at: number): BedLook {
  const dash = DASHES[(at + Math.floor(at / (STROKES.length * DASHES.length))) % DASHES.length];
  return { stroke: STROKES[at % STROKES.length], fill: `url(#${id}-bed-${at % GROUNDS})`, ...(dash ? { dash } : {}) };
}

/** How many grounds there are to draw with. */
const GROUNDS = 6;
const MARK = "#c3bbae";

/** The grounds as patterns: plain, lines, bricks, dots, slants either way. They say which bed, not which rock. */
export function bedGrounds(id: string): Svg[] {
  const tile = (at: number, size: number, ...marks: Svg[]) =>
    element(
      "pattern",
      { id: `${id}-bed-${at}`, width: size, height: size, patternUnits: "userSpaceOnUse" },
      element("rect", { width: size, height: size, fill: ROCK }),
      ...marks,
    );
  const line = (d: string) => element("path", { d, stroke: MARK, "stroke-width": 0.2, fill: "none" });
  const dot = (x: number, y: number) => element("circle", { cx: x, cy: y, r: 0.22, fill: MARK });
  return [
    tile(0, 3, line("M0 1L3 1")),
    tile(1, 3, line("M0 0.75L3 0.75M0 2.25L3 2.25M0.75 0.75L0.75 2.25M2.25 2.25L2.25 3M2.25 0L2.25 0.75")),
    tile(2, 2.4, dot(0.6, 0.6), dot(1.8, 1.8)),
    tile(3, 2.4, line("M0 2.4L2.4 0")),
    tile(4, 2.4, line("M0 0L2.4 2.4")),
    tile(5, 3),
  ];
}
