import { type BedFit, type GroundBed, VERDICT_WORDS } from "@bitwright/engine";
import type { UnitSystem, Workup } from "@bitwright/traveler";
import {
  CUT_RAMP,
  DRAWING_ROOM,
  drawingSheet,
  INK,
  linesWithin,
  type SheetTitle,
  SOFT_INK,
  STEEL,
  spread,
  TYPE,
  textAt,
} from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";
import { MARK_WORDS, markPatterns, type RockMark, rockMark } from "./rock-marks.ts";
import { acrossOf, type DepthScale, depthTicks, pageOf, type StrengthScale, strengthTicks } from "./strip-scale.ts";

/** What the strip of the ground is made from. */
export interface StripDrawingInput {
  readonly beds: readonly GroundBed[];
  /** The fit of each bed, in the same order. */
  readonly fits: readonly BedFit[];
  /** The hole that the bit drills. */
  readonly bitHole: Workup["inquiry"]["inquiry"]["bitHole"];
  /** Least depth of the casing shoe [m]; absent where nothing has to be cased off. */
  readonly shoe?: number;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  /** Start of every id in the drawing; `strip` where not given. */
  readonly id?: string;
}

const ROCK_LEFT = DRAWING_ROOM.left + 12;
const ROCK_RIGHT = ROCK_LEFT + 24;
const HOLE_AT = ROCK_RIGHT + 3.5;
const STRENGTH_LEFT = HOLE_AT + 9;
const STRENGTH_RIGHT = STRENGTH_LEFT + 62;
const WORDS_LEFT = STRENGTH_RIGHT + 7;
/** Least distance of one bed's words from the next [mm]. */
const LINE = 7.4;
const LEGEND = 9;

/** The column of the ground by depth: rock, band of strength, verdict; with the bit's hole and the casing shoe. */
export function stripDrawing({ beds, fits, bitHole, shoe, title, units, id = "strip" }: StripDrawingInput): string {
  const scale: DepthScale = {
    top: DRAWING_ROOM.top + 12,
    bottom: DRAWING_ROOM.bottomOfChart - LEGEND - 3,
    deepest: Math.max(bitHole.to, ...beds.map(({ bed }) => bed.bottom)),
  };
  const strengths = strengthScale(beds);
  const wanted = beds.map(({ bed }) => (pageOf(scale, bed.top) + pageOf(scale, bed.bottom)) / 2);
  const gap = Math.min(LINE, (scale.bottom - scale.top) / Math.max(1, beds.length));
  const words = within(spread(wanted, gap), scale.top + 3, scale.bottom - 3);
  const said = fits.map(({ bed, verdict }) => `${bed.name}: ${VERDICT_WORDS[verdict]}`).join("; ");
  return drawingSheet({
    id,
    heading: "The ground by depth",
    subheading: [
      "Bars: unconfined strength from low to high, the stroke its best single value.",
      "Upright line: the hole that this bit drills. Pattern: kind of rock.",
    ],
    description: `Column of ${beds.length} beds with strength and fit for a PDC bit. ${said}.`,
    title,
    view: "ground by depth",
    units: units === "field" ? "ft, psi" : "m, MPa",
    hole: title.hole ?? "",
    definitions: markPatterns(id),
    drawing: [
      strengthTicks(strengths, scale, units),
      depthTicks(scale, ROCK_LEFT, units),
      ...beds.map((bed, at) => bedOnStrip({ bed, fit: fits[at], scale, strengths, y: words[at], id })),
      holeLine(scale, bitHole),
      ...(shoe === undefined ? [] : [shoeMark(scale, shoe)]),
      legend(id, [...new Set(beds.map(({ rock }) => rockMark(rock)))], scale.bottom + 5),
    ],
  });
}

