/**
 * Check values of the trade for the advice. Every one of them is common practice, no source, unless another is named
 * beside it. Ranges are what a shop would expect to see, not figures of this program.
 */
import {
  type AdvisedBed,
  abrasivityClass,
  advisedBedOf,
  BREAK_IN_LENGTH,
  breakInFor,
  casingPoint,
  chooseBit,
  cuttersAbreast,
  fitOfBed,
  groundColumn,
  practiceRate,
  practiceRotarySpeed,
  practiceWeight,
  rockAbrasivityIndex,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { degree, foot, footPerHour, gpm, inch, MPa, mm, poundForce, ppg, psi, rpm } from "../support/field-units.ts";

interface Logged {
  readonly name?: string;
  readonly rockId?: string;
  readonly phrase?: string;
  readonly fromFt: number;
  readonly toFt: number;
}

function bedsOf(...logged: readonly Logged[]): AdvisedBed[] {
  const beds = logged.map(({ name, rockId, phrase, fromFt, toFt }) => ({
    name: name ?? phrase ?? rockId ?? "bed",
    top: fromFt * foot,
    bottom: toFt * foot,
    ...(rockId === undefined ? {} : { rockId }),
    ...(phrase === undefined ? {} : { phrase }),
  }));
  return groundColumn({ beds, fluidDensity: 8.6 * ppg, waterLevel: 30 * foot }).beds.map(advisedBedOf);
}

const verdictOf = (rockId: string) =>
  bedsOf({ rockId, fromFt: 50, toFt: 100 })
    .map(fitOfBed)
    .map(({ verdict }) => verdict)[0];

describe("which ground a PDC bit suits (common practice, no source)", () => {
  it.each(["shale", "limestone", "sandstone"])("suits %s", (rockId) => {
    expect(verdictOf(rockId)).toBe("fit");
  });

  it.each(["gravel", "boulders", "chert", "quartzite", "granite", "basalt"])("does not suit %s", (rockId) => {
    expect(verdictOf(rockId)).toBe("unfit");
  });

  it("makes hard abrasive sandstone a poor choice, to be drilled with care at best", () => {
    expect(verdictOf("hard-sandstone")).not.toBe("fit");
  });

  it("reads a driller's own words the same way", () => {
    const fits = bedsOf(
      { phrase: "yellow clay", fromFt: 0, toFt: 30 },
      { phrase: "chert gravel", fromFt: 30, toFt: 40 },
      { phrase: "gray shale", fromFt: 40, toFt: 120 },
      { phrase: "limestone", fromFt: 120, toFt: 200 },
      { phrase: "granite", fromFt: 200, toFt: 220 },
    ).map(fitOfBed);
    expect(fits.map(({ verdict }) => verdict)).toEqual(["fit", "unfit", "fit", "fit", "unfit"]);
  });

  it("sends granite to the hammer and gravel behind casing", () => {
    const first = (rockId: string) => bedsOf({ rockId, fromFt: 50, toFt: 80 }).map(fitOfBed)[0]?.insteadUse[0]?.tool;
    expect(first("granite")).toBe("down-hole hammer");
    expect(first("gravel")).toBe("casing advance");
  });

  it("takes rock by its class of abrasivity: 150 MPa with 55 % of quartz is very abrasive", () => {
    // Plinninger 2010, recalled: index 82.5, class 60 to 120
    const index = rockAbrasivityIndex({ ucs: 150 * MPa, equivalentQuartz: 0.55 });
    expectClose(index, 82.5, 1e-9);
    expect(abrasivityClass(index)).toBe("very abrasive");
    const [limestone] = bedsOf({ rockId: "limestone", fromFt: 50, toFt: 100 });
    if (!limestone) throw new Error("no bed");
    const soft = { low: 40 * MPa, mid: 50 * MPa, high: 60 * MPa };
    const abrasive = { ...limestone, confinedStrength: soft, abrasivityIndex: { low: index, mid: index, high: index } };
    expect(fitOfBed(abrasive).verdict).toBe("fit-with-care");
  });
});

describe("casing point (common practice, no source)", () => {
  it("lets a chert-gravel bed near 40 ft decide where the casing goes", () => {
    const fits = bedsOf(
      { rockId: "clay", fromFt: 0, toFt: 36 },
      { name: "chert gravel", rockId: "gravel", fromFt: 36, toFt: 44 },
      { rockId: "shale", fromFt: 44, toFt: 150 },
      { rockId: "limestone", fromFt: 150, toFt: 230 },
      { rockId: "sandstone", fromFt: 230, toFt: 300 },
    ).map(fitOfBed);
    const point = casingPoint({ fits, from: 0, to: 300 * foot });
    expect(point.answer).toBe("casing");
    expect(point.seatBed).toBe("shale");
    expect((point.depth ?? 0) / foot).toBeGreaterThan(44);
    expect((point.depth ?? 0) / foot).toBeLessThan(60);
  });
});

describe("weight, speed and break-in (common practice, no source)", () => {
  it("is about 1,000 lb for each inch of diameter, pipe weight included", () => {
    expectClose(practiceWeight(6.125 * inch), 6125 * poundForce, 1e-9);
    expectClose(practiceWeight(4.75 * inch), 4750 * poundForce, 1e-9);
  });

  it("is 80 to 100 rpm in ground that suits the bit, slower in hard ground", () => {
    for (const strength of [10, 40, 70, 99]) {
      expect(practiceRotarySpeed(strength * MPa) / rpm).toBeGreaterThanOrEqual(80);
      expect(practiceRotarySpeed(strength * MPa) / rpm).toBeLessThanOrEqual(100.000001);
    }
    expect(practiceRotarySpeed(140 * MPa) / rpm).toBeLessThan(80);
  });

  it("starts a bit at a third to a half of the weight, 40 to 60 rpm, over the first foot or so", () => {
    const { weight, rotarySpeed } = breakInFor({ fullWeight: 6000 * poundForce, fullSpeed: 90 * rpm });
    expectClose(weight.low, 2000 * poundForce, 1e-9);
    expectClose(weight.high, 3000 * poundForce, 1e-9);
    expectClose(rotarySpeed.low, 40 * rpm, 1e-9);
    expectClose(rotarySpeed.high, 60 * rpm, 1e-9);
    expect(BREAK_IN_LENGTH / inch).toBeGreaterThanOrEqual(6);
    expect(BREAK_IN_LENGTH / inch).toBeLessThanOrEqual(12.000001);
  });

  it("expects 60 to 200 ft/h in shale and 15 to 50 in hard limestone in the 6 in class", () => {
    const [shale, limestone] = bedsOf(
      { rockId: "shale", fromFt: 50, toFt: 100 },
      { rockId: "limestone", fromFt: 100, toFt: 150 },
    ).map(practiceRate);
    expectClose(shale?.low ?? 0, 60 * footPerHour, 1e-9);
    expectClose(shale?.high ?? 0, 200 * footPerHour, 1e-9);
    expectClose(limestone?.low ?? 0, 15 * footPerHour, 1e-9);
    expectClose(limestone?.high ?? 0, 50 * footPerHour, 1e-9);
  });
});

describe("the bit (common practice, no source, but for cutter size by ground: unnamed trade sheet)", () => {
  const choose = (beds: readonly AdvisedBed[], holeIn: number, flowGpm: number) =>
    chooseBit({
      holeDiameter: holeIn * inch,
      beds,
      from: beds[0]?.top ?? 0,
      to: beds.at(-1)?.bottom ?? 0,
      fluid: "bentonite",
      density: 8.6 * ppg,
      pump: { flow: flowGpm * gpm, pressureForBit: 150 * psi },
    });
  const usual = bedsOf(
    { rockId: "shale", fromFt: 50, toFt: 150 },
    { rockId: "limestone", fromFt: 150, toFt: 230 },
    { rockId: "sandstone", fromFt: 230, toFt: 300 },
  );
  const only = (rockId: string) => bedsOf({ rockId, fromFt: 50, toFt: 150 });

  it("uses the usual cutters, 13 x 8 and 16 x 8 mm, in house wells and loop holes", () => {
    expect(["1308", "1608"]).toContain(choose(usual, 6.125, 150).cutter.value.code);
    expect(choose(usual, 4.75, 90).cutter.value.code).toBe("1308");
  });

  it("goes from 19 mm in soft ground over 16 to 13 in hard, where the hole has room", () => {
    expect(choose(only("clay"), 8.75, 300).cutter.value.code).toBe("1908");
    expect(choose(only("shale"), 8.75, 300).cutter.value.code).toBe("1608");
    expect(choose(only("hard-sandstone"), 8.75, 300).cutter.value.code).toBe("1308");
  });

  it("bevels 0 in soft ground only, 12 for speed, 16 as the usual balance, 20 in harder ground", () => {
    const bevel = (rockId: string) => Math.round(choose(only(rockId), 6.125, 150).chamfer.value.angle / degree);
    expect(bevel("clay")).toBe(0);
    expect(bevel("shale")).toBe(12);
    expect(bevel("limestone")).toBe(16);
    expect(bevel("hard-sandstone")).toBe(20);
  });

  it("keeps bevel widths of 0.25 to 0.64 mm wherever there is a bevel", () => {
    for (const rockId of ["shale", "limestone", "hard-sandstone"]) {
      const { width } = choose(only(rockId), 6.125, 150).chamfer.value;
      expect(width).toBeGreaterThanOrEqual(0.25 * mm);
      expect(width).toBeLessThanOrEqual(0.64 * mm);
    }
  });

  it("rakes back near 10 degrees", () => {
    // Least cutting force near 10 degrees: ASME J. Energy Resour. Technol. 114:323, 1992, read in an abstract
    expectClose(choose(usual, 6.125, 150).backRake.value.centre, 10 * degree, 1e-9);
  });

  it("sets five wings of three, swept, with big ports that rarely plug", () => {
    const bit = choose(usual, 6.125, 150);
    expect(bit.wings.value).toEqual({ wings: 5, cuttersPerWing: 3 });
    expect(bit.sweep.value).toBeGreaterThan(0);
    expect(bit.ports.value.diameter / inch).toBeGreaterThanOrEqual(0.499999);
    expect(bit.wings.alternatives.find(({ what }) => what === "6 wings")?.why).toContain("plugs");
  });

  it("leaches where the ground wears", () => {
    expect(choose(only("hard-sandstone"), 6.125, 150).leached.value).toBe(true);
    expect(choose(only("shale"), 6.125, 150).leached.value).toBe(false);
  });

  it("warns that low-grade matrix erodes and sheds wings", () => {
    const { body } = choose(usual, 6.125, 150);
    expect(body.alternatives.map(({ why }) => why).join()).toContain("sheds wings");
  });

  it("seats 0.43 to 0.51 in cutters three abreast in a 3.75 in bit, as the laboratory bits do", () => {
    // Geothermal laboratory bits: 3.75 in, 4-5 blades, face cutters of 0.43-0.51 in, read
    for (const cutterIn of [0.43, 0.51]) {
      const count = cuttersAbreast({ holeDiameter: 3.75 * inch, cutterDiameter: cutterIn * inch });
      expect(count).toBeGreaterThanOrEqual(3);
    }
  });
});
