import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { bitwright, projectFile } from "../support/command.ts";
import { fencedBlocks, markdownTables } from "./markdown.ts";

const PAGES = ["", "docs", "docs/guide", "docs/decisions"].flatMap((folder) =>
  readdirSync(projectFile(folder || "."))
    .filter((name) => name.endsWith(".md"))
    .map((name) => join(folder, name)),
);

const textOf = (path: string) => readFileSync(projectFile(path), "utf8");

/** The anchor that a heading gets: small letters, spaces to hyphens, other marks left out. */
const anchorOf = (heading: string) =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s-]/gu, "")
    .trim()
    .replace(/\s/g, "-");

const outsideFences = (text: string) => text.replace(/^```[\s\S]*?^```$/gm, "");
const headingsOf = (text: string) => [...outsideFences(text).matchAll(/^#+ (.+)$/gm)].map(([, heading]) => heading);

describe.each(PAGES)("%s", (path) => {
  const text = textOf(path);

  it("links to files and headings that there are", () => {
    const dead = [...outsideFences(text).matchAll(/\]\(([^)\s]+)\)/g)]
      .map(([, target]) => target)
      .filter((target) => !/^[a-z]+:/.test(target))
      .filter((target) => {
        const [file, anchor] = target.split("#", 2);
        const other = file === "" ? path : join(dirname(path), file);
        if (!existsSync(projectFile(other))) return true;
        return anchor !== undefined && !headingsOf(textOf(other)).map(anchorOf).includes(anchor);
      });
    expect(dead).toEqual([]);
  });

  it("has no empty heading", () => {
    const lines = plainLines(text);
    // Below a heading stands text, or a heading of a lower rank.
    const empty = lines.filter((line, at) => {
      const next = lines[at + 1];
      const below = next === undefined ? 1 : levelOf(next);
      return levelOf(line) > 0 && below > 0 && below <= levelOf(line);
    });
    expect(empty).toEqual([]);
  });
});

/** Level of a heading, 0 for any other line. */
const levelOf = (line: string) => /^(#+) /.exec(line)?.[1].length ?? 0;

/** Lines that hold something, a fenced block as one line. */
const plainLines = (text: string) =>
  text
    .replace(/^```[\s\S]*?^```$/gm, "(block)")
    .split("\n")
    .filter((line) => line.trim() !== "");

describe("README.md", () => {
  const text = textOf("README.md");

  it("tells the job in its first paragraph", () => {
    expect(text.split("\n\n")[1]).toMatch(/^Bitwright is for .*bit/s);
  });

  it("sets a fresh machine up with two commands", () => {
    const setUp = fencedBlocks(text).find(({ language }) => language === "")?.text ?? "";
    expect(setUp.split("\n").map((line) => line.split("#")[0].trim())).toEqual([
      "npm ci && npm start",
      "npm ci && npm test",
    ]);
    const { scripts } = JSON.parse(textOf("package.json"));
    for (const script of ["start", "test", "prepare"]) expect(scripts[script]).toBeDefined();
    expect(scripts.start).toContain("serve");
    expect(scripts.demo).toContain("--out out/house-well");
  });

  it("names the commands that the program has, with options that it takes", () => {
    const [commands] = markdownTables(text);
    const named = commands.rows.map(([cell]) => cell.replaceAll("`", "").split(" ")[0]);
    const helped = [...bitwright("--help").out.matchAll(/^ {2}([a-z-]+) +\S/gm)].map(([, name]) => name);
    expect([...named].sort()).toEqual(helped.filter((name) => name !== "help").sort());
    for (const [cell] of commands.rows) {
      const [name] = cell.replaceAll("`", "").split(" ");
      const help = bitwright("help", name).out;
      for (const [option] of cell.matchAll(/--[a-z]+/g)) expect(help).toContain(option);
    }
  });
});

describe("docs/guide/checks.md", () => {
  it("lists in its index every file of tests/reference, and every section", () => {
    const text = textOf("docs/guide/checks.md");
    const [index] = markdownTables(text);
    const named = index.rows.flatMap(([, cell]) => [...cell.matchAll(/`([^`]+)`/g)].map(([, name]) => name));
    const there = readdirSync(projectFile("tests/reference")).map((name) => name.replace(/\.test\.ts$/, ""));
    expect([...new Set(named)].sort()).toEqual(there.sort());
    const linked = index.rows.flatMap(([cell]) => [...cell.matchAll(/\(#([^)]+)\)/g)].map(([, anchor]) => anchor));
    expect(linked).toEqual(headingsOf(text).slice(1).map(anchorOf));
  });
});
