import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { bitwright, bitwrightHere, projectFile, temporaryFolder } from "../support/command.ts";
import { schemaFaults } from "../support/json-schema.ts";
import { soundTraveler } from "../support/sound-traveler.ts";
import { spoilt } from "../support/spoilt.ts";
import { NOTHING_PRINTED, type WorkedUp, workedUp } from "../support/worked-up.ts";

const folder = temporaryFolder();
afterAll(folder.remove);

const examples = readdirSync(projectFile("examples")).filter((name) => name.endsWith(".traveler.json"));

describe("bitwright check", () => {
  it.each(examples)("finds %s sound and lists what is assumed in it", (name) => {
    const { status, out, err } = bitwright("check", projectFile(`examples/${name}`));
    expect([status, err]).toEqual([0, ""]);
    expect(out).toContain(": sound. ");
    expect(out).toMatch(/Assumed, because the traveler does not say \(\d+\):\n {2}inquiry\./);
    expect(out).not.toMatch(NOTHING_PRINTED);
  });

  it("prints the same as JSON", async () => {
    const file = projectFile(`examples/${examples[0]}`);
    const checked = JSON.parse((await bitwrightHere("check", file, "--json")).out);
    const [, count] = /does not say \((\d+)\)/.exec((await bitwrightHere("check", file)).out) ?? [];
    expect(checked.ok).toBe(true);
    expect(checked.job.name).toBe("Ridge Road house well");
    expect(checked.assumed).toHaveLength(Number(count));
  });

  it("remarks on a slip of a field's name and on gaps, and still finds the traveler sound", async () => {
    const slipped = spoilt(["inquiry", "pump"], { flwo: "90 gpm", pressureRating: "300 psi" });
    const { status, out } = await bitwrightHere("check", folder.file("slipped.json", slipped));
    expect(status).toBe(0);
    expect(out).toMatch(/inquiry\.pump\.flwo.*flow/);
    const gap = spoilt(["ground", "beds", 1], { top: "40 ft", bottom: "45 ft", rock: "gravel" });
    expect((await bitwrightHere("check", folder.file("gap.json", gap))).out).toMatch(/caution: .*38 ft to 40 ft/);
  });

  it("counts one bed as one", async () => {
    const one = { ...soundTraveler(), ground: { beds: [{ bottom: "300 ft", rock: "shale" }] } };
    expect((await bitwrightHere("check", folder.file("one.json", one))).out).toContain(", 1 bed.\n");
  });
});

describe("bitwright schema", () => {
  const { status, out, err } = bitwright("schema");
  const schema = JSON.parse(out);

  it("prints a JSON Schema of draft 2020-12", () => {
    expect([status, err]).toEqual([0, ""]);
    expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(schema.type).toBe("object");
  });

  it.each(examples)("takes %s", (name) => {
    const document = JSON.parse(readFileSync(projectFile(`examples/${name}`), "utf8"));
    expect(schemaFaults(schema, document)).toEqual([]);
  });

  it("takes the traveler of the tests, with every quantity also as value and unit", () => {
    expect(schemaFaults(schema, soundTraveler())).toEqual([]);
    const split = spoilt(["inquiry", "pump", "flow"], { value: 180, unit: "gpm" });
    expect(schemaFaults(schema, split)).toEqual([]);
  });

  it.each([
    ["no job", spoilt(["job"], undefined), "$: lacks job"],
    ["another mark", spoilt(["format"], "sheet"), '$.format: is not "bitwright-traveler"'],
    ["no holes", spoilt(["inquiry", "holes"], []), "$.inquiry.holes: holds fewer than 1"],
    ["half a wing", spoilt(["bit", "spec", "wings"], 4.5), "$.bit.spec.wings: is no integer"],
    ["a bare number", spoilt(["inquiry", "pump", "flow"], 180), "$.inquiry.pump.flow: fits none of the choices"],
    ["beds by name", spoilt(["ground", "beds"], { a: 1 }), "$.ground.beds: is no array"],
  ])("does not take %s, as the program does not", async (_, document, fault) => {
    expect(schemaFaults(schema, document)).toContain(fault);
    expect((await bitwrightHere("check", folder.file("spoilt.json", document))).status).toBe(2);
  });
});

describe.each(examples)("bitwright layout of %s", (name) => {
  const traveler = projectFile(`examples/${name}`);
  let job: WorkedUp;
  let layout: string;

  beforeAll(() => {
    job = workedUp(traveler, join(folder.path, name));
    layout = folder.file(`${name}.layout.json`, bitwright("layout", traveler).out);
  });

  it("prints the layout that work lays out, in metres and radians", async () => {
    expect(JSON.parse(readFileSync(layout, "utf8"))).toEqual(job.workup.bit.layout);
    expect((await bitwrightHere("layout", traveler, "--json")).out).toBe(readFileSync(layout, "utf8"));
  });

  it("goes into engage and gives the cut of the workup back", () => {
    const [{ drilling }] = job.workup.cut.beds;
    const advance = `${drilling.advance * 1000} mm`;
    const { status, out } = bitwright("engage", layout, "--advance", advance, "--json");
    expect(status).toBe(0);
    const { cutters, totalVolumePerRevolution, holeArea } = JSON.parse(out);
    expectClose(holeArea, Math.PI * drilling.holeRadius ** 2, 1e-12);
    expectClose(totalVolumePerRevolution, holeArea * drilling.advance, 2e-3);
    drilling.cutters.forEach(({ volume, areaOfCut }, at) => {
      expect(Math.abs(cutters[at].volumePerRevolution - volume)).toBeLessThan(1e-9 * totalVolumePerRevolution);
      expect(Math.abs(cutters[at].areaOfCut - areaOfCut)).toBeLessThan(1e-12);
    });
  });

  it("goes into drill with the answer of a bed and gives its rate, torque and energies back", async () => {
    const { beds } = job.workup.cut;
    for (const { ground, drilling, weight, rotarySpeed } of [beds[0], beds[beds.length - 1]]) {
      const rock = folder.file(`${name}.rock.json`, ground.response.mid);
      const rpm = String((rotarySpeed * 60) / (2 * Math.PI));
      const words = ["drill", layout, "--rock", rock, "--weight", `${weight} N`, "--rpm", rpm];
      const result = JSON.parse((await bitwrightHere(...words, "--json")).out);
      expectClose(result.weight, weight, 1e-9);
      expectClose(result.advance, drilling.advance, 1e-6);
      expectClose(result.rate, drilling.rate, 1e-6);
      expectClose(result.torque, drilling.bit.torque, 1e-6);
      expectClose(result.weightCutting, drilling.bit.cuttingWeight, 1e-6);
      expectClose(result.E, drilling.drillingEnergy, 1e-6);
      expectClose(result.S, drilling.drillingStrength, 1e-6);
      expectClose(result.MSE, drilling.mechanicalEnergy, 1e-6);
      expectClose(result.lateralForce, drilling.bit.lateralForce, 1e-5);
      const shown = await bitwrightHere(...words);
      expect([shown.status, shown.err]).toEqual([0, ""]);
      expect(shown.out).not.toMatch(NOTHING_PRINTED);
    }
  });
});
