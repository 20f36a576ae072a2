import { type BandsStudy, type BedBands, inUnit, type UnitSystem, unitFor } from "@bitwright/traveler";
import { evenAxis } from "../chart/index.ts";
import { DRAWING_ROOM, drawingSheet, INK, type SheetTitle, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";
import { bandsRow, ROW_HEIGHT } from "./bands-row.ts";

/** What the sheets of a study are made from. */
export interface BandsDrawingInput {
  readonly study: BandsStudy;
  /** The sheet number is filled in here. */
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  /** The hole in words, with both units. */
  readonly hole?: string;
}

const BEDS_ON_A_SHEET = 5;
const PLOT = { left: DRAWING_ROOM.left, right: DRAWING_ROOM.right - 4, top: DRAWING_ROOM.top + 8 } as const;
/** Rows spread over the sheet up to this height [mm]. */
const TALLEST_ROW = 42;
const GRID = "#d5d9dd";

/** P10 to P90 of the rate of every bed with what drives it, as one or more sheets of SVG. */
export function bandsDrawings({ study, title, units, hole }: BandsDrawingInput): string[] {
  const pages = Array.from({ length: Math.ceil(study.beds.length / BEDS_ON_A_SHEET) }, (_, k) =>
    study.beds.slice(k * BEDS_ON_A_SHEET, (k + 1) * BEDS_ON_A_SHEET),
  );
  return pages.map((beds, k) =>
    drawingSheet({
      id: `bands-${k + 1}`,
      heading: "What rate to expect",
      subheading: subheading(study),
      description: `Spread of the rate of drilling over what is not known of the ground, ${beds.map(({ name }) => name).join("; ")}.`,
      title: { ...title, sheet: `${k + 1} of ${pages.length}` },
      view: "P10, P50, P90 of the rate",
      units: `${unitFor("rate", units)} and as written`,
      hole: hole ?? title.hole ?? "",
      drawing: rows(beds, units, topRate(study.beds)),
    }),
  );
}

function subheading({ beds, seed, asked, notReached }: BandsStudy): string[] {
  const fewest = Math.min(...beds.map(({ bands }) => bands.samples));
  const early = fewest < asked || notReached.length > 0;
  const left = notReached.length > 0 ? ` Not reached: ${notReached.join("; ")}.` : "";
  return [
    "Bar: eight of ten such beds lie in it, one below and one above. Line in it: as many drill slower as faster.",
    "Circle: the figure worked with. Blue strip: what drives the spread, by rank. An estimate, never a permission.",
    early
      ? `Stopped early: ${fewest} of ${asked} samples in the last bed, seed ${seed}.${left}`
      : `At the weight and speed of the card, eased to the first limit. ${asked} samples a bed, seed ${seed}.`,
  ];
}

/** The largest rate to be shown, in SI. */
function topRate(beds: readonly BedBands[]): number {
  return Math.max(...beds.flatMap(({ bands, worked }) => [bands.figures.rate.band?.high ?? 0, worked.rate]));
}

function rows(beds: readonly BedBands[], units: UnitSystem, top: number): Svg[] {
  const unit = unitFor("rate", units);
  const perUnit = 1 / inUnit("rate", 1, unit);
  const { end, ticks: places } = evenAxis((1.04 * top) / perUnit, 10);
  const x = (rate: number) => PLOT.left + (rate / perUnit / end) * (PLOT.right - PLOT.left);
  const room = (DRAWING_ROOM.bottomOfChart - 11 - PLOT.top) / beds.length;
  const height = Math.max(ROW_HEIGHT, Math.min(TALLEST_ROW, room));
  const bottom = PLOT.top + beds.length * height;
  const upright = (at: number, from: number, to: number) =>
    linePath([
      [x(at * perUnit), from],
      [x(at * perUnit), to],
    ]);
  const grid = beds.map((_, k) => {
    const from = PLOT.top + k * height + 6;
    return places.map((place) => upright(place, from, from + 10)).join("");
  });
  return [
    element("path", { class: "grid", d: grid.join(""), stroke: GRID, "stroke-width": 0.2 }),
    ...beds.map((bed, k) =>
      bandsRow(bed, { left: PLOT.left, right: PLOT.right, top: PLOT.top + k * height, x }, units),
    ),
    element("path", {
      d: `${linePath([
        [PLOT.left, bottom],
        [PLOT.right, bottom],
      ])}${places.map((place) => upright(place, bottom, bottom + 1.4)).join("")}`,
      fill: "none",
      stroke: INK,
      "stroke-width": 0.3,
    }),
    ...places.map((place) =>
      textAt([x(place * perUnit), bottom + 4.8], String(Number(place.toPrecision(6))), TYPE.note, {
        "text-anchor": "middle",
      }),
    ),
    textAt([(PLOT.left + PLOT.right) / 2, bottom + 9.4], `rate of drilling, ${unit}`, TYPE.value, {
      "text-anchor": "middle",
    }),
  ];
}
