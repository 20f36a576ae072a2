import type { Rock } from "@bitwright/engine";
import { ROCK } from "../sheet/index.ts";
import { element, type Svg } from "../svg/index.ts";

/** How the kinds of ground are marked, by the usage of geological columns: shape only, so that a grey print tells them. */
const MARKS = ["fine", "sandy", "stony", "carbonate", "evaporite", "igneous", "metamorphic"] as const;

export type RockMark = (typeof MARKS)[number];

/** What each mark stands for, for the legend. */
export const MARK_WORDS: Readonly<Record<RockMark, string>> = {
  fine: "clay, silt, shale, organic",
  sandy: "sand, sandstone",
  stony: "gravel, boulders, chert",
  carbonate: "limestone, dolomite",
  evaporite: "gypsum, salt",
  igneous: "igneous rock",
  metamorphic: "metamorphic rock",
};

const STONY = /gravel|boulder|conglomerate|till|chert/;

/** The mark of a rock. */
export function rockMark({ id, likeId = id, family }: Rock): RockMark {
  if (STONY.test(likeId) || family === "siliceous") return "stony";
  if (/sand/.test(likeId)) return "sandy";
  if (family === "carbonate" || family === "evaporite" || family === "igneous" || family === "metamorphic")
    return family;
  return "fine";
}

const LINE = "#8b8375";

/** The marks as patterns; `id` begins their ids. */
export function markPatterns(id: string): Svg[] {
  const tile = (mark: RockMark, width: number, height: number, ...marks: Svg[]) =>
    element(
      "pattern",
      { id: `${id}-${mark}`, width, height, patternUnits: "userSpaceOnUse" },
      element("rect", { width, height, fill: ROCK }),
      ...marks,
    );
  const line = (d: string) => element("path", { d, stroke: LINE, "stroke-width": 0.2, fill: "none" });
  const dot = (x: number, y: number) => element("circle", { cx: x, cy: y, r: 0.25, fill: LINE });
  const stone = (x: number, y: number, r: number) =>
    element("circle", { cx: x, cy: y, r, fill: "none", stroke: LINE, "stroke-width": 0.2 });
  return [
    tile("fine", 5, 2.4, line("M0.5 0.6H3M3.5 1.8H5M0 1.8H0.8")),
    tile("sandy", 2.4, 2.4, dot(0.6, 0.6), dot(1.8, 1.8)),
    tile("stony", 5, 5, stone(1.4, 1.4, 0.9), stone(3.8, 3.6, 0.7), dot(3.9, 1), dot(1, 4)),
    tile("carbonate", 5, 4, line("M0 0.5H5M0 2.5H5M1 0.5V2.5M3.5 2.5V4M3.5 0V0.5")),
    tile("evaporite", 3, 3, line("M0.6 0.6L2.4 2.4M2.4 0.6L0.6 2.4")),
    tile("igneous", 4, 4, line("M1 0.2V1.8M0.2 1H1.8M3 2.2V3.8M2.2 3H3.8")),
    tile("metamorphic", 5, 2.5, line("M0 1.2C1 0.2 1.5 0.2 2.5 1.2S4 2.2 5 1.2")),
  ];
}
