import { describe, expect, it } from "vitest";
import { readLayoutFile } from "./layout-file.ts";
import { readRockFile } from "./rock-file.ts";

const cutter = {
  radius: 0.03,
  azimuth: 0,
  height: 0,
  profileAngle: 0,
  backRake: 0.2,
  sideRake: 0,
  faceDiameter: 0.01344,
};

const linesOf = (json: unknown) => {
  const read = readLayoutFile(json);
  return read.ok ? [] : read.problems.map((p) => p.message);
};

describe("readLayoutFile", () => {
  it("fills what may be left out and keeps the order of the cutters", () => {
    const read = readLayoutFile({ holeDiameter: 0.15, cutters: [cutter, { ...cutter, radius: 0.01, wing: 2 }] });
    expect(read.ok && read.value.cutters.map(({ radius, wing, length }) => [radius, wing, length])).toEqual([
      [0.03, 0, 0.008],
      [0.01, 2, 0.008],
    ]);
  });

  it("names field, value and range", () => {
    expect(linesOf({ holeDiameter: -0.1, cutters: [cutter] })).toEqual([
      "holeDiameter: got -0.1; give a number in m from 0.01 to 2",
    ]);
    expect(linesOf({ holeDiameter: 0.15, cutters: [cutter, { ...cutter, radius: "3 cm" }] })).toEqual([
      'cutters[1].radius: got "3 cm"; give a number in m from 0 to 1',
    ]);
    expect(linesOf({ holeDiameter: 0.15, cutters: [{ ...cutter, backRake: undefined }] })).toEqual([
      "cutters[0].backRake: nothing is given; give a number in rad from -1.2 to 1.2",
    ]);
    expect(linesOf({ holeDiameter: 0.15, cutters: [{ ...cutter, wornHeight: 0.02 }] })).toHaveLength(1);
  });

  it("refuses what is no layout", () => {
    expect(linesOf(null)).toHaveLength(1);
    expect(linesOf([])).toHaveLength(1);
    expect(linesOf({ holeDiameter: 0.15 })).toEqual(["cutters: got nothing; give a list of one cutter or more"]);
    expect(linesOf({ holeDiameter: 0.15, cutters: [7] })).toHaveLength(1);
  });
});

describe("readRockFile", () => {
  const rock = { specificEnergy: 6e7, contactStress: 6e7, faceFriction: 0.3, flatFriction: 0.3, kappa: 4 };
  it("reads the five constants", () => {
    expect(readRockFile({ ...rock, name: "shale" })).toEqual({ ok: true, value: rock });
  });
  it("names each constant that is missing", () => {
    const read = readRockFile({ specificEnergy: 6e7 });
    expect(read.ok ? [] : read.problems.map((p) => p.field)).toEqual([
      "contactStress",
      "faceFriction",
      "flatFriction",
      "kappa",
    ]);
  });
});
