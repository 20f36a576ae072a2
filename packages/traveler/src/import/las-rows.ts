import { isMissing } from "./cell-number.ts";
import type { NumberedLine } from "./las-section.ts";
import { counted, type faultLog } from "./report.ts";

/** What parts the cells of a data row. */
export type LasDelimiter = "space" | "comma" | "tab";

/** Rows of cells, as many as there are curves, each with the line it began on. */
export interface LasRows {
  readonly cells: readonly (readonly string[])[];
  /** Line of the file each row began on, counted from 1 [-]. */
  readonly lines: readonly number[];
  /** Columns that the rows hold, as places in the list of curves; all of them unless the title line named fewer [-]. */
  readonly columns: readonly number[];
  readonly wrapped: boolean;
}

export interface LasRowsInput {
  readonly lines: readonly NumberedLine[];
  readonly mnemonics: readonly string[];
  /** What the version section says of wrapping; undefined where it says nothing. */
  readonly wrap: boolean | undefined;
  readonly delimiter: LasDelimiter;
  /** Words behind the letter or name of the data section's title: often the mnemonics once more. */
  readonly titleWords: readonly string[];
  readonly log: ReturnType<typeof faultLog>;
}

interface Row {
  readonly cells: readonly string[];
  readonly line: number;
  readonly text: string;
}

/** The rows of a data section, or why they cannot be told. */
export function lasRows(input: LasRowsInput): LasRows | { reason: string; line?: number } {
  const { mnemonics, log } = input;
  const rows = filledRows(input);
  if (rows.length === 0) return { reason: "the file holds no data rows" };
  const width = mnemonics.length;
  const all = mnemonics.map((_, at) => at);
  const usual = usualWidth(rows);

  if (input.wrap === undefined) {
    log.note({
      code: "wrap-not-stated",
      what: () => "The version section does not say whether rows are wrapped",
      effect: usual === width ? "read as not wrapped, since every row holds all curves" : "read as wrapped",
    });
  }
  if (input.wrap ?? usual !== width) return wrappedRows(rows, input, all);
  if (usual === width || rows.some((row) => row.cells.length === width)) return unwrappedRows(rows, input, all);

  const named = columnsByTitle(input.titleWords, mnemonics);
  if (named && named.length === usual) {
    log.note({
      code: "fewer-columns-than-curves",
      what: () => `${width} curves are defined but the rows hold ${usual} columns`,
      effect: `the title line of the data names them: ${named.map((at) => mnemonics[at]).join(", ")}; the other curves have no data`,
    });
    return unwrappedRows(rows, { ...input, mnemonics: named.map((at) => mnemonics[at] ?? "") }, named);
  }
  return {
    reason: `the curves defined are ${width} but the data rows hold ${counted(usual, "column")}; which column belongs to which curve cannot be told`,
    line: rows[0]?.line ?? 0,
  };
}

function filledRows(input: LasRowsInput): Row[] {
  const { lines, delimiter, log } = input;
  const filled: NumberedLine[] = [];
  const lastFilled = lines.reduce((last, line, at) => (line.text.trim() === "" ? last : at), -1);
  lines.slice(0, lastFilled + 1).forEach((line) => {
    const text = line.text.trim();
    if (text === "") {
      log.note(
        { code: "blank-line-in-data", what: (n) => `${counted(n, "blank line")} in the data`, effect: "left out" },
        line.line,
      );
    } else if (text.startsWith("#")) {
      log.note(
        { code: "comment-in-data", what: (n) => `${counted(n, "comment line")} in the data`, effect: "left out" },
        line.line,
      );
    } else {
      filled.push(line);
    }
  });
  const mark = delimiter === "comma" ? "," : "\t";
  if (delimiter !== "space" && filled.length > 0 && !filled.some((line) => line.text.includes(mark))) {
    log.note({
      code: "delimiter-not-used",
      what: () => `The file says its columns are parted by ${delimiter}, but no data row holds one`,
      effect: "read as parted by spaces",
    });
    return filled.map((line) => ({ ...line, cells: cellsOf(line.text, "space") }));
  }
  return filled.map((line) => ({ ...line, cells: cellsOf(line.text, delimiter) }));
}

const QUOTED_WORDS = /"([^"]*)"|'([^']*)'|\S+/g;

