import Papa from "papaparse";
import { cellNumber, isMissing } from "./cell-number.ts";
import { channelUnit } from "./channel-unit.ts";

/** One record of delimited text. */
export interface RawRow {
  readonly cells: readonly string[];
  readonly line: number;
}

/** How many rows are looked at to find the head and the marks [-]. */
const HEAD_ROWS = 60;

/** Marks that may part cells, the likelier first. */
const SEPARATORS = ["\t", ";", ",", "|"];

/** The mark that parts most of the first rows into one same number of cells, more than one. */
export function foundSeparator(text: string): string {
  const rated = SEPARATORS.map((separator) => {
    const { data } = Papa.parse<string[]>(text, { delimiter: separator, newline: "\n", preview: HEAD_ROWS });
    const widths = data.map(filledWidth);
    const usual = usualWidth(widths.filter((width) => width > 1));
    return { separator, usual, rows: times(widths, usual) };
  });
  const parting = rated.filter(({ usual }) => usual > 1);
  return parting.sort((a, b) => b.rows - a.rows || b.usual - a.usual)[0]?.separator ?? ",";
}

/** Cells and first line of every record. The parser knows where a record ends in the text; lines are counted up to there. */
export function rawRows(text: string, separator: string): RawRow[] {
  const rows: RawRow[] = [];
  let cursor = 0;
  let line = 1;
  Papa.parse<string[]>(text, {
    newline: "\n",
    delimiter: separator,
    step: ({ data, meta }) => {
      rows.push({ cells: data, line });
      for (; cursor < meta.cursor; cursor++) if (text[cursor] === "\n") line++;
    },
  });
  // A line end at the end of the text is no row.
  const last = rows.at(-1);
  if (text.endsWith("\n") && last && isBlank(last)) rows.pop();
  return rows;
}

export const isBlank = (row: RawRow): boolean => row.cells.every((cell) => cell.trim() === "");
export const isComment = (row: RawRow): boolean => (row.cells[0] ?? "").trimStart().startsWith("#");
const isNumeric = (cell: string): boolean =>
  !Number.isNaN(cellNumber(cell, ".")) || !Number.isNaN(cellNumber(cell, ","));

/** The row of column heads: the first of the usual width whose cells are mostly words. */
export function headRow(
  rows: readonly RawRow[],
  headerLine: number | undefined,
): { row: RawRow } | { reason: string; line?: number } {
  if (headerLine !== undefined) {
    const row = rows.find((candidate) => candidate.line === headerLine);
    return row ? { row } : { reason: `line ${headerLine} holds no column heads`, line: headerLine };
  }
  const sample = rows.slice(0, HEAD_ROWS);
  const usual = usualWidth(sample.map((row) => filledWidth(row.cells)));
  const row = sample.find((candidate) => {
    const filled = candidate.cells.filter((cell) => cell.trim() !== "");
    const words = filled.filter((cell) => !isNumeric(cell) && !isMissing(cell));
    return filledWidth(candidate.cells) === usual && words.length > filled.length / 2;
  });
  if (row) return { row };
  const first = sample[0];
  return first
    ? { reason: "no row of column heads was found; name the columns in the first row", line: first.line }
    : { reason: "the file holds no table" };
}

/** Cells up to the last that is filled: many tables end their lines with a mark too much. */
export const filledWidth = (cells: readonly string[]): number =>
  cells.reduce((width, cell, at) => (cell.trim() === "" ? width : at + 1), 0);

const usualWidth = (widths: readonly number[]): number =>
  [...widths].sort((a, b) => times(widths, b) - times(widths, a) || b - a)[0] ?? 0;

const times = (of: readonly number[], value: number): number => of.filter((one) => one === value).length;

/** A row that holds units and nothing else. */
export function isUnitRow(row: RawRow): boolean {
  const filled = row.cells.map((cell) => cell.trim()).filter((cell) => cell !== "");
  return filled.length > 0 && filled.every((cell) => channelUnit(cell) !== undefined);
}

/** A comma is the decimal mark where it cannot part cells, numbers use it and none uses a point so. */
export function foundDecimalMark(rows: readonly RawRow[], separator: string): "." | "," {
  if (separator === ",") return ".";
  const cells = rows.slice(0, HEAD_ROWS).flatMap((row) => row.cells.map((cell) => cell.trim()));
  const commas = cells.filter((cell) => /^[+-]?\d+(\.\d{3})*,\d+$/.test(cell)).length;
  const points = cells.filter((cell) => /^[+-]?\d+(,\d{3})*\.\d+$/.test(cell)).length;
  return commas > points ? "," : ".";
}
