/** Cuts a text into lines no wider than `width`, at spaces; lines after the first are set in by `indent` spaces. */
export function wrapped(text: string, width: number, indent = 0): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    const room = lines.length === 0 ? width : width - indent;
    if (line !== "" && line.length + 1 + word.length > room) {
      lines.push(line);
      line = word;
    } else {
      line = line === "" ? word : `${line} ${word}`;
    }
  }
  lines.push(line);
  return lines.map((one, at) => (at === 0 ? one : " ".repeat(indent) + one));
}

/** Rows as aligned columns; columns named in `left` start at the left, figures end at the right. */
export function textTable(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  left: readonly number[] = [0],
): string[] {
  const widths = heads.map((head, at) => Math.max(head.length, ...rows.map((row) => row[at].length)));
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, at) => (left.includes(at) ? cell.padEnd(widths[at]) : cell.padStart(widths[at])))
      .join("  ")
      .trimEnd();
  return [line(heads), line(widths.map((width) => "-".repeat(width))), ...rows.map(line)];
}
