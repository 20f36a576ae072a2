import { type CardContent, type CardFigure, type CardRow, FEED_DEAD_BAND } from "@bitwright/engine";
import { formatQuantity, type UnitSystem } from "@bitwright/traveler";
import { bareFigure, cardUnit, wholeFigure } from "./card-figures.ts";
import { CARD, cellOf, oneLine, paragraph } from "./card-lines.ts";
import type { BlownWith, CardPaper } from "./card-paper.ts";

/** Columns of the table of beds: least width and side. The name of the ground, in `GROUND`, takes what the others leave. */
const BED_COLUMNS = [
  [5, "right"],
  [5, "right"],
  [0, "left"],
  [11, "right"],
  [5, "right"],
  [6, "right"],
  [9, "right"],
  [7, "right"],
] as const;
const GROUND = 2;

/** Cells of one bed; the name of the ground is filled in once its room is known. */
type BedCells = readonly string[];

/** Widths of the columns of some lines: no figure is cut. */
function widthsOf(lines: readonly BedCells[]): number[] {
  const widths = BED_COLUMNS.map(([least], k) =>
    k === GROUND ? 0 : Math.max(least, ...lines.map((cells) => cells[k]?.length ?? 0)),
  );
  const taken = widths.reduce((sum, width) => sum + width + 1, -1);
  return widths.map((width, k) => (k === GROUND ? CARD.columns - taken : width));
}

function bedLine(cells: BedCells, widths: readonly number[]): string {
  return cells
    .map((cell, k) => cellOf(cell, widths[k], BED_COLUMNS[k][1]))
    .join(" ")
    .trimEnd();
}

/** The table of beds: how to run the bit in each, and the rule of thumb under it. */
export function bedLines(
  { rows }: CardContent,
  { units, blownWith }: CardPaper,
  { remarks, tight = false }: { readonly remarks: number; readonly tight?: boolean },
): string[] {
  const length = cardUnit("depth", units);
  const pumped = blownWith === undefined;
  const heads = [
    ["FROM", "TO", "GROUND", "ON THE BIT", "TURN", "FLOW", "EXPECT", pumped ? "CLEANS" : ""],
    [
      length,
      length,
      "",
      `${cardUnit("force", units)} w/ pipe`,
      "rpm",
      pumped ? cardUnit("flow", units) : "",
      cardUnit("rate", units),
      pumped ? cardUnit("rate", units) : "",
    ],
  ];
  const cells = rows.map((row) => bedCells(row, units, pumped));
  const widths = widthsOf([...heads, ...cells]);
  // What is said of a bed stands under its name.
  const indent = " ".repeat(widths[0] + widths[1] + GROUND);
  return [
    ...heads.map((head) => bedLine(head, widths)),
    ...rows.flatMap((row, k) => [
      ...bedRow(row, cells[k], widths, indent),
      ...row.remarks.slice(0, row.drilled ? remarks : 0).flatMap((text) => paragraph(`${indent}- `, text)),
    ]),
    ...(tight ? paragraph("", legend(rows, units, SHORT).join(" ")) : legend(rows, units, LONG)),
    ...(rows.some(byRate)
      ? paragraph("", "by rate: too soft to set a weight. Feed to the rate expected, hold the string's weight back.")
      : []),
    ...(blownWith ? blowing(blownWith, units) : []),
  ];
}

/** What takes the place of the pump's flow. */
function blowing({ medium, leastAirFlow }: BlownWith, units: UnitSystem): string[] {
  const word = medium.slice(0, 1).toUpperCase() + medium.slice(1);
  if (leastAirFlow === undefined) return paragraph("", `${word}: not worked out here; by the sheet of its maker.`);
  const least = formatQuantity("air flow", leastAirFlow, units, { figures: 3 });
  return paragraph("", `${word}: at least ${least} of free air to lift the chips from the end of this hole.`);
}

/** The figures of a bed, its depths alone where the bit does not drill it. */
function bedCells(row: CardRow, units: UnitSystem, pumped: boolean): BedCells {
  const depths = [bareFigure(row.from, units), bareFigure(row.to, units), ""];
  if (!row.drilled) return depths;
  const weight = byRate(row) ? "by rate" : bareFigure(row.weight, units);
  const figures = [row.rotarySpeed, pumped ? row.flow : undefined, row.rate, pumped ? row.rateCeiling : undefined];
  return [...depths, weight, ...figures.map((figure) => bareFigure(figure, units))];
}

function bedRow(row: CardRow, cells: BedCells, widths: readonly number[], indent: string): string[] {
  const ground = oneLine(row.ground);
  if (!row.drilled) {
    const why = oneLine(row.remarks[0] ?? "").replace(/^Not with this bit\.\s*/, "");
    return paragraph(bedLine(cells, widths).padEnd(indent.length), `${ground}: NOT THIS BIT. ${why}`);
  }
  const [first, ...more] = paragraph("", row.verdict === "fit" ? ground : `! ${ground}`, widths[GROUND]);
  return [
    bedLine(
      cells.map((cell, k) => (k === GROUND ? first : cell)),
      widths,
    ),
    ...more.map((line) => bedLine(["", "", line], widths)),
  ];
}

/** Whether a bed takes less weight than a feed gauge shows. */
function byRate({ drilled, weight }: CardRow): boolean {
  return drilled && weight !== undefined && (weight.to ?? weight.value) < FEED_DEAD_BAND;
}

/** What the marks of the table mean, at length and where room is short. */
const LONG = {
  care: "! fit with care: stay at the low end, watch the signs below.",
  cleans: "CLEANS: the fastest rate whose chips this flow carries; drill no faster.",
} as const;
const SHORT = {
  care: "!: with care, at the low end.",
  cleans: "CLEANS: drill no faster, the flow carries no more.",
} as const;

/** The rule of thumb beside the computed figures, as a range over the beds, and what the marks mean. */
function legend(
  rows: readonly CardRow[],
  units: UnitSystem,
  { care, cleans }: Readonly<Record<keyof typeof LONG, string>>,
): string[] {
  const over = (figures: readonly (CardFigure | undefined)[]) => {
    const known = figures.filter((figure) => figure !== undefined);
    if (known.length === 0) return "";
    const values = known.flatMap(({ value, to }) => [value, to ?? value]);
    return wholeFigure({ kind: known[0].kind, value: Math.min(...values), to: Math.max(...values) }, units);
  };
  const weight = over(rows.map(({ practiceWeight }) => practiceWeight));
  const speed = over(rows.map(({ practiceSpeed }) => practiceSpeed));
  return [
    ...(weight && speed ? [`Rule of thumb (common practice): ${weight} at ${speed}.`] : []),
    ...(rows.some(({ drilled, verdict }) => drilled && verdict !== "fit") ? [care] : []),
    ...(rows.some(({ rateCeiling }) => rateCeiling) ? [cleans] : []),
  ];
}
