/** A plain table: heads, a rule, rows; the first column to the left, or those named in `left`, the others to the right. */
export function columns(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  left: readonly number[] = [0],
): string {
  const widths = heads.map((head, at) => Math.max(head.length, ...rows.map((row) => row[at].length)));
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, at) => (left.includes(at) ? cell.padEnd(widths[at]) : cell.padStart(widths[at])))
      .join("  ")
      .trimEnd();
  return [line(heads), widths.map((width) => "-".repeat(width)).join("  "), ...rows.map(line)].join("\n");
}