/** Strength from a power of ten under the weakest to one over the strongest. */
function strengthScale(beds: readonly GroundBed[]): StrengthScale {
  const low = Math.min(...beds.map(({ ucs }) => Math.max(ucs.low, 1e3)));
  const high = Math.max(...beds.map(({ ucs }) => ucs.high), low * 10);
  return {
    left: STRENGTH_LEFT,
    right: STRENGTH_RIGHT,
    low: 10 ** Math.floor(Math.log10(low)),
    high: 10 ** Math.ceil(Math.log10(high)),
  };
}

/** Places moved as one so that the first and the last stay on the strip. */
function within(places: readonly number[], top: number, bottom: number): number[] {
  const over = Math.max(0, (places.at(-1) ?? top) - bottom);
  const under = Math.max(0, top - ((places[0] ?? top) - over));
  return places.map((place) => place - over + under);
}

interface BedOnStrip {
  readonly bed: GroundBed;
  readonly fit: BedFit | undefined;
  readonly scale: DepthScale;
  readonly strengths: StrengthScale;
  /** Where the words stand [mm]. */
  readonly y: number;
  readonly id: string;
}

function bedOnStrip({ bed: { bed, rock, ucs }, fit, scale, strengths, y, id }: BedOnStrip): Svg {
  const [top, bottom] = [pageOf(scale, bed.top), pageOf(scale, bed.bottom)];
  const middle = (top + bottom) / 2;
  const height = Math.min(3.2, Math.max(0.8, bottom - top - 0.6));
  const [low, mid, high] = [ucs.low, ucs.mid, ucs.high].map((strength) => acrossOf(strengths, strength));
  const room = DRAWING_ROOM.right - WORDS_LEFT - 6;
  return element(
    "g",
    { class: "bed" },
    element("rect", {
      x: ROCK_LEFT,
      y: top,
      width: ROCK_RIGHT - ROCK_LEFT,
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
        [STRENGTH_RIGHT + 1, middle],
        [WORDS_LEFT - 1, y],
      ]),
      stroke: SOFT_INK,
      "stroke-width": 0.15,
    }),
    ...(fit ? [verdictMark(fit.verdict, WORDS_LEFT + 1.6, y)] : []),
    ...linesWithin(bed.name, TYPE.caption, room, 1).map((line) =>
      textAt([WORDS_LEFT + 5, y - 0.4], line, TYPE.caption),
    ),
    textAt(
      [WORDS_LEFT + 5, y + 2.6],
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

function holeLine(scale: DepthScale, { from, to }: StripDrawingInput["bitHole"]): Svg {
  const [top, bottom] = [pageOf(scale, from), pageOf(scale, to)];
  const d = [
    [HOLE_AT - 1, top],
    [HOLE_AT, top],
    [HOLE_AT, bottom],
    [HOLE_AT - 1, bottom],
  ] as const;
  return element("path", { class: "bit-hole", d: linePath(d), fill: "none", stroke: STEEL.face, "stroke-width": 0.7 });
}

function shoeMark(scale: DepthScale, shoe: number): Svg {
  const y = pageOf(scale, shoe);
  return element(
    "g",
    { class: "shoe" },
    element("path", {
      d: linePath([
        [ROCK_LEFT, y],
        [HOLE_AT + 3, y],
      ]),
      stroke: INK,
      "stroke-width": 0.4,
      "stroke-dasharray": "2 1",
    }),
    textAt([HOLE_AT + 1.5, y - 1], "shoe", TYPE.caption),
  );
}

function legend(id: string, marks: readonly RockMark[], y: number): Svg {
  const width = (DRAWING_ROOM.right - ROCK_LEFT) / 4;
  return element(
    "g",
    { class: "legend" },
    ...marks.flatMap((mark, at) => {
      const x = ROCK_LEFT + (at % 4) * width;
      const row = y + Math.floor(at / 4) * 4.4;
      const box = { x, y: row - 2.4, width: 6, height: 3, stroke: INK, "stroke-width": 0.15 };
      return [
        element("rect", { ...box, fill: `url(#${id}-${mark})` }),
        textAt([x + 7, row], MARK_WORDS[mark], TYPE.caption),
      ];
    }),
  );
}
