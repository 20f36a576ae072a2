import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { projectFile } from "../support/command.ts";
import { fencedBlocks, markdownTables } from "./markdown.ts";

const page = readFileSync(projectFile("docs/ARCHITECTURE.md"), "utf8");
const [packageTable, roomTable, folderTable] = markdownTables(page);

const foldersIn = (path: string) =>
  readdirSync(projectFile(path), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
const firstCells = (table: typeof packageTable) => table.rows.map(([cell]) => cell.replaceAll("`", ""));

/** What a package lists, without the project's own prefix. */
function dependenciesOf(path: string): string[] {
  const { dependencies = {} } = JSON.parse(readFileSync(projectFile(`${path}/package.json`), "utf8"));
  return Object.keys(dependencies).map((name) => name.replace("@bitwright/", ""));
}

const packages = foldersIn("packages").map((name) => `packages/${name}`);

describe("docs/ARCHITECTURE.md", () => {
  it("names the packages that there are", () => {
    expect(firstCells(packageTable).sort()).toEqual([...packages].sort());
  });

  it.each(packages)("says what %s imports", (path) => {
    const row = packageTable.rows.find(([name]) => name === `\`${path}\``) ?? [];
    const said = row[packageTable.head.indexOf("imports")];
    expect(said).toBe(dependenciesOf(path).sort().join(", ") || "nothing");
  });

  it("names the rooms of the engine that there are, in the order of its one-way line", () => {
    const rooms = firstCells(roomTable);
    expect([...rooms].sort(), "name every room in docs/ARCHITECTURE.md").toEqual(
      foldersIn("packages/engine/src").sort(),
    );
    const [, line = ""] = /^`(quantity → .*)`$/m.exec(page) ?? [];
    expect(line.split(/ → |, /)).toEqual(rooms);
  });

  it.each(rooms())("keeps to that line in %s", (room) => {
    const [, line = ""] = /^`(quantity → .*)`$/m.exec(page) ?? [];
    const steps = line.split(" → ").map((step) => step.split(", "));
    const own = steps.findIndex((step) => step.includes(room));
    const left = [room, ...steps.slice(0, own).flat()];
    const imported = sourcesIn(`packages/engine/src/${room}`).flatMap((text) =>
      [...text.matchAll(/from "(?:\.\.\/)+([a-z]+)\//g)].map(([, other]) => other),
    );
    expect([...new Set(imported)].filter((other) => !left.includes(other))).toEqual([]);
  });

  it("names the folders of the other packages that there are", () => {
    const others = packages.filter((path) => path !== "packages/engine");
    const there = others.flatMap((path) => foldersIn(`${path}/src`).map((name) => `${path}/src/${name}`));
    expect(
      firstCells(folderTable)
        .map((name) => `packages/${name}`)
        .sort(),
    ).toEqual(there.sort());
  });

  it("has one picture, which shows every package, and fits a page", () => {
    const pictures = fencedBlocks(page);
    expect(pictures).toHaveLength(1);
    for (const path of packages) expect(pictures[0].text).toContain(path.replace("packages/", ""));
    expect(page.split("\n").length).toBeLessThan(100);
  });
});

function rooms(): string[] {
  return foldersIn("packages/engine/src");
}

function sourcesIn(path: string): string[] {
  return readdirSync(projectFile(path), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts"))
    .map((name) => readFileSync(projectFile(`${path}/${name}`), "utf8"));
}
