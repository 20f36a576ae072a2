import { cellNumber } from "./cell-number.ts";
import { type ChannelUnit, channelUnit } from "./channel-unit.ts";
import type { ColumnHead } from "./column-head.ts";
import { readDelimited } from "./delimited.ts";
import { counted, faultOnLines, type ImportFault, type ImportRefusal, type ImportReport, refusal } from "./report.ts";

export interface LithologyTableOptions {
  /** Unit of the depths, where the heads state none. */
  readonly unit?: string;
  /** Heads of the columns, where their names do not tell. */
  readonly columns?: Partial<Record<LithologyColumn, string>>;
}

type LithologyColumn = "from" | "to" | "description" | "bore";

/** One interval as the table has it. */
export interface LithologyRow {
  /** Depth of its top [m]. */
  readonly from: number;
  /** Depth of its bottom [m]. */
  readonly to: number;
  readonly description: string;
  /** Line of the file, counted from 1 [-]. */
  readonly line: number;
}

export interface LithologyTable {
  readonly refused: false;
  /** Unit of the depths in the file. */
  readonly unit: ChannelUnit;
  /** Rows of each bore in the order of the file; one nameless bore where the table names none. */
  readonly bores: ReadonlyMap<string, readonly LithologyRow[]>;
  readonly report: ImportReport;
}

