import type { RunningMapPoint } from "@bitwright/engine";
import { type BedMap, formatQuantity, type UnitSystem } from "@bitwright/traveler";
import {
  HALO,
  INK,
  type Label,
  PAPER,
  placeLabels,
  STEEL,
  type StandingBox,
  TYPE,
  textAt,
  textWidth,
} from "../sheet/index.ts";
import { element, linePath, type PagePoint, type Svg } from "../svg/index.ts";
import { freePlace } from "./free-place.ts";
import { MAP_UNITS, type MapFrame } from "./map-frame.ts";

/** The marked points of a map, and the room they and their words take. */
export interface DrawnPoints {
  /** What goes under the lines. */
  readonly under: readonly Svg[];
  readonly drawing: readonly Svg[];
  readonly boxes: readonly StandingBox[];
}

const LABEL_HEIGHT = 3.6;
const ALL_ROUND = 500;

/** The rule of thumb as a box, the point of the card and the best point, each with its words. */
export function pointsDrawn(bed: BedMap, frame: MapFrame, units: UnitSystem): DrawnPoints {
  const box = bed.rulePoint ? ruleBoxDrawn(bed, frame) : { under: [], drawing: [], boxes: [] };
  const { best } = bed.map;
  const at = ({ rotarySpeed, weight }: RunningMapPoint) => frame.toPage({ speed: rotarySpeed, weight });
  const run = at(bed.run);
  const marks: StandingBox[] = [run, ...(best ? [at(best)] : [])].map((place) => ({ at: place, width: 4, height: 4 }));
  const label = (text: string, anchor: PagePoint, toward: number): Label => ({
    text,
    anchor,
    toward,
    reach: 2 + textWidth(text, TYPE.note) / 2,
    width: textWidth(text, TYPE.note),
    height: LABEL_HEIGHT,
  });
  const labels = [
    ...(best ? [label(`best ${pointWords(best, units)}`, at(best), UPWARD)] : []),
    label(`card ${pointWords(bed.run, units)}`, run, Math.PI + UPWARD),
  ].map((one) => ({ ...one, reach: 1 }));
  const placed = placeLabels(labels, { points: [], boxes: [...box.boxes, ...around(frame), ...marks] });
  return {
    under: box.under,
    drawing: [
      ...box.drawing,
      ...placed.flatMap(({ text, at: middle, anchor, leader }) => [
        ...(leader
          ? [element("path", { d: linePath([anchor, nearEdge(middle, anchor)]), stroke: INK, "stroke-width": 0.2 })]
          : []),
        textAt([middle[0], middle[1] + TYPE.note * 0.36], text, TYPE.note, {
          "text-anchor": "middle",
          "font-weight": "bold",
          ...HALO,
        }),
      ]),
      element("circle", {
        class: "card-point",
        cx: run[0],
        cy: run[1],
        r: 1.5,
        fill: PAPER,
        stroke: INK,
        "stroke-width": 0.6,
      }),
      ...(best ? [bestMark(at(best))] : []),
    ],
    boxes: [
      ...box.boxes,
      ...marks,
      ...placed.map(({ text, at: middle }) => ({
        at: middle,
        width: textWidth(text, TYPE.note),
        height: LABEL_HEIGHT,
      })),
    ],
  };
}

const UPWARD = -Math.PI / 2;

function pointWords({ weight, rotarySpeed }: RunningMapPoint, units: UnitSystem): string {
  const force = formatQuantity("force", weight, units, { figures: 3, unit: MAP_UNITS[units].force });
  return `${force}, ${formatQuantity("rotary speed", rotarySpeed, units, { figures: 3 })}`;
}

function bestMark([x, y]: PagePoint): Svg {
  const r = 2;
  return element("path", {
    class: "best-point",
    d: linePath(
      [
        [x, y - r],
        [x + r, y],
        [x, y + r],
        [x - r, y],
      ],
      true,
    ),
    fill: STEEL.face,
    stroke: PAPER,
    "stroke-width": 0.35,
  });
}

/** A leader ends short of the words. */
function nearEdge(middle: PagePoint, anchor: PagePoint): PagePoint {
  return [middle[0] + 0.15 * (anchor[0] - middle[0]), middle[1] + (anchor[1] > middle[1] ? 1.8 : -1.8)];
}

/** What lies off the frame counts as taken, so that no word runs out of it. */
function around({ left, right, top, bottom }: MapFrame): StandingBox[] {
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  const half = ALL_ROUND / 2;
  const tall = { width: ALL_ROUND, height: ALL_ROUND };
  return [
    { at: [left - half, y], ...tall },
    { at: [right + half, y], ...tall },
    { at: [x, top - half], ...tall },
    { at: [x, bottom + half], ...tall },
  ];
}

function ruleBoxDrawn({ rule }: BedMap, frame: MapFrame): DrawnPoints {
  const { toPage } = frame;
  const [left, top] = toPage({ speed: rule.rotarySpeed.low, weight: rule.weight.high });
  const [right, bottom] = toPage({ speed: rule.rotarySpeed.high, weight: rule.weight.low });
  const [x, y] = toPage({ speed: rule.rotarySpeed.mid, weight: rule.weight.mid });
  const words = ["rule of", "thumb"];
  const size = { width: Math.max(...words.map((word) => textWidth(word, TYPE.note))), height: 2 * LABEL_HEIGHT };
  const middle = (left + right) / 2;
  const mark: StandingBox = { at: [x, y], width: 4, height: 4 };
  const places: PagePoint[] = [
    [middle, top + 4.6],
    [middle, bottom - 4.6],
    [right + size.width / 2 + 1, y],
    [left - size.width / 2 - 1, y],
  ];
  const at = freePlace(places, size, [mark], frame) ?? places[0];
  const edges: StandingBox[] = [
    { at: [middle, top], width: right - left, height: 0.6 },
    { at: [middle, bottom], width: right - left, height: 0.6 },
    { at: [left, y], width: 0.6, height: bottom - top },
    { at: [right, y], width: 0.6, height: bottom - top },
  ];
  const shape = { x: left, y: top, width: right - left, height: bottom - top };
  return {
    under: [element("rect", { ...shape, fill: PAPER, "fill-opacity": 0.6 })],
    drawing: [
      element("rect", {
        class: "rule-of-thumb",
        ...shape,
        fill: "none",
        stroke: INK,
        "stroke-width": 0.5,
        "stroke-dasharray": "1.6 0.9",
      }),
      element("path", {
        d: `${linePath([
          [x - 1.4, y],
          [x + 1.4, y],
        ])}${linePath([
          [x, y - 1.4],
          [x, y + 1.4],
        ])}`,
        stroke: INK,
        "stroke-width": 0.4,
      }),
      ...words.map((word, k) =>
        textAt([at[0], at[1] + (k === 0 ? -0.5 : 3.1)], word, TYPE.note, { "text-anchor": "middle", ...HALO }),
      ),
    ],
    boxes: [{ at, ...size }, mark, ...edges],
  };
}
