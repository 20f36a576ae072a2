import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { projectFile, temporaryFolder } from "../../../../tests/support/command.ts";
import { NOTHING_PRINTED } from "../../../../tests/support/worked-up.ts";
import { Complaint } from "../complaint.ts";
import { type SolveLayoutOptions, solveLayoutCommand } from "./solve-layout.ts";

const well = projectFile("examples/house-well.traveler.json");

async function said(options: Partial<SolveLayoutOptions>, file = well) {
  const out: string[] = [];
  const err: string[] = [];
  const terminal = { say: (text: string) => out.push(text), complain: (text: string) => err.push(text) };
  const status = await solveLayoutCommand(file, { units: "field", candidates: "600", ...options }, terminal);
  return { status, out: out.join("\n"), err: err.join("\n") };
}

describe("bitwright solve-layout", () => {
  it("prints the plain layouts first, then the list with the best compromise, and the chosen one by wings", async () => {
    const { status, out } = await said({});
    expect(status).toBe(0);
    const rows = out.split("\n").filter((line) => / x mean /.test(line));
    expect(rows[0]).toMatch(/^plain generator /);
    expect(rows[1]).toMatch(/^plain, steadiest wings /);
    expect(rows[2]).toMatch(/^1 /);
    expect(rows.filter((row) => row.includes("(best compromise)"))).toHaveLength(1);
    expect(out).toMatch(/wing 5 at \d+\.\d°: \d+ at [\d.]+ in/);
    expect(out).toContain("(centre)");
    expect(out).toContain("600 layouts tried, seed 1.");
    expect(out).not.toMatch(NOTHING_PRINTED);
  });

  it("prints the same for the same seed, and JSON in SI with plans and layouts", async () => {
    const [one, again] = [await said({ json: true, seed: "9" }), await said({ json: true, seed: "9" })];
    expect(again.out).toBe(one.out);
    const study = JSON.parse(one.out);
    expect(study.question.seed).toBe(9);
    expect(study.solved.choices[0].bit.layout.holeDiameter).toBeCloseTo(0.155575, 9);
    expect(study.solved.choices[0].plan.cutters).toHaveLength(study.solved.plain.plan.cutters.length);
  });

  it("writes pictures and layouts into a folder", async () => {
    const folder = temporaryFolder();
    try {
      const { out } = await said({ out: folder.path, measure: "work", units: "metric" });
      for (const name of ["pareto.svg", "face.svg", "profile.svg", "layout-1.json"]) {
        expect(readFileSync(join(folder.path, name), "utf8").length).toBeGreaterThan(500);
        expect(out).toContain(name);
      }
      expect(out).toContain("unevenness of the cutting work");
    } finally {
      folder.remove();
    }
  });

  it("refuses what it cannot use", async () => {
    await expect(said({ measure: "weight" })).rejects.toThrow(/--measure: got "weight"; give area, work, wear/);
    await expect(said({ candidates: "0" })).rejects.toThrow(Complaint);
    await expect(said({ seed: "-1" })).rejects.toThrow(Complaint);
    await expect(said({ threads: "1.5" })).rejects.toThrow(Complaint);
    await expect(said({}, projectFile("examples/measured-bit.traveler.json"))).rejects.toThrow(/measured bit/);
  });
});
