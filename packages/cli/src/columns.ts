import { textTable } from "@bitwright/shop";

/** A plain table as text: heads, a rule, rows; the first column to the left, or those named in `left`, the others to the right. */
export function columns(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  left: readonly number[] = [0],
): string {
  return textTable(heads, rows, left).join("\n");
}
