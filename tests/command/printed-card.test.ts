import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { bitwright, projectFile, temporaryFolder } from "../support/command.ts";
import { ODD_TRAVELERS } from "../support/odd-travelers.ts";
import { pdfRead } from "../support/pdf-text.ts";

const folder = temporaryFolder();
afterAll(folder.remove);

const example = projectFile("examples/house-well.traveler.json");
const printed = (out: string, ...words: readonly string[]) => {
  const run = bitwright("work", example, "--out", join(folder.path, out), ...words);
  return { ...run, pdf: readFileSync(join(folder.path, out, "card.pdf")) };
};

describe("bitwright work, printing the card", () => {
  it("writes one page, and says at the end what did not fit on it", async () => {
    const { status, out, pdf } = printed("field");
    expect(status).toBe(0);
    const { pages, text } = await pdfRead(pdf);
    expect(pages).toBe(1);
    const [, said = "nothing said"] = /card\.pdf is one page\. (Left out for room: .*)/.exec(out) ?? [];
    expect(text).toContain(said);
  });

  it("writes the same bytes in another process", () => {
    expect(Buffer.compare(printed("once").pdf, printed("again").pdf)).toBe(0);
  });

  it("prints the code of a link that is given, and none else", () => {
    const link = ["--card-link", "http://192.168.1.20:4173/api/travelers/ridge/sheets/card.html"];
    const [plain, coded] = [printed("plain").pdf, printed("coded", ...link).pdf];
    expect(coded.length).toBeGreaterThan(plain.length);
  });

  it.each(["only granite", "only clay", "mist", "minimal"] as const)(
    "prints a page for the odd job: %s",
    async (name) => {
      const file = folder.file(`${name}.json`, ODD_TRAVELERS[name]);
      const out = join(folder.path, name);
      expect(bitwright("work", file, "--out", out).status).toBe(0);
      const { pages, text } = await pdfRead(readFileSync(join(out, "card.pdf")));
      expect(pages).toBe(1);
      expect(text).not.toMatch(/\b(NaN|undefined|Infinity|null)\b|\[object/);
      expect(/DO NOT RUN THIS BIT/.test(text)).toBe(name === "only granite");
    },
  );

  it.each([
    ["ridge", 'got "ridge"; give an address that begins with http:// or https://'],
    ["javascript:alert(1)", "give an address that begins with http:// or https://"],
    [`https://example.org/${"x".repeat(161)}`, "181 bytes long; at most 180"],
  ])("refuses the link %s and writes nothing", (link, words) => {
    const out = join(folder.path, "refused");
    const { status, err } = bitwright("work", example, "--out", out, "--card-link", link);
    expect(status).toBe(2);
    expect(err).toContain("--card-link: ");
    expect(err).toContain(words);
    expect(existsSync(out)).toBe(false);
  });

  it("refuses a link without a folder to print into", () => {
    const { status, err } = bitwright("work", example, "--card-link", "https://example.org/card");
    expect([status, err.trim()]).toEqual([
      2,
      "--card-link: it goes on the printed card; name the folder for it with --out",
    ]);
  });
});
