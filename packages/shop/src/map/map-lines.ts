import type { LimitLine, RunningMapPoint } from "@bitwright/engine";
import { type BedMap, formatQuantity, type UnitSystem } from "@bitwright/traveler";
import { HALO, INK, STEEL, type StandingBox, TYPE, textAt, textWidth } from "../sheet/index.ts";
import { element, linePath, type PagePoint, type Svg } from "../svg/index.ts";
import { freePlace } from "./free-place.ts";
import { LINE_WORDS } from "./limit-words.ts";
import type { MapFrame } from "./map-frame.ts";
import { insideRegions } from "./map-region.ts";

/** Lines with their words, and the room the words take. */
export interface DrawnLines {
  readonly lines: readonly Svg[];
  readonly words: readonly Svg[];
  readonly boxes: readonly StandingBox[];
}

/** A line on the page and what to write at it. */
interface WordedLine {
  readonly class: string;
  readonly words: string;
  readonly points: readonly PagePoint[];
  readonly dash?: string;
}

const HEIGHT = 3.2;

/** The lines of all limits, thick where one binds; words at each, none over another or over what stands already. */
export function limitsDrawn(
  id: string,
  bed: BedMap,
  frame: MapFrame,
  units: UnitSystem,
  standing: readonly StandingBox[],
): DrawnLines {
  const { map } = bed;
  const worded = wordedLines(bed, frame, units);
  const words: Svg[] = [];
  const boxes: StandingBox[] = [];
  for (const line of worded) {
    const size = { width: textWidth(line.words, TYPE.caption), height: HEIGHT };
    const at = freePlace(placesAlong(line.points, size, frame), size, [...standing, ...boxes], frame);
    if (!at) continue;
    boxes.push({ at, ...size });
    words.push(
      textAt([at[0], at[1] + 1], line.words, TYPE.caption, {
        "text-anchor": "middle",
        "font-weight": "bold",
        fill: STEEL.face,
        ...HALO,
      }),
    );
  }
  const binding = insideRegions(map).flatMap(({ edge }) =>
    edge.map(({ limit, points }) =>
      element("path", {
        class: `binds ${limit}`,
        d: linePath(points.map(frame.toPage)),
        stroke: STEEL.face,
        "stroke-width": 0.9,
      }),
    ),
  );
  const lines = element(
    "g",
    { class: "limits", "clip-path": `url(#${id}-frame)`, fill: "none", "stroke-linejoin": "round" },
    ...worded.map((line) =>
      element("path", {
        class: line.class,
        d: linePath(line.points),
        stroke: line.class === "heat-mark" ? INK : STEEL.line,
        "stroke-width": 0.4,
        "stroke-dasharray": line.dash,
      }),
    ),
    ...binding,
  );
  return { lines: [lines], words, boxes };
}

function wordedLines(bed: BedMap, frame: MapFrame, units: UnitSystem): WordedLine[] {
  const { map, limits } = bed;
  const onPage = (points: readonly RunningMapPoint[]) =>
    points.map(({ rotarySpeed, weight }) =>
      frame.toPage({ speed: rotarySpeed, weight: Math.min(weight, 4 * map.mostWeight) }),
    );
  const temperature = (kelvin: number) => formatQuantity("temperature", kelvin, units, { figures: 3 });
  const depth = (si: number) => formatQuantity("depth", si, units, { figures: 3 });
  const wordsOf = ({ limit }: LimitLine): string => {
    if (limit === "weight") return `${LINE_WORDS.weight}, at ${depth(bed.top)}`;
    if (limit === "contactTemperature" && limits.contactTemperature !== undefined) {
      return `edges at ${temperature(limits.contactTemperature)}: wear quickens`;
    }
    return LINE_WORDS[limit];
  };
  const speeds = [map.rotarySpeeds[0], map.rotarySpeeds[map.rotarySpeeds.length - 1]];
  return [
    ...map.lines.map(
      (line): WordedLine => ({
        class: `limit ${line.limit}`,
        words: wordsOf(line),
        points: onPage(line.points),
        dash: "2.4 1",
      }),
    ),
    ...(bed.weightAtBottom > (limits.weight ?? 0)
      ? [
          {
            class: "weight-at-bottom",
            words: `the same at ${depth(bed.bottom)}`,
            points: speeds.map((speed) =>
              frame.toPage({ speed, weight: Math.min(bed.weightAtBottom, 4 * map.mostWeight) }),
            ),
            dash: "0.6 1",
          },
        ]
      : []),
    ...map.heatLines.map(
      ({ contactTemperature, points }): WordedLine => ({
        class: "heat-mark",
        words: `edges at ${temperature(contactTemperature)}: diamond is lost`,
        points: onPage(points),
        dash: "0.5 0.9",
      }),
    ),
  ].filter(({ points }) => points.length > 0);
}

/** Places for words along a line: over a level one, at the outer side of a sloping one; then the other side. */
function placesAlong(
  points: readonly PagePoint[],
  { width }: { readonly width: number },
  frame: MapFrame,
): PagePoint[] {
  const seen = spaced(points, frame);
  const steep = seen.length > 1 && Math.abs(seen[seen.length - 1][1] - seen[0][1]) > 8;
  const outer = seen.map(([x, y]): PagePoint => (steep ? [x + width / 2 + 1.5, y - 1.2] : [x, y - 2.4]));
  const inner = seen.map(([x, y]): PagePoint => (steep ? [x - width / 2 - 1.5, y + 2] : [x, y + 2.5]));
  return [...outer, ...inner];
}

const SPOTS = 24;

/** Spots along the part of a line that shows, from its right end leftward. */
function spaced(points: readonly PagePoint[], { left, right, top, bottom }: MapFrame): PagePoint[] {
  const spots: PagePoint[] = [];
  for (let k = 0; k <= SPOTS; k++) {
    const x = right - 2 - (k / SPOTS) * (right - left - 4);
    const after = points.findIndex((point) => point[0] >= x);
    if (after < 1) continue;
    const [a, b] = [points[after - 1], points[after]];
    const y = a[1] + ((x - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
    if (y > top && y < bottom) spots.push([x, y]);
  }
  return spots;
}
