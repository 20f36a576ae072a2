import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { bitwright, bitwrightHere, type CommandRun, projectFile, temporaryFolder } from "../support/command.ts";
import { soundTraveler } from "../support/sound-traveler.ts";
import { type Path, spoilt } from "../support/spoilt.ts";

const folder = temporaryFolder();
afterAll(folder.remove);

const sound = JSON.stringify(soundTraveler(), null, 2);
/** The sound traveler's text with one piece of it written otherwise. */
const rewritten = (from: string, to: string) => {
  expect(sound).toContain(from);
  return sound.replace(from, to);
};
const bytes = (...values: readonly number[]) => Uint8Array.from(values);
const row = { radius: 20, azimuth: 0, height: 0, backRake: 15, cutter: "1308" };
const bed = (at: number, field: string): Path => ["ground", "beds", at, field];

/** What is wrong, the file or its text, and what the one line must say: the field, the value, what is accepted. */
const cases: readonly (readonly [string, unknown, readonly (string | RegExp)[]])[] = [
  ["broken JSON", rewritten('"version": 1,', '"version": 1,,'), ["not JSON at line 3, column 16", "give a traveler"]],
  ["a text that ends too soon", sound.slice(0, 200), ["not JSON at line", "ends"]],
  ["single quotes", sound.replaceAll('"', "'"), ["line 2, column 3", "double quotes"]],
  ["an empty file", "", ["the file is empty", "give a traveler"]],
  ["a binary file", bytes(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0xff), ["no text", "UTF-8"]],
  ["text with zero bytes", bytes(0x7b, 0, 0x7d), ["no text", "UTF-8"]],
  ["a list instead of a traveler", [], ["got []", "give a traveler, a group of fields"]],
  ["a workup", { format: "bitwright-workup", version: 1 }, ["format", '"bitwright-workup"', '"bitwright-traveler"']],
  ["a newer version", spoilt(["version"], 9), ["version", "newer Bitwright (version 9)", "up to version 1"]],
  ["no job", spoilt(["job"], undefined), ["job: nothing is given", "give"]],
  ["no holes", spoilt(["inquiry", "holes"], []), ["inquiry.holes: got []", "at least one"]],
  ["an unknown rock", spoilt(bed(2, "rock"), "shael"), ["ground.beds[2].rock", '"shael"', "did you mean shale"]],
  [
    "overlapping beds",
    spoilt(bed(3, "top"), "170 ft"),
    ["ground.beds[3].top", '"170 ft"', "inside the bed before it (down to 180 ft)", "give 180 ft or deeper"],
  ],
  ["a bed upside down", spoilt(bed(1, "bottom"), "30 ft"), ["ground.beds[1].bottom", '"30 ft"', "give a depth below"]],
  ["a negative depth", spoilt(bed(0, "top"), "-3 ft"), ["ground.beds[0].top", '"-3 ft"', "below zero", "give"]],
  ["a unit of another kind", spoilt(["inquiry", "pump", "flow"], "150 psi"), ["inquiry.pump.flow", '"150 psi"', "gpm"]],
  ["a bare number", spoilt(["inquiry", "pump", "flow"], 150), ["inquiry.pump.flow", "150", "without a unit", "gpm"]],
  ["NaN as JSON", rewritten('"180 gpm"', "NaN"), ["not JSON at line", "NaN is no number"]],
  ["NaN as text", spoilt(["inquiry", "pump", "flow"], "NaN gpm"), ["inquiry.pump.flow", '"NaN gpm"', "give"]],
  ["infinity", spoilt(["inquiry", "rig", "torque"], "1e999 ft-lbf"), ["inquiry.rig.torque", '"1e999 ft-lbf"', "give"]],
  ["no wings", spoilt(["bit", "spec", "wings"], 0), ["bit.spec.wings: got 0", "from 1 to 16"]],
  [
    "spec and measured at once",
    spoilt(["bit", "measured"], { rows: [row] }),
    ["bit: got spec and measured", "not both"],
  ],
  ["an unknown cutter", spoilt(["bit", "spec", "cutter"], "1380"), ["bit.spec.cutter", '"1380"', "did you mean 1308"]],
  [
    "a pipe larger than the hole",
    spoilt(["inquiry", "pipe", "outsideDiameter"], "7 in"),
    ["inquiry.pipe.outsideDiameter", '"7 in"', "hole of 6 1/8 in", "give"],
  ],
  [
    "collars larger than the hole",
    spoilt(["inquiry", "collars", 0, "outsideDiameter"], "6 1/2 in"),
    ["collars[0]", "give"],
  ],
  [
    "a measured bit of no rows",
    spoilt(["bit"], { measured: { rows: [] } }),
    ["bit.measured.rows: got []", "at least one"],
  ],
  ["a weight of the wrong kind", spoilt(["overrides"], { weight: "90 rpm" }), ["overrides.weight", '"90 rpm"', "lbf"]],
  ["an unknown fluid", spoilt(["inquiry", "fluid", "kind"], "mud"), ["inquiry.fluid.kind", '"mud"', "bentonite"]],
];

