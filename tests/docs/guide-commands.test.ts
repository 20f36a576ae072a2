import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { projectFile } from "../support/command.ts";
import { type FencedBlock, fencedBlocks } from "./markdown.ts";

/**
 * Everything a page of the guide shows is real. A block marked `console` holds commands, each followed by lines of what it
 * prints; `…` in a line stands for anything, and a line of `…` alone for lines left out. `console status=2` says how a
 * refused command ends. A block with `file=NAME` is a file that the commands may read, one with `of=NAME` a part of a file
 * of the project.
 */
const PAGES = ["README.md", ...readdirSync(projectFile("docs/guide")).map((name) => `docs/guide/${name}`)].filter(
  (path) => path.endsWith(".md"),
);

const COMMAND = /^npx bitwright /;
const LEFT_OUT = "…";

/** A command with what the page says it prints. */
interface ShownCommand {
  readonly command: string;
  readonly lines: readonly string[];
  readonly status: number;
}

function shownCommands({ text, marks }: FencedBlock): ShownCommand[] {
  const status = Number(marks.status ?? 0);
  const parts = text.split(/\n(?=npx bitwright )/);
  return parts.map((part) => {
    const [head, rest = ""] = splitHead(part);
    return { command: head, lines: rest.split("\n").filter((line) => line.trim() !== ""), status };
  });
}

/** A command may go on after a backslash at the end of a line. */
function splitHead(part: string): [string, string] {
  const joined = part.replace(/\\\n\s*/g, "");
  const end = joined.indexOf("\n");
  return end < 0 ? [joined, ""] : [joined.slice(0, end), joined.slice(end + 1)];
}

/** Words of a command line as a shell parts them, quotes taken off. */
const wordsOf = (command: string) =>
  [...command.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain);

function run(command: string, folder: string) {
  const [, , ...words] = wordsOf(command);
  const into = words.at(-2) === ">" ? words.splice(-2)[1] : undefined;
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [projectFile("packages/cli/bin/bitwright.js"), ...words],
    { cwd: folder, encoding: "utf8", maxBuffer: 64 * 1024 * 1024 },
  );
  if (into !== undefined) writeFileSync(join(folder, into), stdout);
  return { status, printed: `${stderr}\n${stdout}`.split("\n").map(squeezed) };
}

/** Runs of spaces count as one: the width of a column hangs on cells that the page leaves out. */
const squeezed = (line: string) => line.trim().replace(/\s+/g, " ");

const patternOf = (line: string) =>
  new RegExp(
    `^${squeezed(line)
      .split(LEFT_OUT)
      .map((piece) => piece.trim().replace(/[\\^$.*+?()[\]{}|]/g, "\\$&"))
      .join(".*")}$`,
  );

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** A folder with what a reader of the page has at hand: the examples, the data of the guide, the files the page shows. */
function readersFolder(blocks: readonly FencedBlock[]): string {
  const folder = mkdtempSync(join(tmpdir(), "bitwright-"));
  folders.push(folder);
  mkdirSync(join(folder, "docs/guide"), { recursive: true });
  cpSync(projectFile("examples"), join(folder, "examples"), { recursive: true });
  cpSync(projectFile("docs/guide/data"), join(folder, "docs/guide/data"), { recursive: true });
  for (const { marks, text } of blocks) if (marks.file) writeFileSync(join(folder, marks.file), `${text}\n`);
  return folder;
}

/** Whether every field of `part` stands in `whole` with that value; of a list, its first items. */
function isPartOf(part: unknown, whole: unknown): boolean {
  if (typeof part !== "object" || part === null) return part === whole;
  if (typeof whole !== "object" || whole === null) return false;
  return Object.entries(part).every(([name, value]) => isPartOf(value, (whole as Record<string, unknown>)[name]));
}

describe.each(PAGES)("%s", (path) => {
  const blocks = fencedBlocks(readFileSync(projectFile(path), "utf8"));
  const commands = blocks.filter(({ language }) => language === "console").flatMap(shownCommands);
  const parts = blocks.filter(({ marks }) => marks.of !== undefined);
  const folder = commands.length > 0 ? readersFolder(blocks) : "";
  // A page shows one long output piece by piece; the command is run once.
  const done = new Map<string, ReturnType<typeof run>>();

  it.skipIf(commands.length === 0).each(commands)("$command", ({ command, lines, status }) => {
    expect(command).toMatch(COMMAND);
    const ran = done.get(command) ?? run(command, folder);
    done.set(command, ran);
    expect(ran.status, ran.printed.join("\n")).toBe(status);
    const missing = lines.filter(
      (line) => line.trim() !== LEFT_OUT && !ran.printed.some((printed) => patternOf(line).test(printed)),
    );
    expect(missing, ran.printed.join("\n")).toEqual([]);
  });

  it.skipIf(parts.length === 0).each(parts)("line $line: part of a file", ({ language, marks, text }) => {
    const whole = readFileSync(projectFile(marks.of), "utf8");
    if (language === "json") expect(isPartOf(JSON.parse(text), JSON.parse(whole))).toBe(true);
    else expect(text.split("\n").filter((line) => !whole.split("\n").includes(line))).toEqual([]);
  });

  it("shows no command outside a console block, and JSON that reads", () => {
    for (const { language, text, line } of blocks) {
      if (language === "json") expect(() => JSON.parse(text), `line ${line}`).not.toThrow();
      if (language !== "console") expect(text.split("\n").filter((one) => COMMAND.test(one))).toEqual([]);
    }
  });
});
