import { type RunningMap, type RunningMapPoint, rateLine, rateOfPenetration } from "@bitwright/engine";
import { inUnit, type UnitSystem } from "@bitwright/traveler";
import { CUT_RAMP, INK, PAPER, SOFT_INK } from "../sheet/index.ts";
import { element, linePath, type PagePoint, type Svg, thinned } from "../svg/index.ts";
import { MAP_UNITS, type MapFrame } from "./map-frame.ts";
import { type InsideRegion, insideRegions } from "./map-region.ts";
import { rateSteps } from "./rate-steps.ts";

const HATCH = "#b4bac1";
const FINE = 240;

/** One line of equal rate, ready to be labelled. */
export interface DrawnRate {
  /** Rate in the unit of the map [ft/h or m/h]. */
  readonly rate: number;
  readonly inside: boolean;
  readonly points: readonly PagePoint[];
}

/** Hatches and clips that the layers refer to. */
export function mapDefinitions(id: string, map: RunningMap, frame: MapFrame): Svg[] {
  const hatch = (name: string, turn: number, gap: number) =>
    element(
      "pattern",
      {
        id: `${id}-${name}`,
        width: gap,
        height: gap,
        patternUnits: "userSpaceOnUse",
        patternTransform: `rotate(${turn})`,
      },
      element("rect", { width: 0.22, height: gap, fill: HATCH }),
    );
  const { left, top, right, bottom } = frame;
  return [
    hatch("beyond", 45, 2.2),
    hatch("not-turned", 0, 1.5),
    hatch("avoid", -45, 1.1),
    element(
      "clipPath",
      { id: `${id}-frame` },
      element("rect", { x: left, y: top, width: right - left, height: bottom - top }),
    ),
    element("clipPath", { id: `${id}-inside` }, element("path", { d: insidePath(map, frame) })),
  ];
}

function regionOutline({ from, to, edge }: InsideRegion, map: RunningMap, { toPage }: MapFrame): PagePoint[] {
  const upper = edge.flatMap(({ points }) => points);
  const held = upper.length > 0 ? upper : [from, to].map((speed) => ({ speed, weight: map.mostWeight }));
  return [
    toPage({ speed: from, weight: 0 }),
    ...held.map(({ speed, weight }) => toPage({ speed, weight: Math.min(weight, map.mostWeight) })),
    toPage({ speed: to, weight: 0 }),
  ];
}

function insidePath(map: RunningMap, frame: MapFrame): string {
  return insideRegions(map)
    .map((region) => linePath(thinned(regionOutline(region, map, frame), 0.01), true))
    .join("");
}

/** The lines of equal rate over the whole map, those that can be reached and some beyond. */
export function ratesDrawn(map: RunningMap, frame: MapFrame, units: UnitSystem): DrawnRate[] {
  const unit = MAP_UNITS[units].rate;
  const inUnits = (si: number) => inUnit("rate", si, unit);
  const last = map.rotarySpeeds[map.rotarySpeeds.length - 1];
  const topRung = map.ladder[map.ladder.length - 1];
  const corner = rateOfPenetration({ advance: topRung.advance, rotarySpeed: last });
  const best = map.best && map.best.rate > 0 ? map.best.rate : corner / 2;
  const { inside, beyond } = rateSteps(inUnits(best), inUnits(corner));
  const draw = (rate: number, isInside: boolean): DrawnRate => {
    const points = rateLine({ ladder: map.ladder, rate: rate / inUnits(1), rotarySpeeds: fineSpeeds(map) });
    return {
      rate,
      inside: isInside,
      points: thinned(
        reachingTop(points, map).map((point) => frame.toPage(point)),
        0.02,
      ),
    };
  };
  return [...inside.map((rate) => draw(rate, true)), ...beyond.map((rate) => draw(rate, false))].filter(
    ({ points }) => points.length > 1,
  );
}

function fineSpeeds({ rotarySpeeds }: RunningMap): number[] {
  const [from, to] = [rotarySpeeds[0], rotarySpeeds[rotarySpeeds.length - 1]];
  return Array.from({ length: FINE + 1 }, (_, k) => from + (k / FINE) * (to - from));
}

