import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

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
