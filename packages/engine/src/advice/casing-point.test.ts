import { describe, expect, it } from "vitest";
import { groundColumn } from "../ground/index.ts";
import { advisedBedOf } from "./advised-bed.ts";
import { casingPoint } from "./casing-point.ts";
import { fitOfBed } from "./fit-of-bed.ts";

const foot = 0.3048;

/** Fits of beds that follow each other from the surface, as `rock thickness-in-feet`. */
function fitsOf(...beds: readonly (readonly [rockId: string, thickness: number])[]) {
  let top = 0;
  const column = beds.map(([rockId, thickness], at) => {
    const bed = { name: `${rockId} ${at}`, rockId, top, bottom: top + thickness * foot };
    top = bed.bottom;
    return bed;
  });
  return groundColumn({ beds: column, fluidDensity: 1000 }).beds.map(advisedBedOf).map(fitOfBed);
}

describe("casingPoint", () => {
  it("puts the shoe 5 ft into the rock under the gravel that decides it", () => {
    const fits = fitsOf(["clay", 36], ["gravel", 8], ["shale", 100], ["limestone", 100]);
    const point = casingPoint({ fits, from: 0, to: 244 * foot });
    expect(point.answer).toBe("casing");
    expect(point.depth).toBeCloseTo(49 * foot, 9);
    expect(point.seatBed).toBe("shale 2");
    expect(point.bitIntervals).toEqual([{ top: point.depth, bottom: 244 * foot }]);
    expect(point.findings[0]).toMatchObject({ code: "casing-point", severity: "caution", value: point.depth });
    expect(point.findings[0]?.message).toContain("local code and licensed practice");
    expect(point.working[0]?.value).toBe(point.depth);
  });

  it("passes over a competent bed too thin to take the shoe", () => {
    const fits = fitsOf(["gravel", 10], ["shale", 4], ["limestone", 100]);
    expect(casingPoint({ fits, from: 0, to: 114 * foot }).depth).toBeCloseTo(19 * foot, 9);
  });

  it("does not seat casing in clay", () => {
    const fits = fitsOf(["sand", 20], ["clay", 40], ["shale", 100]);
    expect(casingPoint({ fits, from: 0, to: 160 * foot }).depth).toBeCloseTo(65 * foot, 9);
  });

  it("changes the tool at unfit rock deep in good rock, and goes on below it", () => {
    const fits = fitsOf(["shale", 300], ["chert", 10], ["shale", 90]);
    const point = casingPoint({ fits, from: 0, to: 400 * foot });
    expect(point.answer).toBe("change-tool");
    expect(point.depth).toBeUndefined();
    expect(point.findings).toHaveLength(1);
    expect(point.findings[0]).toMatchObject({ code: "unfit-in-hole", severity: "stop" });
    expect(point.findings[0]?.value).toBeCloseTo(300 * foot, 9);
    const lengths = point.bitIntervals.map(({ top, bottom }) => Math.round((bottom - top) / foot));
    expect(lengths).toEqual([300, 90]);
  });

  it("stops at unfit ground that reaches the bottom", () => {
    const fits = fitsOf(["shale", 200], ["granite", 100]);
    const point = casingPoint({ fits, from: 0, to: 300 * foot });
    expect(point.answer).toBe("change-tool");
    expect(point.bitIntervals).toHaveLength(1);
    expect(point.otherIntervals).toHaveLength(1);
  });

  it("cases gravel and still stops at granite below", () => {
    const fits = fitsOf(["gravel", 20], ["shale", 200], ["granite", 50]);
    const point = casingPoint({ fits, from: 0, to: 270 * foot });
    expect(point.answer).toBe("casing");
    expect(point.depth).toBeCloseTo(25 * foot, 9);
    expect(point.findings.map(({ code }) => code)).toEqual(["casing-point", "unfit-in-hole"]);
    expect(point.bitIntervals).toHaveLength(1);
  });

  it("has nothing to say of a hole that starts below the trouble", () => {
    const fits = fitsOf(["gravel", 20], ["shale", 200]);
    const point = casingPoint({ fits, from: 25 * foot, to: 220 * foot });
    expect(point.answer).toBe("none");
    expect(point.findings).toEqual([]);
    expect(point.reasons).toHaveLength(1);
  });

  it("warns of sand that no rock lies below", () => {
    const point = casingPoint({ fits: fitsOf(["clay", 20], ["sand", 30]), from: 0, to: 50 * foot });
    expect(point.answer).toBe("none");
    expect(point.findings.map(({ code }) => code)).toEqual(["wall-will-not-stand"]);
  });

  it("refuses beds out of order and a hole without length", () => {
    const [a, b] = fitsOf(["clay", 20], ["shale", 30]);
    if (!a || !b) throw new Error("no fits");
    expect(() => casingPoint({ fits: [b, a], from: 0, to: 10 })).toThrow(/order of depth/);
    expect(() => casingPoint({ fits: [a, b], from: 10, to: 10 })).toThrow("length must be positive, got 0");
  });
});
