/** Rows of words as a table of even columns, the first row its heads. */
export function plainTable(rows: readonly (readonly string[])[]): string {
  const columns = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, at) => Math.max(...rows.map((row) => (row[at] ?? "").length)));
  const line = (row: readonly string[]) => widths.map((width, at) => aligned(row[at] ?? "", width, at)).join("  ");
  const [heads = [], ...body] = rows;
  return [line(heads), widths.map((width) => "-".repeat(width)).join("  "), ...body.map(line)].join("\n");
}

/** Words stand to the left, figures to the right. */
function aligned(cell: string, width: number, column: number): string {
  return column === 0 ? cell.padEnd(width) : cell.padStart(width);
}
