/** Rows as CSV text (RFC 4180 with plain line feeds): a cell is quoted only where it must be. */
export function csvText(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(cellText).join(",")}\n`).join("");
}

function cellText(cell: string): string {
  // A spreadsheet runs a text that begins like this as a formula; numbers may begin with a sign.
  const safe = /^[=+@-]/.test(cell) && !/^-?[\d.]+(e[+-]?\d+)?$/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}
