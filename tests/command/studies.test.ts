import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { bitwright, projectFile, temporaryFolder } from "../support/command.ts";
import { ODD_TRAVELERS } from "../support/odd-travelers.ts";

const folder = temporaryFolder();
afterAll(folder.remove);
const houseWell = projectFile("examples/house-well.traveler.json");

const sheetsIn = (name: string) => readdirSync(join(folder.path, name)).sort();
const sheet = (name: string, file: string) => readFileSync(join(folder.path, name, file), "utf8");

describe("bitwright map", () => {
  it("writes a map of the bed asked for and puts its best point inside every limit", () => {
    const { status, out } = bitwright("map", houseWell, "--bed", "gray shale", "--out", join(folder.path, "map"));
    expect(status).toBe(0);
    expect(out).toMatch(/best inside all limits/);
    expect(sheetsIn("map")).toEqual(["map-1.svg", "map-lines.csv", "map-rates.csv"]);
    expect(sheet("map", "map-1.svg")).toMatch(/<svg[\s\S]*<\/svg>\s*$/);
  });

  it("keeps out of the speeds it is told to avoid", () => {
    const speeds = ["--avoid", "95-130"];
    const { out } = bitwright("map", houseWell, "--bed", "gray shale", ...speeds);
    const [, rpm = ""] = /best inside all limits\s+[\d,]+ lbf\s+([\d.]+) rpm/.exec(out) ?? [];
    expect(Number(rpm)).toBeGreaterThan(0);
    expect(Number(rpm)).toBeLessThanOrEqual(95);
  });

  it("names the beds there are when asked for one that is not", () => {
    const { status, err } = bitwright("map", houseWell, "--bed", "chalk");
    expect(status).toBe(2);
    expect(err.trim().split("\n")).toHaveLength(1);
    expect(err).toMatch(/chalk.*gray shale/);
  });
});

describe("bitwright rank", () => {
  it("ranks the bits it is narrowed to and writes picture, table and specification", () => {
    const narrow = ["--cutter", "1308", "--wings", "4-5", "--bevel", "16,20", "--body", "steel"];
    const { status, out } = bitwright("rank", houseWell, ...narrow, "--out", join(folder.path, "rank"));
    expect(status).toBe(0);
    expect(out).toMatch(/^Cheapest: 1308, [45] wings, .* (16|20)° bevel, steel/);
    expect(out).toMatch(/of 12 candidates looked at/);
    expect(sheetsIn("rank")).toEqual(["best-bit.json", "candidates.csv", "choice.svg"]);
    expect(sheet("rank", "choice.svg")).toMatch(/<svg[\s\S]*<\/svg>\s*$/);
  });

  it("refuses options that are none, in one line", () => {
    for (const [option, value, message] of [
      ["--cutter", "1380", /--cutter: got "1380"; give codes of 0808/],
      ["--wings", "5-", /--wings: got "5-"; give counts/],
      ["--wings", "0", /--wings: got "0"/],
      ["--bevel", "18", /--bevel: got "18"; give bevels .*: 0, 12, 16, 20/],
      ["--body", "brass", /--body: got "brass"/],
    ] as const) {
      const { status, err } = bitwright("rank", houseWell, option, value);
      expect(status).toBe(2);
      expect(err.trim().split("\n")).toHaveLength(1);
      expect(err).toMatch(message);
    }
  });

  it("says so where the bit drills nothing", () => {
    const granite = folder.file("granite.json", ODD_TRAVELERS["only granite"]);
    expect(bitwright("rank", granite)).toMatchObject({
      status: 0,
      out: "No bed of this hole is drilled with this bit.\n",
    });
  });
});

describe("bitwright depth", () => {
  it("tells each joint of the bit's hole, and where the rig holds back", () => {
    const { status, out } = bitwright("depth", houseWell, "--out", join(folder.path, "depth"));
    expect(status).toBe(0);
    expect(out).toMatch(/push [\d,]+ lbf[\s\S]*hold back [\d,]+ lbf/);
    expect(sheetsIn("depth")).toEqual(["depth.csv", "rate-ceiling.svg", "weight-by-depth.svg"]);
    // Beds with a comma in their name stand in quotes; what they are called does not matter here.
    const [heads, ...rows] = sheet("depth", "depth.csv")
      .trim()
      .replace(/"[^"]*"/g, "a bed")
      .split("\n");
    const at = (row: string, head: string) => Number(row.split(",")[heads.split(",").indexOf(head)]);
    // Feed is the weight wanted less string and top head (900 lbf), the gauge 120 psi and 9.4 lbf for each psi: the traveler's.
    for (const row of rows) {
      const feed = at(row, "weight wanted [lbf]") - at(row, "string in fluid [lbf]") - 900;
      expect(Math.abs(at(row, "feed [lbf]") - feed)).toBeLessThan(1);
      expect(Math.abs(at(row, "feed gauge [psi]") - 120 - Math.abs(feed) / 9.4)).toBeLessThan(0.2);
    }
    expect(rows.length).toBeGreaterThan(10);
  });

  it("says so where the bit drills nothing", () => {
    const granite = folder.file("granite-depth.json", ODD_TRAVELERS["only granite"]);
    expect(bitwright("depth", granite).out).toBe("No bed of this hole is drilled with this bit.\n");
  });
});

