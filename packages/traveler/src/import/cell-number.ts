/** Words and marks that stand for a missing reading in tables and logs, in small letters. */
const MISSING = new Set(["", "-", "--", "---", "n/a", "na", "nan", "#n/a", "null", "(null)", "none", "nil", "*", "?"]);

/** Whether a cell says that there is no reading. */
export function isMissing(cell: string): boolean {
  return MISSING.has(cell.trim().toLowerCase());
}

const PLAIN = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eEdD][+-]?\d+)?$/;

/**
 * The number in a cell of a table. With a decimal point, commas may stand between thousands; with a decimal comma,
 * points may.
 *
 * @returns the reading [unit of the column], NaN where the cell holds no number
 */
export function cellNumber(cell: string, decimalMark: "." | "," = "."): number {
  const text = cell.trim();
  const plain =
    decimalMark === "."
      ? text.replace(/^([+-]?\d{1,3}(?:,\d{3})+)(?=\.|$)/, (whole) => whole.replace(/,/g, ""))
      : text.replace(/^([+-]?\d{1,3}(?:\.\d{3})+)(?=,|$)/, (whole) => whole.replace(/\./g, "")).replace(",", ".");
  return PLAIN.test(plain) ? Number(plain.replace(/[dD]/, "e")) : Number.NaN;
}
