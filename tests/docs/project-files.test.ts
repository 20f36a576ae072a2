import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { projectFile } from "../support/command.ts";

/** What no file of the project holds. Words are put together here so that this file does not hold them itself. */
const NEVER: Readonly<Record<string, RegExp>> = {
  "paths of one machine": new RegExp(`(^|[\\s"'\`(=:])/(${["work", "tmp", "home", "root", "Users"].join("|")})/`),
  "hosts of package registries": new RegExp(
    ["registry\\.[a-z]", "npm" + "js\\.", "yarn" + "pkg", "py" + "pi\\.org"].join("|"),
  ),
  "words of a workplace": new RegExp(
    `\\b(${["ses" + "sions?", "(sub)?ag" + "ents?", "chat" + "bots?"].join("|")})\\b`,
    "i",
  ),
  "its short names": new RegExp(`\\b(${["A" + "I", "L" + "LMs?"].join("|")})\\b`),
};

/** Where a word of that list is meant in another sense, with the sense. */
const ALLOWED: readonly (readonly [file: RegExp, line: RegExp, sense: string])[] = [
  [/^package-lock\.json$/, /"(node_modules\/|[@a-z])|"url": |"integrity": /, "names and hashes of libraries"],
];

const listed = spawnSync("git", ["ls-files", "-z"], { cwd: projectFile("."), encoding: "utf8" });
const files = listed.status === 0 ? listed.stdout.split("\0").filter((name) => name !== "") : [];
const absent = files.length === 0 ? " (skipped: this is no clone, so the files of the project are not known)" : "";

describe.skipIf(files.length === 0)(`the files of the project${absent}`, () => {
  const lines = files.flatMap((file) => {
    const text = readFileSync(projectFile(file), "utf8");
    return text.includes("\0") ? [] : text.split("\n").map((line, at) => ({ file, at: at + 1, line }));
  });

  it.each(Object.entries(NEVER))("hold no %s", (_, pattern) => {
    const found = lines
      .filter(({ line }) => pattern.test(line))
      .filter(({ file, line }) => !ALLOWED.some(([where, what]) => where.test(file) && what.test(line)))
      .map(({ file, at, line }) => `${file}:${at}: ${line.trim().slice(0, 120)}`);
    expect(found).toEqual([]);
  });

  it("name data that lie beside the project only where tests read them", () => {
    const beside = new RegExp(`\\.\\./${"sha" + "red"}\\b`);
    const found = lines.filter(({ file, line }) => beside.test(line) && !file.startsWith("tests/"));
    expect(found.map(({ file, at }) => `${file}:${at}`)).toEqual([]);
  });
});

describe("package-lock.json", () => {
  it("says where no package was fetched from", () => {
    const { packages } = JSON.parse(readFileSync(projectFile("package-lock.json"), "utf8"));
    const fetched = Object.entries<{ resolved?: string }>(packages).filter(([, { resolved }]) =>
      resolved?.includes("://"),
    );
    expect(fetched.map(([name]) => name)).toEqual([]);
  });
});
