import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { groundColumn } from "../ground/index.ts";
import { advisedBedOf } from "./advised-bed.ts";
import { breakInFor } from "./break-in.ts";
import { practiceRotarySpeed, practiceWeight, practiceWeightAndSpeed } from "./practice-weight-and-speed.ts";

const inch = 0.0254;
const poundForce = 4.4482216152605;
const rpm = (2 * Math.PI) / 60;
const MPa = 1e6;

const [shale] = groundColumn({
  beds: [{ name: "shale", rockId: "shale", top: 10, bottom: 40 }],
  fluidDensity: 1000,
}).beds.map(advisedBedOf);
if (!shale) throw new Error("no bed");

describe("rules of thumb", () => {
  it("puts a thousand pounds on each inch", () => {
    expect(practiceWeight(6.125 * inch) / poundForce).toBeCloseTo(6125, 6);
  });

  it("turns slower in harder ground, between 100 and 60 rpm", () => {
    expect(practiceRotarySpeed(5 * MPa) / rpm).toBeCloseTo(100, 9);
    expect(practiceRotarySpeed(60 * MPa) / rpm).toBeCloseTo(90, 9);
    expect(practiceRotarySpeed(100 * MPa) / rpm).toBeCloseTo(80, 9);
    expect(practiceRotarySpeed(125 * MPa) / rpm).toBeCloseTo(70, 9);
    expect(practiceRotarySpeed(300 * MPa) / rpm).toBeCloseTo(60, 9);
  });

  it("never turns faster in harder ground", () => {
    const strength = fc.double({ min: 1e4, max: 4e8, noNaN: true });
    fc.assert(
      fc.property(strength, strength, (one, other) => {
        const soft = practiceRotarySpeed(Math.min(one, other));
        expect(practiceRotarySpeed(Math.max(one, other))).toBeLessThanOrEqual(soft);
      }),
    );
  });

  it("carries the strength band of the bed into the speed", () => {
    const run = practiceWeightAndSpeed({ holeDiameter: 6.125 * inch, bed: shale });
    expect(run.rotarySpeedBand.low).toBeCloseTo(practiceRotarySpeed(shale.confinedStrength.high), 12);
    expect(run.rotarySpeedBand.high).toBeCloseTo(practiceRotarySpeed(shale.confinedStrength.low), 12);
    expect(run.working.map(({ value }) => value)).toEqual([run.weight, run.rotarySpeed]);
    expect(run.reasons.every(({ source }) => source.kind === "practice")).toBe(true);
  });

  it("refuses what has no size", () => {
    expect(() => practiceWeight(0)).toThrow("holeDiameter must be positive, got 0");
    expect(() => practiceRotarySpeed(-1)).toThrow("confinedStrength must be positive, got -1");
  });
});

describe("break-in", () => {
  it("is a third to a half of the weight at 40 to 60 rpm over a foot", () => {
    const start = breakInFor({ fullWeight: 6000, fullSpeed: 90 * rpm });
    expect(start.length).toBeCloseTo(0.3048, 12);
    expect([start.weight.low, start.weight.high]).toEqual([2000, 3000]);
    expect(start.rotarySpeed.low / rpm).toBeCloseTo(40, 9);
    expect(start.rotarySpeed.high / rpm).toBeCloseTo(60, 9);
  });

  it("never turns faster than the drilling that follows", () => {
    expect(breakInFor({ fullWeight: 6000, fullSpeed: 50 * rpm }).rotarySpeed.high / rpm).toBeCloseTo(50, 9);
    expect(breakInFor({ fullWeight: 6000, fullSpeed: 30 * rpm }).rotarySpeed.low / rpm).toBeCloseTo(30, 9);
  });
});
