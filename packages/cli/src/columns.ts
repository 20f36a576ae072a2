/** A plain table: heads, a rule, rows; the first column to the left, the others to the right. */
export function columns(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = heads.map((head, at) => Math.max(head.length, ...rows.map((row) => row[at].length)));
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, at) => (at === 0 ? cell.padEnd(widths[at]) : cell.padStart(widths[at])))
      .join("  ")
      .trimEnd();
  return [line(heads), widths.map((width) => "-".repeat(width)).join("  "), ...rows.map(line)].join("\n");
}
