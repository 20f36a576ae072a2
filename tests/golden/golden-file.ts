import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";

/** Holds a text to the file of that name beside this one; writes the file instead when BITWRIGHT_GOLDEN is `write`. */
export function expectGolden(name: string, text: string): void {
  const path = fileURLToPath(new URL(name, import.meta.url));
  if (process.env.BITWRIGHT_GOLDEN === "write") {
    writeFileSync(path, text);
    return;
  }
  expect(existsSync(path), `${name} is missing: look at the picture, then run \`npm run golden\``).toBe(true);
  // Compared as one truth value: a picture that changed is looked at, not read line by line in a terminal.
  expect(readFileSync(path, "utf8") === text, `${name} changed: look at it, then run \`npm run golden\``).toBe(true);
}
