import type { CardContent, CardFeed } from "@bitwright/engine";
import type { UnitSystem } from "@bitwright/traveler";
import { bareFigure, cardUnit } from "./card-figures.ts";
import { cellOf, heading } from "./card-lines.ts";
import { feedRows } from "./feed-rows.ts";

const DO: Readonly<Record<CardFeed["act"], string>> = {
  "pull down": "PUSH",
  "hold back": "HOLD",
  "let it hang": "HANG",
};
/** Widths of one joint: depth, wanted, string, act, by, gauge; two joints stand side by side. */
const WIDTHS = [5, 6, 6, 4, 6, 5] as const;
const BESIDE = 4;
const GAUGE = WIDTHS.length - 1;

function jointLine(cells: readonly string[]): string {
  return cells.map((cell, k) => cellOf(cell, WIDTHS[k], k === 3 ? "left" : "right")).join(" ");
}

/** Joint by joint what is wanted on the bit, what the string gives, and what the rig does; down the left side first. */
export function jointLines(content: CardContent, units: UnitSystem, most: number): string[] {
  const rows = feedRows(content, most);
  const all = content.rows.reduce((sum, { feed }) => sum + feed.length, 0);
  if (rows.length === 0) return [];
  const gauge = rows.some((row) => row.gauge);
  const line = (cells: readonly string[]) => jointLine(gauge ? cells : cells.slice(0, GAUGE));
  const printed = rows.map(({ depth, wanted, string, act, force, gauge: reading }) =>
    line([
      bareFigure(depth, units),
      bareFigure(wanted, units),
      bareFigure(string, units),
      DO[act],
      act === "let it hang" ? "" : bareFigure(force, units),
      bareFigure(reading, units),
    ]),
  );
  const head = line([cardUnit("depth", units), "wanted", "string", "do", "by", cardUnit("pressure", units)]);
  const half = Math.ceil(printed.length / 2);
  const column = head.length + BESIDE;
  const beside = (left: string, right: string | undefined) =>
    right === undefined ? left : `${cellOf(left, column, "left")}${right}`;
  const force = cardUnit("force", units);
  const reading = gauge ? `; GAUGE ${cardUnit("pressure", units)}` : "";
  return [
    heading(`JOINT BY JOINT: ${force} WANTED, GIVEN BY STRING, DONE BY RIG${reading}`),
    beside(head, printed.length > 1 ? head : undefined),
    ...printed.slice(0, half).map((left, k) => beside(left, printed[half + k]).trimEnd()),
    ...(rows.length < all
      ? [`${rows.length} of ${all} joints; between two of them the feed goes evenly. All are on the summary.`]
      : []),
    ...(gauge ? [] : ["No gauge readings: the rig's force for each unit of feed pressure was not given."]),
  ];
}
