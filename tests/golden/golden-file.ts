import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";

/** Holds a picture to the file of that name beside this one; writes the file instead when BITWRIGHT_GOLDEN is `write`. */
export function expectGolden(name: string, text: string): void {
  const kept = goldenFile(name, text);
  // Compared as one truth value: a picture that changed is looked at, not read line by line in a terminal.
  expect(kept === text, `${name} changed: look at it, then run \`npm run golden\``).toBe(true);
}

/** The same for a text that a person reads: a change shows the lines it is in. */
export function expectGoldenText(name: string, text: string): void {
  const kept = goldenFile(name, text);
  expect(text.split("\n"), `${name} changed: read it, then run \`npm run golden\``).toEqual(kept.split("\n"));
}

function goldenFile(name: string, text: string): string {
  const path = fileURLToPath(new URL(name, import.meta.url));
  if (process.env.BITWRIGHT_GOLDEN === "write") writeFileSync(path, text);
  expect(existsSync(path), `${name} is missing: look at what it will hold, then run \`npm run golden\``).toBe(true);
  return readFileSync(path, "utf8");
}
