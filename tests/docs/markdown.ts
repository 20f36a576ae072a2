/** A table of a Markdown page. */
export interface MarkdownTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A fenced block of a Markdown page. */
export interface FencedBlock {
  /** The first word behind the fence: `console`, `json`. */
  readonly language: string;
  /** `name=value` words behind the language. */
  readonly marks: Readonly<Record<string, string>>;
  readonly text: string;
  /** Line of the page on which the fence opens, from 1. */
  readonly line: number;
}

const cellsOf = (line: string) =>
  line
    .trim()
    .replace(/^\||\|$/g, "")
    .split("|")
    .map((cell) => cell.trim());

/** The tables of a Markdown page, in order. */
export function markdownTables(page: string): MarkdownTable[] {
  const tables: MarkdownTable[] = [];
  const lines = page.split("\n");
  for (let at = 0; at < lines.length; at++) {
    if (!/^\|/.test(lines[at]) || !/^\|[-| :]+\|$/.test(lines[at + 1] ?? "")) continue;
    const head = cellsOf(lines[at]);
    const rows: string[][] = [];
    for (at += 2; /^\|/.test(lines[at] ?? ""); at++) rows.push(cellsOf(lines[at]));
    tables.push({ head, rows });
  }
  return tables;
}

/** The fenced blocks of a Markdown page, in order. */
export function fencedBlocks(page: string): FencedBlock[] {
  const blocks: FencedBlock[] = [];
  const lines = page.split("\n");
  for (let at = 0; at < lines.length; at++) {
    const opening = /^```(?<info>\S.*)?$/.exec(lines[at]);
    if (!opening) continue;
    const line = at + 1;
    const [language = "", ...marks] = (opening.groups?.info ?? "").split(/\s+/);
    const text: string[] = [];
    for (at++; at < lines.length && lines[at] !== "```"; at++) text.push(lines[at]);
    blocks.push({
      language,
      marks: Object.fromEntries(marks.map((mark) => mark.split("=", 2))),
      text: text.join("\n"),
      line,
    });
  }
  return blocks;
}
