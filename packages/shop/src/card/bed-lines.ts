import type { CardContent, CardRow } from "@bitwright/engine";
import { bedCells, bedHeads, GROUND } from "./bed-cells.ts";
import { bedLegend, blowingWords, byRateWords, insteadWords } from "./bed-words.ts";
import { CARD, cellOf, oneLine, paragraph } from "./card-lines.ts";
import type { CardPaper } from "./card-paper.ts";

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
  content: CardContent,
  paper: CardPaper,
  { remarks, tight = false }: { readonly remarks: number; readonly tight?: boolean },
): string[] {
  const { rows } = content;
  const { units, blownWith } = paper;
  const legend = bedLegend(content, paper, tight);
  const pumped = blownWith === undefined;
  const heads = bedHeads(units, pumped);
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
    ...(tight ? paragraph("", legend.join(" ")) : legend),
    ...byRateWords(content).flatMap((words) => paragraph("", words)),
    ...(blownWith ? paragraph("", blowingWords(blownWith, units)) : []),
  ];
}

function bedRow(row: CardRow, cells: BedCells, widths: readonly number[], indent: string): string[] {
  const ground = oneLine(row.ground);
  if (!row.drilled) {
    return paragraph(bedLine(cells, widths).padEnd(indent.length), `${ground}: NOT THIS BIT. ${insteadWords(row)}`);
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