describe("bitwright power", () => {
  it("tells what each bed asks of the engine, and draws it", () => {
    const { status, out, err } = bitwright("power", houseWell, "--out", join(folder.path, "power"));
    expect([status, err]).toEqual([0, ""]);
    expect(out).toMatch(/^ground +turning +mud pump/);
    expect(out).toMatch(/The engine is rated 150 hp/);
    expect(sheetsIn("power")).toEqual(["power.csv", "power.svg"]);
    const { beds, working } = JSON.parse(bitwright("power", houseWell, "--json").out);
    expect(beds).toHaveLength(4);
    expect(working.map(({ name }: { name: string }) => name)).toContain("mean fuel over the hole");
  });

  it("says so where the bit drills nothing", () => {
    const granite = folder.file("granite-power.json", ODD_TRAVELERS["only granite"]);
    expect(bitwright("power", granite).out).toBe("No bed of this hole is drilled with this bit.\n");
    expect(JSON.parse(bitwright("power", granite, "--json").out)).toEqual({ beds: [], findings: [], working: [] });
  });
});

describe("bitwright stability", () => {
  it("tells balance, boundaries and steady speeds, and draws each of them", () => {
    const { status, out, err } = bitwright(
      "stability",
      houseWell,
      "--bed",
      "limestone",
      "--speeds",
      "3",
      "--out",
      join(folder.path, "stability"),
    );
    expect(err).toBe("");
    expect(status).toBe(0);
    expect(out).toMatch(/^ground +side force +pushes/);
    expect(out).toMatch(/gray shale into limestone, medium hard/);
    expect(sheetsIn("stability")).toEqual([
      "crossing-2.svg",
      "crossings.csv",
      "side-force-2.svg",
      "speeds-2.svg",
      "speeds.csv",
      "stick-slip-2.svg",
    ]);
    const [heads, ...rows] = sheet("stability", "speeds.csv").trim().split("\n");
    expect(heads).toMatch(/^bed,rotary \[rpm\],/);
    // Three speeds from the slowest to the fastest that the rotary turns.
    expect(rows.map((row) => /,([\d.]+),/.exec(row)?.[1])).toEqual(["20.0", "70.0", "120.0"]);
    const crossings = sheet("stability", "crossings.csv").trim().split("\n");
    expect(crossings.length).toBeGreaterThan(20);
    for (const line of crossings) expect(line.split(",").length).toBeGreaterThanOrEqual(8);
    expect(sheet("stability", "side-force-2.svg")).not.toMatch(/\(155\.575 mm\) \(155\.575 mm\)/);
  });

  it("gives the same figures as JSON, in SI", () => {
    const { out } = bitwright("stability", houseWell, "--bed", "1", "--speeds", "2", "--json");
    const { beds } = JSON.parse(out);
    expect(beds).toHaveLength(1);
    expect(beds[0].name).toBe("gray shale");
    expect(beds[0].speeds.tried).toHaveLength(2);
    expect(beds[0].review).not.toHaveProperty("trace");
  });

  it("refuses one speed, and a bed that is not there", () => {
    const few = bitwright("stability", houseWell, "--speeds", "1");
    expect([few.status, few.err]).toEqual([2, '--speeds: got "1"; give a whole number from 2 to 200\n']);
    const none = bitwright("stability", houseWell, "--bed", "chalk");
    expect(none.status).toBe(2);
    expect(none.err).toMatch(/chalk.*gray shale/);
  });
});

