import { type BedFit, type GroundBed, VERDICT_WORDS } from "@bitwright/engine";
import { CUT_RAMP, DRAWING_ROOM, INK, linesWithin, SOFT_INK, STEEL, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";
import { rockMark } from "./rock-marks.ts";
import { STRIP } from "./strip-columns.ts";
import { acrossOf, type DepthScale, pageOf, type StrengthScale } from "./strip-scale.ts";

/** One bed with its places on the strip. */
export interface BedOnStrip {
  readonly bed: GroundBed;
  readonly fit: BedFit | undefined;
  readonly scale: DepthScale;
  readonly strengths: StrengthScale;
  /** Where the words stand [mm]. */
  readonly y: number;
  readonly id: string;
}

/** One bed: its rock, its band of strength, its name and verdict. */
export function bedOnStrip({ bed: { bed, rock, ucs }, fit, scale, strengths, y, id }: BedOnStrip): Svg {
  const [top, bottom] = [pageOf(scale, bed.top), pageOf(scale, bed.bottom)];
  const middle = (top + bottom) / 2;
  const height = Math.min(3.2, Math.max(0.8, bottom - top - 0.6));
  const [low, mid, high] = [ucs.low, ucs.mid, ucs.high].map((strength) => acrossOf(strengths, strength));
  const room = DRAWING_ROOM.right - STRIP.wordsLeft - 6;
  return element(
    "g",
    { class: "bed" },
    element("rect", {
      x: STRIP.rockLeft,
      y: top,
      width: STRIP.rockRight - STRIP.rockLeft,
      height: bottom - top,
      fill: `url(#${id}-${rockMark(rock)})`,
      stroke: INK,
      "stroke-width": 0.25,
    }),
    element("rect", {
      class: "strength",
      x: low,
      y: middle - height / 2,
      width: Math.max(high - low, 0.4),
      height,
      fill: CUT_RAMP[1],
      stroke: CUT_RAMP[3],
      "stroke-width": 0.2,
    }),
    element("path", {
      d: linePath([
        [mid, middle - height / 2 - 0.6],
        [mid, middle + height / 2 + 0.6],
      ]),
      stroke: CUT_RAMP[4],
      "stroke-width": 0.7,
    }),
    element("path", {
      d: linePath([
        [STRIP.strengthRight + 1, middle],
        [STRIP.wordsLeft - 1, y],
      ]),
      stroke: SOFT_INK,
      "stroke-width": 0.15,
    }),
    ...(fit ? [verdictMark(fit.verdict, STRIP.wordsLeft + 1.6, y)] : []),
    ...linesWithin(bed.name, TYPE.caption, room, 1).map((line) =>
      textAt([STRIP.wordsLeft + 5, y - 0.4], line, TYPE.caption),
    ),
    textAt(
      [STRIP.wordsLeft + 5, y + 2.6],
      linesWithin(`${rock.name}, ${fit ? VERDICT_WORDS[fit.verdict] : "not judged"}`, TYPE.caption, room, 1)[0] ?? "",
      TYPE.caption,
      { fill: SOFT_INK },
    ),
  );
}

/** Fit is a full disc, with care a triangle, unfit a crossed square: told by shape, and by the word beside it. */
function verdictMark(verdict: BedFit["verdict"], x: number, y: number): Svg {
  if (verdict === "fit") return element("circle", { cx: x, cy: y, r: 1.5, fill: STEEL.face });
  if (verdict === "fit-with-care") {
    const triangle = linePath(
      [
        [x, y - 1.7],
        [x + 1.8, y + 1.4],
        [x - 1.8, y + 1.4],
      ],
      true,
    );
    return element("path", { d: triangle, fill: CUT_RAMP[2], stroke: CUT_RAMP[4], "stroke-width": 0.3 });
  }
  const [l, r, t, b] = [x - 1.5, x + 1.5, y - 1.5, y + 1.5];
  const square = `${linePath(
    [
      [l, t],
      [r, t],
      [r, b],
      [l, b],
    ],
    true,
  )}${linePath([
    [l, t],
    [r, b],
  ])}${linePath([
    [r, t],
    [l, b],
  ])}`;
  return element("path", { d: square, fill: "none", stroke: CUT_RAMP[4], "stroke-width": 0.5 });
}