/** A line that begins under the top of the map because the next speed lies over it is drawn on to the top. */
function reachingTop(points: readonly RunningMapPoint[], { rotarySpeeds, mostWeight }: RunningMap) {
  const ends = points.map(({ rotarySpeed, weight }) => ({ speed: rotarySpeed, weight }));
  const [first, second] = ends;
  if (!(first && second) || first.speed <= rotarySpeeds[0] || !(first.weight > second.weight)) return ends;
  const slope = (second.speed - first.speed) / (second.weight - first.weight);
  return [{ speed: first.speed + slope * (mostWeight - first.weight), weight: mostWeight }, ...ends];
}

/** Everything under the lines and words: the region inside all limits coloured by rate, the rest hatched. */
export function mapLayers(id: string, map: RunningMap, frame: MapFrame, rates: readonly DrawnRate[]): Svg[] {
  const { left, top, right, bottom, toPage } = frame;
  const whole = linePath(
    [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ],
    true,
  );
  const [slowest, fastest] = [map.rotary.slowest, map.rotary.fastest].map((speed) =>
    Math.min(right, Math.max(left, toPage({ speed, weight: 0 })[0])),
  );
  const strip = (from: number, to: number, name: string) =>
    to - from > 0.05
      ? [element("rect", { x: from, y: top, width: to - from, height: bottom - top, fill: `url(#${id}-${name})` })]
      : [];
  const turned = linePath(
    [
      [slowest, top],
      [fastest, top],
      [fastest, bottom],
      [slowest, bottom],
    ],
    true,
  );
  const steps = rates.filter(({ inside }) => inside);
  const fills = steps.map(({ points }, k) =>
    element("path", {
      d: linePath([...points, [right, points[points.length - 1][1]], [right, top], [points[0][0], top]], true),
      fill: rampFor(k + 1, steps.length),
    }),
  );
  return [
    element("path", {
      class: "beyond-limits",
      d: `${turned}${insidePath(map, frame)}`,
      fill: `url(#${id}-beyond)`,
      "fill-rule": "evenodd",
    }),
    element(
      "g",
      { class: "inside-limits", "clip-path": `url(#${id}-inside)` },
      element("path", { d: whole, fill: rampFor(0, steps.length) }),
      ...fills,
    ),
    element(
      "g",
      { class: "outside-rotary" },
      ...[...strip(left, slowest, "not-turned"), ...strip(fastest, right, "not-turned")],
      ...[slowest, fastest].flatMap((x) =>
        x > left && x < right
          ? [
              element("path", {
                d: linePath([
                  [x, top],
                  [x, bottom],
                ]),
                stroke: SOFT_INK,
                "stroke-width": 0.35,
                "stroke-dasharray": "3 1",
              }),
            ]
          : [],
      ),
    ),
    element(
      "g",
      { class: "rates", "clip-path": `url(#${id}-frame)`, fill: "none" },
      ...rates.map(({ points, inside }) =>
        element("path", {
          d: linePath(points),
          stroke: inside ? RATE_INK : HATCH_INK,
          "stroke-width": inside ? 0.3 : 0.25,
          "stroke-dasharray": inside ? undefined : "1.2 1",
        }),
      ),
    ),
    ...map.avoid.flatMap((window) => avoided(id, window, frame)),
  ];
}

/** Ink of the lines of equal rate: the darkest orange, and a grey where they cannot be reached. */
export const RATE_INK = CUT_RAMP[4];
const HATCH_INK = "#7d868f";

/** The tint of a step: the four lighter ones of the ramp, spread over the steps there are. */
function rampFor(step: number, steps: number): string {
  const lighter = CUT_RAMP.length - 1;
  return CUT_RAMP[Math.min(lighter - 1, Math.floor((step / (steps + 1)) * lighter))];
}

function avoided(
  id: string,
  { from, to }: RunningMap["avoid"][number],
  { left, right, top, bottom, toPage }: MapFrame,
): Svg[] {
  const [a, b] = [from, to].map((speed) => Math.min(right, Math.max(left, toPage({ speed, weight: 0 })[0])));
  if (!(b > a)) return [];
  return [
    element(
      "g",
      { class: "avoid" },
      element("rect", { x: a, y: top, width: b - a, height: bottom - top, fill: PAPER, "fill-opacity": 0.6 }),
      element("rect", { x: a, y: top, width: b - a, height: bottom - top, fill: `url(#${id}-avoid)` }),
      element("path", {
        d: `${linePath([
          [a, top],
          [a, bottom],
        ])}${linePath([
          [b, top],
          [b, bottom],
        ])}`,
        stroke: INK,
        "stroke-width": 0.35,
      }),
    ),
  ];
}