/** Names of the columns in small letters, words parted: `FromDepth` is `from depth`. */
const NAMES: Readonly<Record<LithologyColumn, RegExp>> = {
  from: /^(from|top)$|^(from|top|start|upper) depth$|^depth (from|top|start)$/,
  to: /^(to|bottom|base)$|^(to|bottom|base|end|lower) depth$|^depth (to|bottom|base|end)$/,
  description:
    /^(description|desc|lithology|lithologic(al)? description|lithology description|material|formation|driller'?s? (log|description)|phrase|geology|strata)$/,
  bore: /^(bore|well|hole|borehole|site)( ?(id|no|name|number))?$/,
};

const WORDS: Readonly<Record<LithologyColumn, string>> = {
  from: "the top of each interval (from)",
  to: "the bottom of each interval (to)",
  description: "the description",
  bore: "the bore",
};

/** Reads a table of described intervals, of one bore or of many. */
export function readLithologyTable(
  given: string | Uint8Array,
  options: LithologyTableOptions = {},
): LithologyTable | ImportRefusal {
  const table = readDelimited(given);
  if (table.refused) return table;
  const places = columnPlaces(table.columns, options);
  if ("reason" in places) return refusal({ ...places, report: table.report });
  const { from, to, description, bore } = places;
  const stated = table.columns[from]?.unit ?? table.columns[to]?.unit;
  const unit = channelUnit(options.unit ?? stated ?? "", ["length"]);
  if (!unit) {
    const reason =
      options.unit === undefined
        ? "the heads do not say whether the depths are feet or metres; say the unit"
        : `"${options.unit}" is no unit of depth; say ft or m`;
    return refusal({ reason, line: table.headerLine, report: table.report });
  }

  const bores = new Map<string, LithologyRow[]>();
  const noDepth: number[] = [];
  const noThickness: number[] = [];
  const turned: number[] = [];
  const noWords: number[] = [];
  for (const [at, row] of table.rows.entries()) {
    const line = table.rowLines[at] ?? 0;
    const depth = (column: number) => cellNumber(row[column] ?? "", table.decimalMark) * unit.factor;
    const [top, bottom] = [depth(from), depth(to)];
    const words = (row[description] ?? "").replace(/\s+/g, " ").trim();
    const fault = Number.isNaN(top) || Number.isNaN(bottom) ? noDepth : bottom < top ? turned : noThickness;
    if (!(bottom > top)) {
      fault.push(line);
      continue;
    }
    if (words === "") noWords.push(line);
    const name = bore === undefined ? "" : (row[bore] ?? "").trim();
    const rows = bores.get(name) ?? [];
    bores.set(name, rows);
    rows.push({ from: top, to: bottom, description: words, line });
  }
  const faults: ImportFault[] = [];
  const told = (code: string, lines: readonly number[], what: string, effect: string) => {
    if (lines.length > 0)
      faults.push(faultOnLines({ code, what: `${counted(lines.length, "row")} ${what}`, effect, lines }));
  };
  told("interval-without-depth", noDepth, "without two depths", "left out");
  told("interval-turned", turned, "whose bottom lies above its top", "left out; look which depth is meant");
  told("interval-without-thickness", noThickness, "of no thickness", "left out");
  told("interval-without-words", noWords, "without a description", "kept as not described");
  if (bores.size === 0) return refusal({ reason: "no row holds two depths", report: table.report });
  const rows = [...bores.values()].reduce((sum, list) => sum + list.length, 0);
  return {
    refused: false,
    unit,
    bores,
    report: {
      lines: [
        ...table.report.lines,
        `Intervals from "${table.columns[from]?.header}" to "${table.columns[to]?.header}" in ${unit.name}, described in "${table.columns[description]?.header}".`,
        bore === undefined
          ? `${counted(rows, "interval")} of one bore: the table names none.`
          : `${counted(rows, "interval")} of ${counted(bores.size, "bore")} by "${table.columns[bore]?.header}".`,
      ],
      faults: [...table.report.faults, ...faults],
    },
  };
}

type Places = { from: number; to: number; description: number; bore: number | undefined };

function columnPlaces(columns: readonly ColumnHead[], options: LithologyTableOptions): Places | { reason: string } {
  const place = (column: LithologyColumn): number => {
    const said = options.columns?.[column];
    return said === undefined
      ? columns.findIndex((head) => NAMES[column].test(parted(head.name)))
      : columns.findIndex((head) => [head.header, head.name].some((name) => name.toLowerCase() === said.toLowerCase()));
  };
  const found = { from: place("from"), to: place("to"), description: place("description"), bore: place("bore") };
  const heads = columns.map((head) => head.header).join(", ");
  for (const column of ["from", "to", "description"] as const) {
    if (found[column] < 0) return { reason: `no column was found for ${WORDS[column]}; the columns are ${heads}` };
  }
  if (found.bore < 0 && options.columns?.bore !== undefined) {
    return { reason: `there is no column "${options.columns.bore}" for ${WORDS.bore}; the columns are ${heads}` };
  }
  return { ...found, bore: found.bore < 0 ? undefined : found.bore };
}

/** Words of a head in small letters: `FromDepth`, `from_depth` and `From Depth` are one. */
function parted(name: string): string {
  return name
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replace(/[_.\-/]+/g, " ")
    .replace(/\s+/g, " ")
    .trim()
    .toLowerCase();
}

/** How the intervals of one bore lie to one another. */
export interface IntervalOrder {
  /** Rows that stand below a deeper row in the file [-]. */
  readonly unsorted: number;
  /** Neighbours in order of depth of which the lower begins above the bottom of the upper [-]. */
  readonly overlaps: number;
  /** Neighbours in order of depth of which the lower begins below the bottom of the upper [-]. */
  readonly gaps: number;
}

/** Counts what is out of order in the intervals of one bore. */
export function intervalOrder(rows: readonly LithologyRow[]): IntervalOrder {
  const unsorted = rows.filter((row, at) => at > 0 && row.from < (rows[at - 1]?.from ?? 0)).length;
  const sorted = byDepth(rows);
  const pairs = sorted.slice(1).map((row, at) => row.from - (sorted[at]?.to ?? row.from));
  return {
    unsorted,
    overlaps: pairs.filter((step) => step < -DEPTH_ROOM).length,
    gaps: pairs.filter((step) => step > DEPTH_ROOM).length,
  };
}

/** Depths nearer than this are one depth [m]: under a tenth of a millimetre nothing was measured. */
export const DEPTH_ROOM = 1e-4;

/** Rows from the top down; of two that begin together the shorter first. */
function byDepth(rows: readonly LithologyRow[]): LithologyRow[] {
  return [...rows].sort((a, b) => a.from - b.from || a.to - b.to || a.line - b.line);
}
