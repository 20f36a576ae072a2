import { cellNumber, isMissing } from "./cell-number.ts";
import type { DelimitedTable } from "./delimited.ts";
import { COMMON_NULLS } from "./las-checks.ts";
import type { LasFile } from "./las-file.ts";

/** One column of readings, whatever file it came from. */
export interface ChannelColumn {
  /** As the file names it, with its unit where it stands in the head. */
  readonly header: string;
  readonly name: string;
  /** As written; absent where none is stated. */
  readonly unit?: string;
  /** Words in brackets that are no unit. */
  readonly aside?: string;
  /** The readings, NaN where there is none [`unit`]. */
  readonly readings: () => ColumnReadings;
}

export interface ColumnReadings {
  /** NaN where there is none [unit of the column]. */
  readonly values: Float64Array;
  /** Rows whose cell holds words in place of a number, as places in the table [-]. */
  readonly words: readonly number[];
  /** Rows whose cell holds a value that loggers write for no reading, as places in the table [-]. */
  readonly nulls: readonly number[];
}

export interface ChannelTable {
  /** What it was read from, for the report. */
  readonly kind: string;
  readonly columns: readonly ChannelColumn[];
  /** Line of the file each row began on, counted from 1 [-]. */
  readonly rowLines: readonly number[];
}

/** The sets of a LAS 3 file that hold a drilling record, the likeliest first. */
const DRILLING_SETS = ["drilling", "log"];

/** The columns of a table or of one set of a LAS file; undefined where the file has no set of that name. */
export function channelTable(from: DelimitedTable | LasFile, setName?: string): ChannelTable | undefined {
  if ("separator" in from) return tableOfDelimited(from);
  const wanted = setName === undefined ? DRILLING_SETS : [setName.toLowerCase()];
  const named = wanted.map((name) => from.sets.find((set) => set.name === name)).find((set) => set !== undefined);
  const set = named ?? (setName === undefined ? from.sets[0] : undefined);
  if (!set) return undefined;
  const columns = set.curves.map((curve) => ({
    header: curve.unit === "" ? curve.name : `${curve.name}.${curve.unit}`,
    name: curve.name,
    ...(curve.unit === "" ? {} : { unit: curve.unit }),
    readings: () => ({ values: curve.values, words: curve.texts ? curve.texts.map((_, at) => at) : [], nulls: [] }),
  }));
  return { kind: `LAS ${from.version}, set ${set.name}`, columns, rowLines: set.rowLines };
}

function tableOfDelimited(table: DelimitedTable): ChannelTable {
  const columns = table.columns.map((column, at) => ({
    header: column.header,
    name: column.name,
    ...(column.unit === undefined ? {} : { unit: column.unit }),
    ...(column.aside === undefined ? {} : { aside: column.aside }),
    readings: () => readingsOf(table, at),
  }));
  return { kind: "delimited text", columns, rowLines: table.rowLines };
}

function readingsOf(table: DelimitedTable, column: number): ColumnReadings {
  const values = new Float64Array(table.rows.length);
  const words: number[] = [];
  const nulls: number[] = [];
  table.rows.forEach((row, at) => {
    const cell = row[column] ?? "";
    const value = cellNumber(cell, table.decimalMark);
    if (Number.isNaN(value) && !isMissing(cell)) words.push(at);
    const isNull = COMMON_NULLS.includes(value);
    if (isNull) nulls.push(at);
    values[at] = isNull ? Number.NaN : value;
  });
  return { values, words, nulls };
}
