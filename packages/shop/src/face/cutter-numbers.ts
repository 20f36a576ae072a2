import { HALO, INK, type Label, type Obstacle, placeLabels, TYPE, textAt, textWidth } from "../sheet/index.ts";
import { element, linePath, type PagePoint, type Svg } from "../svg/index.ts";
import type { DrawnHole, PlacedName } from "./around-hole.ts";
import type { SeenCutter } from "./seen-cutter.ts";
import { visibleAnchor } from "./visible-anchor.ts";

/** The number of each cutter ahead of its face, or near it with a line to what shows of the cutter. */
export function numberMarks({
  seen,
  farToNear,
  numbers,
  hole,
  wingNames,
  ports,
  portRadius,
}: {
  readonly seen: readonly SeenCutter[];
  readonly farToNear: readonly number[];
  readonly numbers: readonly string[];
  readonly hole: DrawnHole;
  readonly wingNames: readonly PlacedName[];
  readonly ports: readonly PagePoint[];
  readonly portRadius: number;
}): Svg[] {
  const nearToFar = [...farToNear].reverse();
  const labels: Label[] = nearToFar.map((k, place) => ({
    text: numbers[k],
    anchor: visibleAnchor(
      seen[k],
      nearToFar.slice(0, place).map((near) => seen[near]),
      hole,
    ),
    toward: seen[k].travel,
    reach: seen[k].reach,
    width: textWidth(numbers[k], TYPE.number),
    height: TYPE.number * 0.75,
  }));
  const ring = (at: PagePoint, radius: number, count: number, weight: number): Obstacle[] =>
    Array.from({ length: count }, (_, k) => {
      const angle = (2 * Math.PI * k) / count;
      return { at: [at[0] + radius * Math.cos(angle), at[1] + radius * Math.sin(angle)], weight };
    });
  const points: Obstacle[] = [
    ...seen.flatMap(({ points }) => points.map((at) => ({ at, weight: 3 }))),
    ...ports.flatMap((at) => ring(at, portRadius, 24, 6)),
    ...[0, 1.5, 3, 4.5, 6].flatMap((out) => ring(hole.middle, hole.radius + out, 240, out === 0 ? 8 : 4)),
    { at: hole.middle, weight: 8 },
  ];
  return placeLabels(labels, { points, boxes: wingNames }).map(({ text, at, anchor, leader }) =>
    element(
      "g",
      { class: "cutter-number" },
      ...(leader ? [leaderLine(anchor, at)] : []),
      textAt([at[0], at[1] + TYPE.number * 0.36], text, TYPE.number, { "text-anchor": "middle", ...HALO }),
    ),
  );
}

function leaderLine(anchor: PagePoint, at: PagePoint): Svg {
  return element(
    "g",
    {},
    element("path", { d: linePath([anchor, at]), stroke: INK, "stroke-width": 0.18 }),
    element("circle", { cx: anchor[0], cy: anchor[1], r: 0.45, fill: INK }),
  );
}
