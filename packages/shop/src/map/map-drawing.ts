import { type BedMap, formatQuantity, type UnitSystem } from "@bitwright/traveler";
import { plain } from "../chart/index.ts";
import {
  DRAWING_ROOM,
  drawingSheet,
  HALO,
  type SheetTitle,
  type StandingBox,
  TYPE,
  textAt,
  textWidth,
} from "../sheet/index.ts";
import { type PagePoint, pair, type Svg } from "../svg/index.ts";
import { freePlace } from "./free-place.ts";
import { LIMIT_NAMES } from "./limit-words.ts";
import { MAP_UNITS, type MapFrame, mapAxes, mapFrame, rotarySpan } from "./map-frame.ts";
import { type DrawnRate, mapDefinitions, mapLayers, RATE_INK, ratesDrawn } from "./map-layers.ts";
import { limitsDrawn } from "./map-lines.ts";
import { mapNotes } from "./map-notes.ts";
import { pointsDrawn } from "./map-points.ts";

/** What the sheet of a map is made from. */
export interface MapDrawingInput {
  readonly bed: BedMap;
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  /** The hole in words, with both units. */
  readonly hole?: string;
  /** Start of every id in the drawing; `map` with the number of the bed where not given. */
  readonly id?: string;
}

const PLOT = {
  left: DRAWING_ROOM.left + 17,
  right: DRAWING_ROOM.right - 3,
  top: DRAWING_ROOM.top + 10,
  bottom: 150,
} as const;
const NOTES_TOP = PLOT.bottom + 19;

/**
 * Weight against speed of one bed as a sheet of SVG: rate inside the limits in colour, what lies past a limit hatched, each
 * limit with its words, the rule of thumb as a box, the point of the card and the best point.
 */
export function mapDrawing({ bed, title, units, hole, id = `map-${bed.number}` }: MapDrawingInput): string {
  const { map } = bed;
  const frame = mapFrame(map, PLOT);
  const rates = ratesDrawn(map, frame, units);
  const points = pointsDrawn(bed, frame, units);
  const windows = windowWords(bed, frame, points.boxes);
  const limits = limitsDrawn(id, bed, frame, units, [...points.boxes, ...windows.boxes]);
  const depth = (si: number) => formatQuantity("depth", si, units, { figures: 3 });
  const sub = subheading(bed, units);
  return drawingSheet({
    id,
    heading: `Weight and speed: ${bed.name}`,
    subheading: sub,
    description: `Weight on bit against rotary speed in ${bed.name}, ${depth(bed.top)} to ${depth(bed.bottom)}. ${sub.join(" ")}`,
    title,
    view: `${depth(bed.top)} to ${depth(bed.bottom)}, taken as ${bed.rock}`,
    units: `${MAP_UNITS[units].force}, rpm, ${MAP_UNITS[units].rate}`,
    hole: hole ?? title.hole ?? "",
    definitions: mapDefinitions(id, map, frame),
    drawing: [
      ...mapLayers(id, map, frame, rates),
      ...points.under,
      ...limits.lines,
      mapAxes(map, frame, units),
      rotarySpan(map, frame),
      ...rateWords(rates, frame, units, [...points.boxes, ...windows.boxes, ...limits.boxes]),
      ...limits.words,
      ...windows.words,
      ...points.drawing,
      mapNotes(bed, { left: DRAWING_ROOM.left - 2, right: DRAWING_ROOM.right - 2, top: NOTES_TOP }, units),
    ],
  });
}

function subheading({ map: { best } }: BedMap, units: UnitSystem): string[] {
  const reading = [
    "Colour: rate inside all limits; hatched: past a limit; thick: the limit that binds. Rock at its best single values.",
    "An estimate, never a permission: the driller's judgement and the gauges rule.",
  ];
  if (!best) return ["Every speed of the rig is to be kept out of.", ...reading];
  const force = formatQuantity("force", best.weight, units, { figures: 3, unit: MAP_UNITS[units].force });
  const speed = formatQuantity("rotary speed", best.rotarySpeed, units, { figures: 3 });
  const rate = formatQuantity("rate", best.rate, units, { figures: 3 });
  return [
    `Best inside all limits: ${force} at ${speed}, ${rate}; held by ${LIMIT_NAMES[best.binds]}. The law knows no whirl.`,
    ...reading,
  ];
}

/** A figure at each line of equal rate, where it touches nothing. */
function rateWords(
  rates: readonly DrawnRate[],
  frame: MapFrame,
  units: UnitSystem,
  standing: readonly StandingBox[],
): Svg[] {
  const taken = [...standing];
  return rates.flatMap(({ rate, inside, points }) => {
    const text = `${plain(rate)} ${MAP_UNITS[units].rate}`;
    const size = { width: textWidth(text, TYPE.caption) + 0.6, height: 3 };
    const spots = points.slice(1).flatMap((to, k) => between(points[k], to));
    const at = freePlace(inside ? [...spots].reverse() : spots, size, taken, frame);
    if (!at) return [];
    taken.push({ at, ...size });
    return [
      textAt([at[0], at[1] + 1], text, TYPE.caption, {
        "text-anchor": "middle",
        ...(inside ? { fill: RATE_INK } : { fill: "#5d666f" }),
        ...HALO,
      }),
    ];
  });
}

const SPOTS_BETWEEN = 4;

function between(from: PagePoint, to: PagePoint): PagePoint[] {
  return Array.from({ length: SPOTS_BETWEEN }, (_, k): PagePoint => {
    const share = (k + 0.5) / SPOTS_BETWEEN;
    return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
  });
}

/** Where across a window its words are tried, the middle first. */
const ACROSS_WINDOW = [0.5, 0.3, 0.7, 0.15, 0.85];

/** Why speeds are kept out of, upright in their window where nothing else stands. */
function windowWords(
  { map }: BedMap,
  frame: MapFrame,
  standing: readonly StandingBox[],
): { words: Svg[]; boxes: StandingBox[] } {
  const { top, bottom, left, right, toPage } = frame;
  const placed = map.avoid.flatMap(({ from, to, why }) => {
    const [a, b] = [from, to].map((speed) => Math.min(right, Math.max(left, toPage({ speed, weight: 0 })[0])));
    if (!(b > a)) return [];
    const text = `keep out: ${why}`;
    const size = { width: TYPE.caption + 0.8, height: textWidth(text, TYPE.caption) };
    const spots = ACROSS_WINDOW.flatMap((share) =>
      Array.from({ length: 40 }, (_, k): PagePoint => [a + share * (b - a), top + ((k + 0.5) / 40) * (bottom - top)]),
    );
    const at = freePlace(spots, size, standing, frame);
    return at ? [{ at, text, size }] : [];
  });
  return {
    words: placed.map(({ at, text }) =>
      textAt([at[0] + 1, at[1]], text, TYPE.caption, {
        "text-anchor": "middle",
        transform: `rotate(-90 ${pair([at[0] + 1, at[1]])})`,
        ...HALO,
      }),
    ),
    boxes: placed.map(({ at, size }) => ({ at, ...size })),
  };
}
