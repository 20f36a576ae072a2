import { type ColumnHead, columnHead } from "./column-head.ts";
import { counted, type ImportFault, type ImportRefusal, type ImportReport, refusal } from "./report.ts";
import {
  filledWidth,
  foundDecimalMark,
  foundSeparator,
  headRow,
  isBlank,
  isComment,
  isUnitRow,
  type RawRow,
  rawRows,
} from "./table-rows.ts";
import { plainText } from "./text-encoding.ts";

export interface DelimitedOptions {
  /** The mark between cells; found from the text where it is not given. */
  readonly separator?: string;
  /** Line of the column heads, counted from 1 [-]; found where it is not given. */
  readonly headerLine?: number;
  /** The decimal mark of the numbers; found where it is not given. */
  readonly decimalMark?: "." | ",";
}

/** A row that was left out, and why. */
export interface DroppedRow {
  /** Line of the file, counted from 1 [-]. */
  readonly line: number;
  readonly why: string;
}

/** A table read from delimited text. Cells stay text; the decimal mark is told beside them. */
export interface DelimitedTable {
  readonly refused: false;
  readonly separator: string;
  readonly decimalMark: "." | ",";
  /** Line of the column heads, counted from 1 [-]. */
  readonly headerLine: number;
  readonly columns: readonly ColumnHead[];
  readonly rows: readonly (readonly string[])[];
  /** Line of the file each row began on, counted from 1 [-]. */
  readonly rowLines: readonly number[];
  readonly droppedRows: readonly DroppedRow[];
  readonly notes: readonly string[];
  readonly report: ImportReport;
}

const SEPARATOR_NAMES: Readonly<Record<string, string>> = {
  ",": "comma",
  ";": "semicolon",
  "\t": "tab",
  "|": "upright stroke",
  " ": "space",
};

/** Reads a table from delimited text: separator, column heads with their units, rows, and what was left out and why. */
export function readDelimited(
  given: string | Uint8Array,
  options: DelimitedOptions = {},
): DelimitedTable | ImportRefusal {
  const { text, encoding } = plainText(given);
  if (text.trim() === "") return refusal({ reason: "the file is empty" });
  const separator = options.separator ?? foundSeparator(text);
  const raw = rawRows(text, separator);
  const comments = raw.filter((row) => isComment(row));
  const blank = raw.filter((row) => isBlank(row));
  const filled = raw.filter((row) => !isBlank(row) && !isComment(row));
  const head = headRow(filled, options.headerLine);
  if ("reason" in head) return refusal(head);

  const width = filledWidth(head.row.cells);
  if (width < 2) {
    return refusal({
      reason: "no separator was found: every row is one cell; say which mark parts the cells",
      line: 1,
    });
  }
  const below = filled.filter((row) => row.line > head.row.line);
  const unitRow = below[0] && isUnitRow(below[0]) ? below[0] : undefined;
  const columns = namedColumns(head.row.cells.slice(0, width), unitRow?.cells);
  const candidates = unitRow ? below.slice(1) : below;

  const rows: RawRow[] = [];
  const droppedRows: DroppedRow[] = [];
  for (const row of candidates) {
    const surplus = row.cells.slice(width);
    if (row.cells.length < width) {
      droppedRows.push({ line: row.line, why: `${counted(row.cells.length, "cell")} where the head names ${width}` });
    } else if (surplus.some((cell) => cell.trim() !== "")) {
      droppedRows.push({ line: row.line, why: `${counted(row.cells.length, "cell")} where the head names ${width}` });
    } else {
      rows.push({ line: row.line, cells: row.cells.slice(0, width) });
    }
  }
  droppedRows.push(...blank.map((row) => ({ line: row.line, why: "blank" })));
  droppedRows.sort((a, b) => a.line - b.line);
  if (rows.length === 0) return refusal({ reason: "no rows stand below the column heads", line: head.row.line });

  const decimalMark = options.decimalMark ?? foundDecimalMark(rows, separator);
  const notes = tableNotes({ columns, above: filled.filter((row) => row.line < head.row.line), comments, unitRow });
  const report: ImportReport = {
    lines: [
      `Delimited text, ${encoding}; cells parted by ${SEPARATOR_NAMES[separator] ?? `"${separator}"`}, decimal ${decimalMark === "." ? "point" : "comma"}.`,
      `Heads on line ${head.row.line}: ${columns.map(headText).join("; ")}.`,
      `${counted(rows.length, "row")} read, ${droppedRows.length} left out.`,
      ...notes,
    ],
    faults: droppedFaults(droppedRows),
  };
  return {
    refused: false,
    separator,
    decimalMark,
    headerLine: head.row.line,
    columns,
    rows: rows.map((row) => row.cells),
    rowLines: rows.map((row) => row.line),
    droppedRows,
    notes,
    report,
  };
}

function namedColumns(heads: readonly string[], units: readonly string[] | undefined): ColumnHead[] {
  const seen = new Map<string, number>();
  return heads.map((head, at) => {
    const column = columnHead(head);
    const unit = units?.[at]?.trim() || column.unit;
    const header = column.header === "" ? `column ${at + 1}` : column.header;
    const before = seen.get(header) ?? 0;
    seen.set(header, before + 1);
    const told = {
      ...column,
      header: before === 0 ? header : `${header} (${before + 1})`,
      name: column.name === "" ? header : column.name,
    };
    return unit ? { ...told, unit } : told;
  });
}

const headText = (column: ColumnHead): string =>
  `${column.name} [${column.unit ?? (column.aside === undefined ? "no unit" : `no unit, "${column.aside}" is none`)}]`;

function tableNotes(parts: {
  columns: readonly ColumnHead[];
  above: readonly RawRow[];
  comments: readonly RawRow[];
  unitRow: RawRow | undefined;
}): string[] {
  const { columns, above, comments, unitRow } = parts;
  const notes: string[] = [];
  if (unitRow) notes.push(`Units were taken from line ${unitRow.line}.`);
  if (above.length > 0) notes.push(`${counted(above.length, "line")} above the heads not used.`);
  if (comments.length > 0) notes.push(`${counted(comments.length, "comment line")} beginning with # not used.`);
  const asides = columns.filter((column) => column.aside !== undefined && column.unit === undefined);
  for (const column of asides) notes.push(`"${column.header}": "${column.aside}" is no unit that is known.`);
  const repeated = columns.filter((column) => / \(\d+\)$/.test(column.header) && column.header !== column.name);
  const twice = repeated.filter((column) => columns.some((other) => column.header.startsWith(`${other.header} (`)));
  for (const column of twice)
    notes.push(`The head of "${column.header}" stands more than once; the later one is numbered.`);
  return notes;
}

function droppedFaults(dropped: readonly DroppedRow[]): ImportFault[] {
  const reasons = [...new Set(dropped.map((row) => row.why))];
  return reasons.map((why) => {
    const lines = dropped.filter((row) => row.why === why).map((row) => row.line);
    return {
      code: why === "blank" ? "blank-line" : "wrong-number-of-cells",
      what: why === "blank" ? `${counted(lines.length, "blank line")}` : `${counted(lines.length, "row")} of ${why}`,
      rows: lines.length,
      effect: "left out",
      lines: lines.slice(0, 5),
    };
  });
}
