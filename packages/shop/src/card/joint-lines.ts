import type { CardContent } from "@bitwright/engine";
import type { UnitSystem } from "@bitwright/traveler";
import { cardUnit } from "./card-figures.ts";
import { CARD, cellOf, heading } from "./card-lines.ts";
import { NO_GAUGE } from "./card-words.ts";
import { feedRows } from "./feed-rows.ts";
import { ACT, jointCells, jointHeads } from "./joint-cells.ts";

/** Least widths of one joint: depth, wanted, string, act, by, gauge. */
const WIDTHS = [5, 6, 6, 4, 6, 5] as const;
/** Blanks between two joints that stand side by side. */
const BESIDE = 4;

/** Joint by joint what is wanted on the bit, what the string gives, and what the rig does; down the left side first. */
export function jointLines(content: CardContent, units: UnitSystem, most: number): string[] {
  const rows = feedRows(content, most);
  const all = content.rows.reduce((sum, { feed }) => sum + feed.length, 0);
  if (rows.length === 0) return [];
  const gauge = rows.some((row) => row.gauge);
  const cells = [jointHeads(units, gauge), ...rows.map((row) => jointCells(row, units, gauge))];
  // Nothing is cut from a figure: the columns are as wide as their widest.
  const widths = cells[0].map((_, k) => Math.max(WIDTHS[k], ...cells.map((one) => one[k].length)));
  const [head, ...printed] = cells.map((one) =>
    one.map((cell, k) => cellOf(cell, widths[k], k === ACT ? "left" : "right")).join(" "),
  );
  const force = cardUnit("force", units);
  const reading = gauge ? `; GAUGE ${cardUnit("pressure", units)}` : "";
  return [
    heading(`JOINT BY JOINT: ${force} WANTED, GIVEN BY STRING, DONE BY RIG${reading}`),
    ...besideEachOther(head, printed),
    ...(rows.length < all
      ? [`${rows.length} of ${all} joints; between two of them the feed goes evenly. All: depth.csv.`]
      : []),
    ...(gauge ? [] : [NO_GAUGE]),
  ];
}

/** Two joints on a line where both have room. */
function besideEachOther(head: string, printed: readonly string[]): string[] {
  const column = head.length + BESIDE;
  if (printed.length < 2 || column + head.length > CARD.columns) return [head, ...printed].map((one) => one.trimEnd());
  const half = Math.ceil(printed.length / 2);
  return [
    `${cellOf(head, column, "left")}${head}`,
    ...printed.slice(0, half).map((left, k) => `${cellOf(left, column, "left")}${printed[half + k] ?? ""}`.trimEnd()),
  ];
}
