import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, dirname } from "node:path";
import { sheetsOf } from "@bitwright/shop";
import { parseTraveler, workUp } from "@bitwright/traveler";
import { describe, expect, it } from "vitest";
import { projectFile } from "../support/command.ts";

/**
 * The pictures of the guide are the drawings that `bitwright work` makes of the examples. With BITWRIGHT_GOLDEN=write they
 * are written anew, to be looked at before they are committed.
 */
const PICTURES: Readonly<Record<string, { traveler: string; sheet: string; page: string }>> = {
  "docs/guide/pictures/house-well-face.svg": { traveler: "house-well", sheet: "face.svg", page: "README.md" },
  "docs/guide/pictures/house-well-profile.svg": { traveler: "house-well", sheet: "profile.svg", page: "README.md" },
  "docs/guide/pictures/measured-bit-profile.svg": {
    traveler: "measured-bit",
    sheet: "profile.svg",
    page: "measured-bit.md",
  },
};

describe.each(Object.entries(PICTURES))("%s", (path, { traveler, sheet, page }) => {
  it("is the drawing of today", () => {
    const read = parseTraveler(readFileSync(projectFile(`examples/${traveler}.traveler.json`), "utf8"));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const sheets = sheetsOf(workUp(read), { units: "field", program: "Bitwright" });
    const drawn = sheets.find(({ name }) => name === sheet)?.text ?? "";
    expect(drawn).toContain("<svg");
    if (process.env.BITWRIGHT_GOLDEN === "write") {
      mkdirSync(dirname(projectFile(path)), { recursive: true });
      writeFileSync(projectFile(path), drawn);
    }
    const kept = existsSync(projectFile(path)) ? readFileSync(projectFile(path), "utf8") : "";
    // One truth value: a picture that changed is looked at, not read line by line in a terminal.
    expect(
      kept === drawn,
      "changed: write it with BITWRIGHT_GOLDEN=write npx vitest run tests/docs, and look at it",
    ).toBe(true);
  });

  it("stands on its page with words for those who cannot see it", () => {
    const text = readFileSync(projectFile(`docs/guide/${page}`), "utf8");
    const [, words = ""] = new RegExp(`!\\[([^\\]]*)\\]\\(pictures/${basename(path)}\\)`).exec(text) ?? [];
    expect(words.length).toBeGreaterThan(20);
  });
});