function expectOneLine({ status, out, err }: CommandRun, words: readonly (string | RegExp)[]): void {
  expect(out).toBe("");
  const lines = err.trimEnd().split("\n");
  expect(lines, err).toHaveLength(1);
  for (const word of words) {
    if (typeof word === "string") expect(lines[0]).toContain(word);
    else expect(lines[0]).toMatch(word);
  }
  expect(lines[0]).not.toMatch(/\bat .*:\d+:\d+|node:|undefined|\[object|RangeError|TypeError/);
  expect(lines[0]).not.toMatch(/\p{Cc}|\ufffd/u);
  expect(status).toBe(2);
}

describe("a bad traveler ends in one clear line, status 2, and nothing written", () => {
  it.each(cases)("%s", async (name, content, words) => {
    const file = join(folder.path, `${name.replaceAll(" ", "-")}.json`);
    const plain = typeof content === "string" || content instanceof Uint8Array;
    writeFileSync(file, plain ? content : JSON.stringify(content));
    const out = join(folder.path, `${name.replaceAll(" ", "-")}-out`);
    const worked = bitwright("work", file, "--out", out);
    expectOneLine(worked, [`${file}: `, ...words]);
    expect(existsSync(out)).toBe(false);
    expect(await bitwrightHere("check", file)).toEqual(worked);
  });

  it.each(["check", "layout", "work"])("%s of a folder, of no file, and of a path through a file", async (command) => {
    expectOneLine(bitwright(command, folder.path), ["this is a folder, a file is needed"]);
    const nowhere = join(folder.path, "nowhere.json");
    expectOneLine(await bitwrightHere(command, nowhere), ["nowhere.json: there is no such file"]);
    const file = folder.file("plain.json", sound);
    expectOneLine(await bitwrightHere(command, join(file, "deeper.json")), ["a part of the path is a file"]);
  });

  it("tells two problems in two lines", async () => {
    const two = spoilt(["bit", "spec", "wings"], 0, spoilt(["inquiry", "pump", "flow"], 150));
    const { status, err } = await bitwrightHere("work", folder.file("two.json", two));
    expect(status).toBe(2);
    expect(err.trimEnd().split("\n")).toEqual([
      expect.stringMatching(/two\.json: inquiry\.pump\.flow: got 150 /),
      expect.stringMatching(/two\.json: bit\.spec\.wings: got 0; /),
    ]);
  });
});

describe("a place to write that cannot be written ends in one clear line", () => {
  const traveler = projectFile("examples/loop-hole.traveler.json");

  it("out folder that is a file", async () => {
    const file = folder.file("taken", "mine");
    expectOneLine(bitwright("work", traveler, "--out", file), [`${file}`, "a file stands where a folder is needed"]);
    const under = await bitwrightHere("work", traveler, "--out", join(file, "under"));
    expectOneLine(under, ["a part of the path is a file"]);
    expect(readFileSync(file, "utf8")).toBe("mine");
  });

  it("a folder that stands where a sheet is to go", async () => {
    const out = join(folder.path, "crowded");
    mkdirSync(join(out, "workup.json"), { recursive: true });
    expectOneLine(await bitwrightHere("work", traveler, "--out", out), ["workup.json: this is a folder"]);
  });
});

describe("bad words on the command line end in one clear line", () => {
  const traveler = projectFile("examples/loop-hole.traveler.json");
  it.each([
    ["no traveler", ["work"], "missing required argument 'traveler'"],
    ["two travelers", ["work", traveler, traveler], "too many arguments"],
    ["an unknown option", ["work", traveler, "--outt", "x"], "unknown option '--outt' (Did you mean --out?)"],
    ["an option without its value", ["work", traveler, "--out"], "argument missing"],
    ["unknown units", ["check", traveler, "--units", "both"], '--units: got "both"; give field or metric'],
    ["an unknown command", ["wrok", traveler], "unknown command 'wrok' (Did you mean work?)"],
  ])("%s", async (_, words, line) => {
    expectOneLine(await bitwrightHere(...words), [line]);
  });
});

describe("files saved by older editors", () => {
  it("reads a traveler with a byte-order mark, in UTF-8 and in UTF-16", async () => {
    const file = join(folder.path, "marked.json");
    const run = (content: Uint8Array) => {
      writeFileSync(file, content);
      return bitwrightHere("check", file);
    };
    const utf16 = Buffer.from(`\ufeff${sound}`, "utf16le");
    const plain = await run(Buffer.from(sound));
    expect(plain.status).toBe(0);
    expect(await run(Buffer.from(`\ufeff${sound}`))).toEqual(plain);
    expect(await run(utf16)).toEqual(plain);
    expect(await run(Buffer.from(utf16).swap16())).toEqual(plain);
  });
});
