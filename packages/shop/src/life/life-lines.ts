import type { LifeStep } from "@bitwright/engine";
import { type ChartPanel, onPanel, panelLine } from "../chart/index.ts";
import { HALO, INK, SOFT_INK, STEEL, spread, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";
import { bedLook } from "./bed-look.ts";
import { bedStretches, type LifeSeries, type SeriesPoint } from "./life-series.ts";

/** The ground behind a panel, each bed in its own pattern. */
export function groundBehind(
  id: string,
  panel: ChartPanel,
  steps: readonly LifeStep[],
  toUnit: (si: number) => number,
): Svg {
  return element(
    "g",
    { class: "ground" },
    ...bedStretches(steps).map(({ bed, from, to }) => {
      const [left] = onPanel(panel, toUnit(from), panel.y.from);
      const [right] = onPanel(panel, toUnit(to), panel.y.from);
      return element("rect", {
        x: left,
        y: panel.top,
        width: right - left,
        height: panel.bottom - panel.top,
        fill: bedLook(id, bed).fill,
      });
    }),
  );
}

/** Numbers of the beds over the uppermost panel, where they have room. */
export function bedNumbers(panel: ChartPanel, steps: readonly LifeStep[], toUnit: (si: number) => number): Svg[] {
  return bedStretches(steps).flatMap(({ bed, from, to }) => {
    const [left] = onPanel(panel, toUnit(from), panel.y.from);
    const [right] = onPanel(panel, toUnit(to), panel.y.from);
    if (right - left < 4) return [];
    return [
      textAt([(left + right) / 2, panel.top + 3.2], String(bed + 1), TYPE.caption, {
        "text-anchor": "middle",
        ...HALO,
      }),
    ];
  });
}

/** The lines of a panel; where each bed has its own, its number stands at the end. */
export function bedLines(id: string, panel: ChartPanel, series: readonly LifeSeries[]): Svg[] {
  const lines = series.map(({ bed, points }) =>
    panelLine(
      panel,
      points,
      bed === undefined
        ? { stroke: STEEL.face, width: 0.5, class: "all-beds" }
        : { ...bedLook(id, bed), class: `bed-${bed + 1}` },
    ),
  );
  const numbered = series.flatMap(({ bed, points }) => {
    const last = points.at(-1);
    return bed === undefined || !last ? [] : [{ words: String(bed + 1), at: last }];
  });
  return [...lines, ...endWords(panel, numbered)];
}

/** Words right of where lines end, none over another. */
export function endWords(panel: ChartPanel, ends: readonly { words: string; at: SeriesPoint | undefined }[]): Svg[] {
  const placed = ends
    .flatMap(({ words, at }) => (at ? [{ words, at: onPanel(panel, at[0], at[1]) }] : []))
    .sort((a, b) => a.at[1] - b.at[1]);
  const heights = spread(
    placed.map(({ at }) => at[1]),
    TYPE.caption,
  );
  return placed.flatMap(({ words, at }, k) => {
    const number = /^\d+$/.test(words);
    const x = number ? panel.right + 4 : panel.right - 1;
    const y = number ? heights[k] : heights[k] - 1.2;
    return [
      ...(number
        ? [
            element("path", {
              d: linePath([
                [at[0] + 0.3, at[1]],
                [panel.right + 3, heights[k]],
              ]),
              stroke: SOFT_INK,
              "stroke-width": 0.15,
            }),
          ]
        : []),
      textAt([x, y + (number ? 1 : 0)], words, TYPE.caption, {
        "text-anchor": number ? "start" : "end",
        fill: INK,
        ...HALO,
      }),
    ];
  });
}
