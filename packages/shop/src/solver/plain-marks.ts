import type { LayoutStudy } from "@bitwright/traveler";
import { type ChartPanel, onPanel } from "../chart/index.ts";
import { freePlace } from "../map/free-place.ts";
import { CUT_RAMP, HALO, type StandingBox, TYPE, textAt, textWidth } from "../sheet/index.ts";
import { element, linePath, type PagePoint, type Svg } from "../svg/index.ts";
import { BALANCE_MARKS, placeOf } from "./pareto-place.ts";

/** The plain layouts as crosses with their words; where the two fall together, both words at one cross. */
export function plainMarks(panel: ChartPanel, { solved: { choices, plain, steadied } }: LayoutStudy): Svg[] {
  const together = Math.hypot(...[0, 1].map((k) => placeOf(panel, plain)[k] - placeOf(panel, steadied)[k])) < 1;
  const marks = together
    ? [{ layout: plain, words: "plain generator, steadied or not" }]
    : [
        { layout: plain, words: "plain generator" },
        { layout: steadied, words: "the same, wings in the steadiest order" },
      ];
  const standing = [...choices, plain, steadied].map(
    (layout): StandingBox => ({ at: placeOf(panel, layout), width: 2.6, height: 2.6 }),
  );
  const lines = BALANCE_MARKS.map(({ at }): StandingBox => {
    const [, y] = onPanel(panel, panel.x.from, at);
    return { at: [(panel.left + panel.right) / 2, y], width: panel.right - panel.left, height: 0.4 };
  });
  return marks.map(({ layout, words }) => {
    const [x, y] = placeOf(panel, layout);
    const arm = 1.3;
    const size = { width: textWidth(words, TYPE.caption), height: TYPE.caption };
    // Beside the cross, over it or under it: where neither a layout nor a line is written over, else as near as can be.
    const beside = size.width / 2 + 2.4;
    const tried = [0, -3, 3, -6, 6].flatMap((up): PagePoint[] => [
      [x + beside, y + up],
      [x - beside, y + up],
    ]);
    const place =
      freePlace(tried, size, [...standing, ...lines], panel) ?? freePlace(tried, size, standing, panel) ?? tried[1];
    return element(
      "g",
      { class: "plain" },
      element("path", {
        d: `${linePath([
          [x - arm, y - arm],
          [x + arm, y + arm],
        ])}${linePath([
          [x - arm, y + arm],
          [x + arm, y - arm],
        ])}`,
        stroke: CUT_RAMP[4],
        "stroke-width": 0.6,
      }),
      textAt([place[0], place[1] + 0.95], words, TYPE.caption, { "text-anchor": "middle", ...HALO }),
    );
  });
}
