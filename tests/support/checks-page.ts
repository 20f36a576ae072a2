import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";

const page = fileURLToPath(new URL("../../docs/guide/checks.md", import.meta.url));

/**
 * Holds one figure section of docs/guide/checks.md to what the test has just measured, so that the page cannot grow
 * stale. With BITWRIGHT_CHECKS=write the section is rewritten instead; it stands between two comment lines that name it.
 */
export function holdSection(name: string, text: string): void {
  const begin = `<!-- figures: ${name} -->`;
  const end = `<!-- end: ${name} -->`;
  const whole = existsSync(page) ? readFileSync(page, "utf8") : "";
  const from = whole.indexOf(begin);
  const to = whole.indexOf(end);
  expect(from >= 0 && to > from, `docs/guide/checks.md has no place for "${name}"`).toBe(true);
  const held = whole.slice(from + begin.length, to).trim();
  if (process.env.BITWRIGHT_CHECKS === "write") {
    writeFileSync(page, `${whole.slice(0, from + begin.length)}\n\n${text.trim()}\n\n${whole.slice(to)}`);
    return;
  }
  expect(held, "rewrite the page with BITWRIGHT_CHECKS=write if the change is meant").toBe(text.trim());
}

/** A table in Markdown, the first row its head. */
export function table(rows: readonly (readonly string[])[]): string {
  const [head = [], ...body] = rows;
  const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
  return [line(head), line(head.map(() => "---")), ...body.map(line)].join("\n");
}
