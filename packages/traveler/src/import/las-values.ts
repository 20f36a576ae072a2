import { cellNumber, isMissing } from "./cell-number.ts";
import { COMMON_NULLS } from "./las-checks.ts";
import type { LasCurve, LasItem } from "./las-file.ts";
import { lasDescription } from "./las-line.ts";
import type { LasRows } from "./las-rows.ts";
import { counted, type faultLog } from "./report.ts";

export interface LasValuesInput {
  readonly definitions: readonly LasItem[];
  readonly rows: LasRows;
  readonly nullValue: number | undefined;
  /** Whether a comma can be a decimal mark: not where it parts the cells. */
  readonly commaDecimals: boolean;
  readonly log: ReturnType<typeof faultLog>;
}

/** The curves with their readings; a definition without a column is left out. */
export function lasCurves(input: LasValuesInput): LasCurve[] {
  const seen = new Map<string, number>();
  return input.rows.columns.flatMap((definitionAt, column) => {
    const item = input.definitions[definitionAt];
    if (!item) return [];
    const mnemonic = item.mnemonic === "" ? `column ${column + 1}` : item.mnemonic;
    const before = seen.get(mnemonic.toUpperCase()) ?? 0;
    seen.set(mnemonic.toUpperCase(), before + 1);
    const { text, format } = lasDescription(item.description);
    const cells = input.rows.cells.map((row) => row[column] ?? "");
    const words = isWords(cells, format);
    if (words && format === undefined) {
      input.log.note({
        code: `text-curve-${mnemonic}`,
        what: () => `Curve ${mnemonic} holds words, not numbers`,
        effect: "kept as words",
      });
    }
    return [
      {
        mnemonic,
        name: before === 0 ? mnemonic : `${mnemonic} (${before + 1})`,
        unit: item.unit.replace(/^\[(.*)\]$/, "$1"),
        description: text,
        ...(format === undefined ? {} : { format }),
        values: words
          ? new Float64Array(cells.length).fill(Number.NaN)
          : readings(cells, mnemonic, column === 0, input),
        ...(words ? { texts: cells } : {}),
      },
    ];
  });
}

/** A curve of words: LAS 3 says so by its format, else not one of its filled cells is a number. */
function isWords(cells: readonly string[], format: string | undefined): boolean {
  if (format !== undefined && /^S/i.test(format)) return true;
  const filled = cells.filter((cell) => !isMissing(cell));
  return filled.length > 0 && filled.every((cell) => Number.isNaN(cellNumber(cell)) && !DECIMAL_COMMA.test(cell));
}

const DECIMAL_COMMA = /^[+-]?\d+,\d+$/;

function readings(cells: readonly string[], mnemonic: string, isIndex: boolean, input: LasValuesInput): Float64Array {
  const { log, nullValue, rows } = input;
  const values = new Float64Array(cells.length);
  cells.forEach((cell, at) => {
    const line = rows.lines[at] ?? 0;
    values[at] = reading(cell, line);
    // The index places its row: a depth that happens to equal the null value is still a depth.
    if (isIndex) return;
    if (nullValue !== undefined && values[at] === nullValue) values[at] = Number.NaN;
    else if (nullValue === undefined && COMMON_NULLS.includes(values[at] ?? 0)) {
      values[at] = Number.NaN;
      log.note(
        {
          code: "common-null-taken",
          what: (n) => `${counted(n, "reading")} of ${COMMON_NULLS.join(", ")}, and no null value stated`,
          effect: "taken as no reading",
        },
        line,
      );
    }
  });
  return values;

  function reading(cell: string, line: number): number {
    if (input.commaDecimals && DECIMAL_COMMA.test(cell)) {
      log.note(
        {
          code: "comma-decimal",
          what: (n) => `${counted(n, "number")} written with a comma`,
          effect: "the comma is read as the decimal mark",
        },
        line,
      );
      return cellNumber(cell, ",");
    }
    if (isMissing(cell)) {
      if (cell !== "") {
        log.note(
          {
            code: "word-for-null",
            what: (n) => `${counted(n, "cell")} with a word or mark ("${cell}") in place of the null value`,
            effect: "taken as no reading",
          },
          line,
        );
      }
      return Number.NaN;
    }
    const value = cellNumber(cell);
    if (Number.isNaN(value)) {
      log.note(
        {
          code: `text-among-numbers-${mnemonic}`,
          what: (n) => `Curve ${mnemonic}: ${counted(n, "cell")} without a number ("${cell}")`,
          effect: "taken as no reading",
        },
        line,
      );
    }
    return value;
  }
}
