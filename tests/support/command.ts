import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { run } from "../../packages/cli/src/main.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const program = join(root, "packages/cli/bin/bitwright.js");

/** Path of a file of the project. */
export const projectFile = (path: string) => join(root, path);

/** What a command left behind. */
export interface CommandRun {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the real command line in a process of its own. */
export function bitwright(...words: readonly string[]): CommandRun {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], {
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  return { status, out: stdout, err: stderr };
}

/** Processor time that a command takes in a process of its own, whatever else the machine does [s]; infinite without a shell. */
export function processorSeconds(...words: readonly string[]): number {
  const script = '"$@" > /dev/null; times';
  const { stdout } = spawnSync("sh", ["-c", script, "sh", process.execPath, program, ...words], { encoding: "utf8" });
  // The second line is that of the processes started: minutes and seconds of the user's and of the system's part.
  const parts = [
    ...(stdout ?? "")
      .split("\n")
      .slice(1)
      .join(" ")
      .matchAll(/(\d+)m([\d.]+)s/g),
  ];
  if (parts.length === 0) return Number.POSITIVE_INFINITY;
  return parts.reduce((sum, [, minutes, seconds]) => sum + 60 * Number(minutes) + Number(seconds), 0);
}

/** Runs the same command line inside this process: quicker, for the second look at what a process has shown. */
export async function bitwrightHere(...words: readonly string[]): Promise<CommandRun> {
  let out = "";
  let err = "";
  const status = await run(words, {
    say: (text) => {
      out += `${text}\n`;
    },
    complain: (text) => {
      err += `${text}\n`;
    },
  });
  return { status, out, err };
}

/** A folder that is gone when the test is. */
export function temporaryFolder(): {
  path: string;
  file: (name: string, content: unknown) => string;
  remove: () => void;
} {
  const path = mkdtempSync(join(tmpdir(), "bitwright-"));
  return {
    path,
    file: (name, content) => {
      const at = join(path, name);
      writeFileSync(at, typeof content === "string" ? content : JSON.stringify(content));
      return at;
    },
    remove: () => rmSync(path, { recursive: true, force: true }),
  };
}