describe("bitwright flow", () => {
  const change = ["--ports", "3 x 7/16 in", "--pumps", "2"];

  it("sets the present circuit beside the changed one, and draws both", () => {
    const { status, out, err } = bitwright("flow", houseWell, ...change, "--out", join(folder.path, "flow"));
    expect([status, err]).toEqual([0, ""]);
    expect(out).toMatch(/^ +now +changed\n/);
    expect(out).toMatch(/flow asked +150 gpm +300 gpm/);
    // The rating of the house well's pump is 250 psi; two pumps run into it.
    expect(out).toMatch(/pump pressure +[\d.]+ psi +250 psi/);
    expect(out).toMatch(/held by the pump's pressure rating/);
    expect(sheetsIn("flow")).toEqual(["flow-curves.csv", "flow.csv", "losses.svg", "pump.svg"]);
    const rows = sheet("flow", "flow.csv")
      .trim()
      .split("\n")
      .map((line) => line.split(","));
    const figure = (name: string) =>
      rows
        .find(([head]) => head === name)
        ?.slice(2)
        .map(Number) ?? [];
    for (const k of [0, 1]) {
      const losses = rows.filter(([head]) => head.startsWith("loss")).map((row) => Number(row[2 + k]));
      const sum = losses.reduce((total, loss) => total + loss, 0);
      expect(sum / figure("pump pressure")[k]).toBeCloseTo(1, 3);
    }
    // Port speed by hand: gallons of 231 in³ a minute through three round holes.
    const [, changed] = figure("flow that the pump gives");
    const speed = (changed * 231) / 60 / 12 / ((3 * Math.PI * (7 / 16) ** 2) / 4);
    expect(figure("port speed")[1] / speed).toBeCloseTo(1, 3);
  });

  it("shows the present circuit alone where nothing is changed, and the same figures as JSON in SI", () => {
    expect(bitwright("flow", houseWell).out).not.toMatch(/changed/);
    const study = JSON.parse(bitwright("flow", houseWell, ...change, "--json").out);
    expect(study.present.flow).toBeCloseTo((150 * 231 * 0.0254 ** 3) / 60, 9);
    expect(study.changed.heldBy).toBe("pressure rating");
  });

  it("says so where there is no liquid, and refuses ports and flows that are none", () => {
    const air = folder.file("air.json", ODD_TRAVELERS["air without a compressor"]);
    expect(bitwright("flow", air).out).toMatch(/drilled on air/);
    for (const [option, text, says] of [
      ["--ports", "three", /--ports: got "three"; give how many/],
      ["--ports", "3 x 9 in", /--ports: got "9 in"/],
      ["--pumps", "0", /--pumps: got "0"; give a whole number from 1 to 6/],
      ["--flow", "180", /--flow: got "180"/],
    ] as const) {
      const { status, err } = bitwright("flow", houseWell, option, text);
      expect(status).toBe(2);
      expect(err).toMatch(says);
    }
  });
});

describe("bitwright bands", () => {
  const run = (seed: string) => bitwright("bands", houseWell, "--samples", "40", "--seed", seed, "--json").out;

  it("gives the same draws for the same seed and others for another", () => {
    expect(run("3")).toBe(run("3"));
    expect(run("3")).not.toBe(run("4"));
  });

  it("keeps P10, P50 and P90 in order and writes picture and table", () => {
    const { status, out } = bitwright("bands", houseWell, "--samples", "40", "--out", join(folder.path, "bands"));
    expect(status).toBe(0);
    expect(out).toMatch(/P10 \/ P50 \/ P90/);
    expect(sheetsIn("bands")).toEqual(["bands.csv", "bands.svg"]);
  });

  it("refuses a count of samples that is none", () => {
    const { status, err } = bitwright("bands", houseWell, "--samples", "few");
    expect(status).toBe(2);
    expect(err).toMatch(/^--samples: got "few"/);
  });
});

describe("bitwright life", () => {
  it("marches a few holes and writes chart, curves and march", () => {
    const { status, out } = bitwright("life", houseWell, "--holes", "2", "--out", join(folder.path, "life"));
    expect(status).toBe(0);
    expect(out).toMatch(/order of magnitude/);
    expect(sheetsIn("life")).toEqual(["heat.svg", "life.csv", "life.svg"]);
  });

  it("draws lives over what is not known, the same for the same seed, and draws them as a sheet", () => {
    const run = (seed: string, ...more: string[]) =>
      bitwright("life", houseWell, "--holes", "3", "--samples", "4", "--seed", seed, ...more);
    const { status, out } = run("5", "--out", join(folder.path, "life-bands"));
    expect(status).toBe(0);
    expect(out).toMatch(/hole drilled +[\d,]+ ft \/ [\d,]+ ft \/ [\d,]+ ft/);
    expect(out).toMatch(/of 4 lives, seed 5/);
    expect(sheetsIn("life-bands")).toEqual(["heat.svg", "life-bands.svg", "life.csv", "life.svg"]);
    expect(run("5").out).toBe(run("5").out);
    expect(run("5").out).not.toBe(run("6").out);
    expect(bitwright("life", houseWell, "--samples", "none").err).toMatch(/^--samples: got "none"/);
  });

  it("wears sooner with a larger wear coefficient", () => {
    const feet = (factor: string) => {
      const [, text = ""] = /^([\d,]+) ft in/.exec(bitwright("life", houseWell, "--wear", factor).out) ?? [];
      return Number(text.replace(/,/g, ""));
    };
    expect(feet("4")).toBeGreaterThan(0);
    expect(feet("4")).toBeLessThan(feet("1"));
  });

  it("refuses half a hole", () => {
    const { status, err } = bitwright("life", houseWell, "--holes", "0.5");
    expect(status).toBe(2);
    expect(err).toMatch(/^--holes: got "0\.5"/);
  });
});
