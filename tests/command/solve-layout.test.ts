import { type ChildProcess, spawn } from "node:child_process";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { projectFile } from "../support/command.ts";

const well = projectFile("examples/house-well.traveler.json");
const built = (path: string) => JSON.stringify(pathToFileURL(projectFile(`packages/cli/dist/${path}`)).href);

/** The built command in a process of its own, with threads and signals as a person meets them. */
function started(options: object): {
  readonly child: ChildProcess;
  readonly ended: Promise<{ status: number | null; out: string; err: string }>;
} {
  const script = `
    import { solveLayoutCommand } from ${built("commands/solve-layout.js")};
    import { processTerminal } from ${built("terminal.js")};
    process.exitCode = await solveLayoutCommand(${JSON.stringify(well)}, ${JSON.stringify({ units: "field", ...options })}, processTerminal);`;
  const child = spawn(process.execPath, ["--input-type=module", "-e", script], { stdio: ["ignore", "pipe", "pipe"] });
  let [out, err] = ["", ""];
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    out += text;
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    err += text;
  });
  const ended = new Promise<{ status: number | null; out: string; err: string }>((resolve) => {
    child.on("close", (status) => resolve({ status, out, err }));
  });
  return { child, ended };
}

describe("solve-layout as it is built", () => {
  it("finds the same on two threads as on one", async () => {
    const one = await started({ candidates: "8000", threads: "1", json: true }).ended;
    const two = await started({ candidates: "8000", threads: "2", json: true }).ended;
    expect([one.status, two.status]).toEqual([0, 0]);
    expect(two.out).toBe(one.out);
  });

  it.each(["1", "2"])("ends at Ctrl-C with what it has, on %s thread(s)", async (threads) => {
    const { child, ended } = started({ candidates: "3000000", threads });
    child.stderr?.on("data", (text: string) => {
      if (text.includes("solve-layout:")) child.kill("SIGINT");
    });
    const { status, out, err } = await ended;
    expect(err).toMatch(/solve-layout: [\d,]+ of 3,000,000 layouts/);
    expect(err).toContain("Stopping; what is done so far follows.");
    expect(status).toBe(130);
    expect(out).toMatch(/^1 .* x mean/m);
    expect(out).toContain("The search was stopped early");
  });
});
