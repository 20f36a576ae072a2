import type { RunningMap } from "@bitwright/engine";
import { inUnit, type UnitSystem } from "@bitwright/traveler";
import { plain, tickStep } from "../chart/index.ts";
import { INK, SOFT_INK, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type PagePoint, pair, type Svg } from "../svg/index.ts";
import type { MapPoint } from "./map-region.ts";

/** The frame of a map on the page, speed to the right, weight up. */
export interface MapFrame {
  /** [mm] */
  readonly left: number;
  /** [mm] */
  readonly right: number;
  /** [mm] */
  readonly top: number;
  /** [mm] */
  readonly bottom: number;
  readonly toPage: (point: MapPoint) => PagePoint;
}

/** Units of the axes of a map. */
export const MAP_UNITS = {
  field: { force: "lbf", rate: "ft/h" },
  metric: { force: "kN", rate: "m/h" },
} as const satisfies Record<UnitSystem, { force: string; rate: string }>;

const MOST_TICKS = 10;

/** The frame that shows all of a map between the given edges of the page [mm]. */
export function mapFrame(map: RunningMap, edges: Omit<MapFrame, "toPage">): MapFrame {
  const { left, right, top, bottom } = edges;
  const from = map.rotarySpeeds[0];
  const to = map.rotarySpeeds[map.rotarySpeeds.length - 1];
  return {
    ...edges,
    toPage: ({ speed, weight }) => [
      left + ((speed - from) / (to - from)) * (right - left),
      bottom - (weight / map.mostWeight) * (bottom - top),
    ],
  };
}

/** Axes with ticks, figures and names. */
export function mapAxes(map: RunningMap, { left, right, top, bottom, toPage }: MapFrame, units: UnitSystem): Svg {
  const { force } = MAP_UNITS[units];
  const rpm = (speed: number) => inUnit("rotary speed", speed, "rpm");
  const perRpm = 1 / rpm(1);
  const perForce = 1 / inUnit("force", 1, force);
  const [first, last] = [map.rotarySpeeds[0], map.rotarySpeeds[map.rotarySpeeds.length - 1]].map(rpm);
  const speedStep = tickStep(last - first, 14);
  const weightStep = tickStep(map.mostWeight / perForce, MOST_TICKS);
  const speeds = multiples(first, last, speedStep);
  const weights = multiples(0, map.mostWeight / perForce, weightStep);
  const marks: string[] = [];
  const figures: Svg[] = [];
  for (const speed of speeds) {
    const [x] = toPage({ speed: speed * perRpm, weight: 0 });
    marks.push(
      linePath([
        [x, bottom],
        [x, bottom + 1.4],
      ]),
    );
    figures.push(textAt([x, bottom + 4.8], plain(speed), TYPE.note, { "text-anchor": "middle" }));
  }
  for (const weight of weights) {
    const [, y] = toPage({ speed: map.rotarySpeeds[0], weight: weight * perForce });
    marks.push(
      linePath([
        [left - 1.4, y],
        [left, y],
      ]),
    );
    figures.push(textAt([left - 2.2, y + 1.1], plain(weight), TYPE.note, { "text-anchor": "end" }));
  }
  const middle: PagePoint = [left - 14.5, (top + bottom) / 2];
  return element(
    "g",
    { class: "axes" },
    element("rect", {
      x: left,
      y: top,
      width: right - left,
      height: bottom - top,
      fill: "none",
      stroke: INK,
      "stroke-width": 0.35,
    }),
    element("path", { d: marks.join(""), stroke: INK, "stroke-width": 0.25 }),
    ...figures,
    textAt([(left + right) / 2, bottom + 9.6], "rotary speed, rpm", TYPE.value, { "text-anchor": "middle" }),
    textAt(middle, `weight on bit, ${force}, pipe weight included`, TYPE.value, {
      "text-anchor": "middle",
      transform: `rotate(-90 ${pair(middle)})`,
    }),
  );
}

/** The span of speeds that the rig turns, as a bracket over the frame. */
export function rotarySpan(map: RunningMap, { top, toPage }: MapFrame): Svg {
  const { slowest, fastest, fixed } = map.rotary;
  const drawn = (speed: number) =>
    Math.max(map.rotarySpeeds[0], Math.min(speed, map.rotarySpeeds[map.rotarySpeeds.length - 1]));
  const [from, to] = [drawn(slowest), drawn(fastest)].map((speed) => toPage({ speed, weight: 0 })[0]);
  const y = top - 2.2;
  const rpm = (speed: number) => plain(Math.round(inUnit("rotary speed", speed, "rpm")));
  const speeds = fixed
    ? `the rig's gears: ${fixed.map(rpm).join(", ")} rpm`
    : `the rig turns up to ${rpm(fastest)} rpm`;
  const stops = (fixed ?? []).map((speed) => toPage({ speed, weight: 0 })[0]);
  return element(
    "g",
    { class: "rotary-span" },
    element("path", {
      d: [
        linePath([
          [from, y + 1.4],
          [from, y],
          [to, y],
          [to, y + 1.4],
        ]),
        ...stops.map((x) =>
          linePath([
            [x, y],
            [x, y + 1.4],
          ]),
        ),
      ].join(""),
      fill: "none",
      stroke: SOFT_INK,
      "stroke-width": 0.3,
    }),
    textAt([(from + to) / 2, y - 1.2], speeds, TYPE.caption, { "text-anchor": "middle", fill: SOFT_INK }),
  );
}

function multiples(from: number, to: number, step: number): number[] {
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, k) => (first + k) * step);
}
