import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { projectFile, temporaryFolder } from "../../../../tests/support/command.ts";
import { NOTHING_PRINTED } from "../../../../tests/support/worked-up.ts";
import { Complaint } from "../complaint.ts";
import { type LifeCommandOptions, lifeCommand } from "./life.ts";

const well = projectFile("examples/house-well.traveler.json");

async function said(options: Partial<LifeCommandOptions>) {
  const out: string[] = [];
  const err: string[] = [];
  const terminal = { say: (text: string) => out.push(text), complain: (text: string) => err.push(text) };
  const status = await lifeCommand(well, { units: "field", ...options }, terminal);
  return { status, out: out.join("\n"), err: err.join("\n") };
}

describe("bitwright life", () => {
  it("prints footage with its band, a table, the heat and the remarks", async () => {
    const { status, out } = await said({});
    expect(status).toBe(0);
    expect(out).toMatch(/^[\d,]+ ft in \d+ holes and a part of the next, \d+ h on bottom\./);
    expect(out).toMatch(/An order of magnitude: [\d,]+ ft to [\d,]+ ft over what is known of wear/);
    expect(out).toContain("gauge lost");
    expect(out).toContain("NOTE life: No published wear coefficient");
    expect(out).toMatch(/NOTE gauge, [\d,.]+ ft: From this footage on/);
    expect(out).not.toMatch(NOTHING_PRINTED);
  });

  it("takes a number of holes and a factor on wear, and refuses what is neither", async () => {
    const { out } = await said({ holes: "2", wear: "0.5", units: "metric" });
    expect(out).toMatch(/^183 m in 2 holes, /);
    await expect(said({ holes: "2.5" })).rejects.toThrow(Complaint);
    await expect(said({ wear: "much" })).rejects.toThrow(Complaint);
  });

  it("writes its sheets, and the station as JSON in SI", async () => {
    const folder = temporaryFolder();
    try {
      const { out } = await said({ holes: "1", out: folder.path, json: true });
      const station = JSON.parse(out);
      expect(station.life.end.by).toBe("holes drilled");
      expect(Array.isArray(station.life.wear[0])).toBe(true);
      for (const name of ["life.svg", "heat.svg", "life.csv"]) {
        expect(readFileSync(join(folder.path, name), "utf8").length).toBeGreaterThan(100);
      }
    } finally {
      folder.remove();
    }
  });
});
