import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cuttersOnWings, sweptAzimuth, wingAngles } from "./wing-plan.ts";

const deg = Math.PI / 180;

describe("wingAngles", () => {
  it("makes gaps that add up to a turn, no two alike when uneven", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 12 }), fc.double({ min: 0.2, max: 8, noNaN: true }), (wings, uneven) => {
        const angles = wingAngles({ wings, unevenness: uneven * deg });
        const gaps = angles.map((angle, at) => (angles[at + 1] ?? 2 * Math.PI) - angle);
        expect(gaps.reduce((sum, gap) => sum + gap, 0)).toBeCloseTo(2 * Math.PI, 9);
        for (const gap of gaps) expect(Math.abs(gap - (2 * Math.PI) / wings)).toBeLessThan(uneven * deg + 1e-9);
        expect(new Set(gaps.map((gap) => gap.toFixed(6))).size).toBe(wings);
      }),
    );
  });

  it("is even on request and takes angles as given", () => {
    expect(wingAngles({ wings: 4, unevenness: 0 }).map((angle) => Math.round(angle / deg))).toEqual([0, 90, 180, 270]);
    expect(wingAngles({ wings: 2, angles: [0, 2] })).toEqual([0, 2]);
    expect(() => wingAngles({ wings: 3, angles: [0, 2] })).toThrow("angles must be one for each of 3 wings, got 2");
    expect(() => wingAngles({ wings: 2.5 })).toThrow("wings must be a whole number of at least 1, got 2.5");
  });
});

it("lets the outer cutters trail with positive sweep", () => {
  expect(sweptAzimuth({ wingAngle: 1, sweep: 0.3, radiusShare: 1 })).toBeLessThan(
    sweptAzimuth({ wingAngle: 1, sweep: 0.3, radiusShare: 0.2 }),
  );
});

describe("cuttersOnWings", () => {
  it("gives the short wings one cutter less", () => {
    expect(cuttersOnWings({ wings: 4, centreWings: 2, cuttersPerWing: 3 }, 9)).toEqual([3, 3, 2, 2]);
    expect(cuttersOnWings({ wings: 3 }, 4)).toEqual([4, 4, 4]);
    expect(cuttersOnWings({ wings: 3, cuttersPerWing: [4, 3, 3] }, 9)).toEqual([4, 3, 3]);
  });
  it("refuses a list that does not fit the wings", () => {
    expect(() => cuttersOnWings({ wings: 3, cuttersPerWing: [4, 3] }, 9)).toThrow(/one for each of 3 wings, got 2/);
    expect(() => cuttersOnWings({ wings: 3, cuttersPerWing: 0 }, 9)).toThrow(/cuttersPerWing must be a whole number/);
  });
});
