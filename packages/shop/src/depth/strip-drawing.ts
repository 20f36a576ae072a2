import { type BedFit, type GroundBed, VERDICT_WORDS } from "@bitwright/engine";
import type { UnitSystem, Workup } from "@bitwright/traveler";
import { DRAWING_ROOM, drawingSheet, INK, type SheetTitle, STEEL, spread, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";
import { MARK_WORDS, markPatterns, type RockMark, rockMark } from "./rock-marks.ts";
import { bedOnStrip } from "./strip-bed.ts";
import { STRIP } from "./strip-columns.ts";
import { type DepthScale, depthTicks, pageOf, type StrengthScale, strengthTicks } from "./strip-scale.ts";

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

/** Least distance of one bed's words from the next [mm]. */
const LINE = 7.4;
/** Height of the legend [mm]. */
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
      depthTicks(scale, STRIP.rockLeft, units),
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
    left: STRIP.strengthLeft,
    right: STRIP.strengthRight,
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

function holeLine(scale: DepthScale, { from, to }: StripDrawingInput["bitHole"]): Svg {
  const [top, bottom] = [pageOf(scale, from), pageOf(scale, to)];
  const d = [
    [STRIP.hole - 1, top],
    [STRIP.hole, top],
    [STRIP.hole, bottom],
    [STRIP.hole - 1, bottom],
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
        [STRIP.rockLeft, y],
        [STRIP.hole + 3, y],
      ]),
      stroke: INK,
      "stroke-width": 0.4,
      "stroke-dasharray": "2 1",
    }),
    textAt([STRIP.hole + 1.5, y - 1], "shoe", TYPE.caption),
  );
}

function legend(id: string, marks: readonly RockMark[], y: number): Svg {
  const width = (DRAWING_ROOM.right - STRIP.rockLeft) / 4;
  return element(
    "g",
    { class: "legend" },
    ...marks.flatMap((mark, at) => {
      const x = STRIP.rockLeft + (at % 4) * width;
      const row = y + Math.floor(at / 4) * 4.4;
      const box = { x, y: row - 2.4, width: 6, height: 3, stroke: INK, "stroke-width": 0.15 };
      return [
        element("rect", { ...box, fill: `url(#${id}-${mark})` }),
        textAt([x + 7, row], MARK_WORDS[mark], TYPE.caption),
      ];
    }),
  );
}
