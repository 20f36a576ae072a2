import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Workup } from "@bitwright/traveler";
import { afterAll, describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { bitwrightHere, temporaryFolder } from "../support/command.ts";
import { inch, poundForce } from "../support/field-units.ts";
import { ODD_TRAVELERS, type OddTraveler } from "../support/odd-travelers.ts";
import { flat, NOTHING_PRINTED, remarksIn, SHEETS, type SheetName } from "../support/worked-up.ts";
import { xmlTree } from "../support/xml-tree.ts";

const folder = temporaryFolder();
afterAll(folder.remove);

interface OddJob {
  readonly workup: Workup;
  /** What the terminal shows, on one line. */
  readonly shown: string;
  readonly card: string;
}

const done = new Map<OddTraveler, Promise<OddJob>>();

/** Works an odd traveler up once, by the command, and holds what it wrote to what every job has to keep to. */
function worked(name: OddTraveler): Promise<OddJob> {
  const job = done.get(name) ?? workedAnew(name);
  done.set(name, job);
  return job;
}

async function workedAnew(name: OddTraveler): Promise<OddJob> {
  const file = folder.file(`${name.replace(/\W+/g, "-")}.json`, ODD_TRAVELERS[name]);
  const out = join(folder.path, name);
  const { status, out: text, err } = await bitwrightHere("work", file, "--out", out);
  expect([status, err]).toEqual([0, ""]);
  const read = (sheet: SheetName) => readFileSync(join(out, sheet), "utf8");
  for (const sheet of [text, ...SHEETS.map(read)]) expect(sheet).not.toMatch(NOTHING_PRINTED);
  return { workup: JSON.parse(read("workup.json")), shown: flat(text), card: read("card.txt") };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe.each(Object.keys(ODD_TRAVELERS) as OddTraveler[])("%s", (name) => {
  it("is worked up to sheets that hold together", async () => {
    const { workup, card } = await worked(name);
    const { rig, pump, bitHole } = workup.inquiry.inquiry;
    for (const sheet of ["face.svg", "profile.svg"]) xmlTree(readFileSync(join(folder.path, name, sheet), "utf8"));
    const lines = card.trimEnd().split("\n");
    expect(lines.length).toBeLessThanOrEqual(66);
    expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(80);
    const rule = (1000 * poundForce * bitHole.diameter) / inch;
    for (const { weight } of workup.card.rows) {
      if (weight) expect(weight.to ?? weight.value).toBeLessThanOrEqual(1.25 * rule);
    }
    for (const { drilling, weight, rotarySpeed, rate } of workup.cut.beds) {
      expectClose(sum(drilling.cutters.map(({ axial }) => axial)), weight, 1e-6);
      expect(drilling.bit.torque).toBeLessThanOrEqual(rig.torque * 1.000001);
      expectClose(drilling.rate, (drilling.advance * rotarySpeed) / (2 * Math.PI), 1e-9);
      // The weight that is worked with gives the rate that is shown.
      expectClose(rate.mid, drilling.rate, 1e-6);
    }
    for (const { feedForce, hangingWeight, targetWeight } of workup.string?.joints ?? []) {
      expect(Math.abs(feedForce + hangingWeight + rig.topHeadWeight - rig.drag - targetWeight)).toBeLessThan(1e-6);
    }
    const ceiling = workup.flow.circuit?.cleaning.rateCeiling.mid ?? 0;
    if (ceiling > 0) for (const { rate } of workup.cut.beds) expect(rate.high).toBeLessThanOrEqual(ceiling);
    // A centrifugal pump is not pushed over its curve: it gives less.
    const over = !pump.pumpCurve && (workup.flow.circuit?.pumpPressure ?? 0) > pump.pressureRating;
    expect(workup.findings.some(({ code }) => code === "flow.pump-pressure") || !over).toBe(true);
    for (const { message, source } of remarksIn(workup).findings) {
      expect(message).not.toBe("");
      expect(source.cite).toBeTruthy();
    }
  });
});

describe("an odd job says what is odd", () => {
  const assumed = async (name: OddTraveler) => (await worked(name)).workup.assumed.map(({ field }) => field);
  const codes = async (name: OddTraveler) => (await worked(name)).workup.findings.map(({ code }) => code);

  it("minimal: everything else is assumed, and listed", async () => {
    const fields = await assumed("minimal");
    expect(fields).toEqual(
      expect.arrayContaining(["inquiry.pump.flow", "inquiry.rig.pullDown", "inquiry.fluid.kind", "inquiry.pipe.bore"]),
    );
  });

  it("air: no pump flow on the card, the least air in its place, a stop where the compressor falls short", async () => {
    const { card, workup, shown } = await worked("air with its compressor");
    expect(card).toMatch(/Air: at least \d+ cfm of free air/);
    expect(card).not.toContain("gpm");
    expect(workup.flow.circuit).toBeUndefined();
    expect(shown).toMatch(/NOTE flow: The compressor lifts the chips .*\[750 cfm, limit \d+ cfm\]/);
    expect((await worked("air without a compressor")).shown).toMatch(/STOP flow: .*\[limit \d+ cfm\]/);
  });

  it("foam: its air by the column of the foam, and how poor that is said", async () => {
    const { card, shown } = await worked("foam");
    expect(card).toMatch(/Foam: at least [\d.]+ cfm of free air/);
    expect(shown).toMatch(/The foam is [\d.]+ % gas at the bottom/);
    expect(shown).toContain("Foam is reckoned by the weight of its column alone");
    expect(shown).toMatch(/inquiry\.fluid\.injection: 10 gpm/);
  });

  it("no gauge factor: forces alone, and said so", async () => {
    const { card, shown, workup } = await worked("no gauge factor");
    expect(card).toContain("No gauge readings");
    expect(shown).not.toContain("feed gauge");
    expect(workup.string?.joints.every(({ gaugeReading }) => gaugeReading === undefined)).toBe(true);
  });

  it("collars: their weight counts at the bottom of the string", async () => {
    const last = async (name: OddTraveler) => (await worked(name)).workup.string?.joints.at(-1)?.hangingWeight ?? 0;
    // 90 ft of 46.7 lb/ft in place of 13.3 lb/ft, in fluid of 8.6 ppg, which takes 8.6/65.5 of the weight off.
    const heavier = 90 * (46.7 - 13.3) * poundForce * (1 - 8.6 / 65.5);
    expectClose((await last("heavy collars")) - (await last("no collars")), heavier, 2e-3);
  });

  it.each<OddTraveler>(["only gravel", "only granite"])("%s: a plain no and what to use instead", async (name) => {
    const { shown, card, workup } = await worked(name);
    expect(shown).toMatch(/No\. Nothing in this hole is ground for a PDC bit\. Use instead: .*hammer/);
    expect(card).toContain("! DO NOT RUN THIS BIT IN THIS HOLE.");
    expect(card).not.toMatch(/BREAK-IN|PULL DOWN|HOLD BACK/);
    expect(workup.cut.beds).toEqual([]);
    expect(workup.string).toBeUndefined();
  });

  it("only clay: a drag blade costs less, and the weight is under what a gauge shows", async () => {
    const { shown, card } = await worked("only clay");
    expect(shown).toContain("a drag blade does the same for less money");
    expect(card).toMatch(/clay +by rate/);
  });

  it("quartzite between shales: the shales are drilled, the quartzite is not", async () => {
    const { workup, shown, card } = await worked("quartzite between shales");
    expect(workup.cut.beds.map(({ bed }) => bed.name)).toEqual(["shale", "shale"]);
    expect(shown).toMatch(/Yes, 0 to 100 ft and 200 to 300 ft\. Not in quartzite\./);
    expect(card).toMatch(/100 +200 quartzite: NOT THIS BIT/);
    expect(workup.string?.joints.every(({ depth }) => depth <= 100 * 0.3048 || depth > 200 * 0.3048)).toBe(true);
  });

  it("a phrase that names nothing: with care, and the words repeated", async () => {
    const { workup, shown } = await worked("a phrase that names nothing");
    expect(workup.advice.fits.map(({ verdict }) => verdict)).toEqual(["fit-with-care"]);
    expect(shown).toMatch(/"blue stuff" names no ground/);
  });

  it("sizes outside the advice: said so; a 3 in bit gets small cutters, a 12 in bit large ones", async () => {
    expect(await codes("17 1/2 in hole")).toContain("hole-outside-advice");
    const faces = async (name: OddTraveler) => (await worked(name)).workup.bit.layout.cutters[0].faceDiameter;
    expect(await faces("3 in hole")).toBeLessThan(await faces("12 in hole"));
  });

  it("beds that end above the bottom: the last is taken to go on, and that is listed", async () => {
    expect(await assumed("beds that end above the bottom")).toContain("ground.beds[0].bottom");
  });

  it("a gap between beds: left out and said so", async () => {
    const { workup, shown } = await worked("a gap between beds");
    expect(shown).toContain("Nothing is said of the ground from 180 ft to 200 ft");
    expect(workup.string?.joints.some(({ depth }) => depth > 180.01 * 0.3048 && depth <= 200 * 0.3048)).toBe(false);
  });

  it("a bit for the upper hole: beds below it are told apart and not drilled", async () => {
    const { shown, workup } = await worked("a bit for the upper hole");
    expect(shown).toContain("(below the bit's hole)");
    expect(workup.cut.beds.every(({ bed }) => bed.bottom <= workup.inquiry.inquiry.bitHole.to + 1e-9)).toBe(true);
  });

  it("a very deep hole: the table of joints stays readable, the card on its page", async () => {
    const { shown, workup } = await worked("a very deep hole");
    expect(workup.string?.joints.length).toBeGreaterThan(250);
    expect(shown).toMatch(/\d\d of \d+ joints are shown/);
  });

  it("weight, speed and flow by hand: worked with", async () => {
    for (const { weight } of (await worked("weight by hand")).workup.cut.beds) {
      expect(weight).toBeLessThanOrEqual(3000.001 * poundForce);
    }
    for (const { rotarySpeed } of (await worked("speed by hand")).workup.cut.beds) {
      expectClose(rotarySpeed, 2 * Math.PI, 1e-9);
    }
    expectClose((await worked("flow by hand")).workup.flow.flow, (90 * 231 * inch ** 3) / 60, 1e-9);
  });

  it("limits by hand: no bed passes them", async () => {
    for (const { drilling, rate } of (await worked("limits and rocks by hand")).workup.cut.beds) {
      expect(rate.high).toBeLessThanOrEqual((60.001 * 0.3048) / 3600);
      expect(drilling.bit.torque).toBeLessThanOrEqual(600.001 * poundForce * 0.3048);
    }
  });

  it("rock and cutter of the shop's own: used under their names", async () => {
    const { workup, shown } = await worked("rock and cutter of the shop's own");
    expectClose(workup.bit.layout.cutters[0].faceDiameter, 0.014, 1e-9);
    expectClose(workup.ground.beds[0].ucs.mid, (3500 * poundForce) / inch ** 2, 1e-9);
    expect(shown).toContain("Hollin blue shale");
  });

  it("one measured cutter: a stop, for most of the hole is not cut", async () => {
    const { workup } = await worked("one measured cutter");
    expect(workup.findings[0].severity).toBe("stop");
  });
});