/** The cells of one row; a cell in quotes may hold the mark that parts cells. */
function cellsOf(text: string, delimiter: LasDelimiter): string[] {
  if (delimiter === "space") {
    if (!/["']/.test(text)) return text.trim().split(/\s+/);
    return [...text.matchAll(QUOTED_WORDS)].map((match) => match[1] ?? match[2] ?? match[0]);
  }
  const mark = delimiter === "comma" ? "," : "\t";
  if (!text.includes('"')) return text.split(mark).map((cell) => cell.trim());
  const cells = [""];
  let quoted = false;
  for (const letter of text) {
    if (letter === '"') quoted = !quoted;
    else if (letter === mark && !quoted) cells.push("");
    else cells[cells.length - 1] += letter;
  }
  return cells.map((cell) => cell.trim());
}

function usualWidth(rows: readonly Row[]): number {
  const counts = new Map<number, number>();
  for (const row of rows) counts.set(row.cells.length, (counts.get(row.cells.length) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0] ?? 0;
}

/** Curves that the title line names, where it names nothing else; undefined where it does not name columns. */
function columnsByTitle(words: readonly string[], mnemonics: readonly string[]): number[] | undefined {
  const upper = mnemonics.map((mnemonic) => mnemonic.toUpperCase());
  const places = words.map((word) => upper.indexOf(word.toUpperCase()));
  const once = new Set(places).size === places.length;
  return places.length > 0 && once && !places.includes(-1) ? places : undefined;
}

function unwrappedRows(
  rows: readonly Row[],
  input: LasRowsInput,
  columns: readonly number[],
): LasRows | { reason: string; line: number } {
  const { log } = input;
  const width = columns.length;
  const edges = columnEdges(rows, width);
  const kept: Row[] = [];
  for (const [at, row] of rows.entries()) {
    if (row.cells.length === width) {
      kept.push(row);
      continue;
    }
    if (row.cells.length === width + 1 && row.cells.at(-1) === "") {
      kept.push({ ...row, cells: row.cells.slice(0, width) });
      continue;
    }
    const parted = input.delimiter === "space" ? partedRunOn(row, width, edges) : undefined;
    if (parted) {
      log.note(
        {
          code: "numbers-run-together",
          what: (n) => `${counted(n, "row")} with numbers run together`,
          effect: "parted at the column edges of the other rows; look at the values",
        },
        row.line,
      );
      kept.push({ ...row, cells: parted });
      continue;
    }
    if (at === rows.length - 1 && row.cells.length < width) {
      log.note(
        {
          code: "last-row-short",
          what: () => "The last row is cut short",
          effect: "left out; the file may be incomplete",
        },
        row.line,
      );
      continue;
    }
    const reason = `the data row holds ${counted(row.cells.length, "value")} where ${counted(width, "column")} are defined`;
    return { reason, line: row.line };
  }
  return { cells: kept.map((row) => row.cells), lines: kept.map((row) => row.line), columns, wrapped: false };
}

/** Places where columns end, where all whole rows agree on them; undefined where the file keeps no fixed width. */
function columnEdges(rows: readonly Row[], width: number): number[] | undefined {
  let edges: number[] | undefined;
  for (const row of rows) {
    if (row.cells.length !== width) continue;
    const ends = [...row.text.matchAll(/\S+/g)].map((match) => match.index + match[0].length);
    if (edges === undefined) edges = ends;
    else if (ends.some((end, at) => end !== edges?.[at])) return undefined;
  }
  return edges;
}

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;
const isReading = (cell: string): boolean => NUMBER.test(cell) || isMissing(cell);

/** The cells of a row whose numbers run together: by the column edges, else before each minus sign. */
function partedRunOn(row: Row, width: number, edges: readonly number[] | undefined): string[] | undefined {
  if (edges) {
    const cells = edges.map((end, at) => row.text.slice(at === 0 ? 0 : edges[at - 1], end).trim());
    const behind = row.text.slice(edges.at(-1) ?? 0).trim();
    if (behind === "" && cells.every((cell) => cell !== "" && isReading(cell))) return cells;
  }
  const byMinus = row.text
    .trim()
    .replace(/(?<=\d)-(?=[\d.])/g, " -")
    .split(/\s+/);
  return byMinus.length === width && byMinus.every(isReading) ? byMinus : undefined;
}

function wrappedRows(
  rows: readonly Row[],
  input: LasRowsInput,
  columns: readonly number[],
): LasRows | { reason: string; line: number } {
  const width = columns.length;
  const cells: string[][] = [];
  const lines: number[] = [];
  let open: string[] = [];
  let openLine = 0;
  for (const row of rows) {
    if (open.length === 0) openLine = row.line;
    open.push(...row.cells);
    if (open.length > width) {
      const reason = `the wrapped row that begins on line ${openLine} holds more values than the ${width} curves defined`;
      return { reason, line: row.line };
    }
    if (open.length === width) {
      cells.push(open);
      lines.push(openLine);
      open = [];
    }
  }
  if (open.length > 0) {
    input.log.note(
      {
        code: "last-row-short",
        what: () => "The last row is cut short",
        effect: "left out; the file may be incomplete",
      },
      openLine,
    );
  }
  if (cells.length === 0) return { reason: `no row holds the ${width} curves defined`, line: rows[0]?.line ?? 0 };
  return { cells, lines, columns, wrapped: true };
}
