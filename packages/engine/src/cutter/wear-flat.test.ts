import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { carbideFlatArea, carbideRubs, wearFlat, wearGrade, wornHeightOfFlat } from "./wear-flat.ts";

const deg = Math.PI / 180;
const worn = fc.record({
  faceDiameter: fc.double({ min: 0.008, max: 0.02, noNaN: true }),
  length: fc.double({ min: 0.004, max: 0.017, noNaN: true }),
  share: fc.double({ min: 0.01, max: 0.95, noNaN: true }),
  backRake: fc.double({ min: 0.5 * deg, max: 45 * deg, noNaN: true }),
});

/** Adds up strips of the face over a depth below the chord of the flat, each `weigh`ed by that depth. */
function strips(
  { faceDiameter, wornHeight }: Parameters<typeof wearFlat>[0],
  deepest: number,
  weigh: (depth: number) => number,
): number {
  const radius = faceDiameter / 2;
  const count = 20_000;
  let sum = 0;
  for (let at = 0; at < count; at++) {
    const depth = ((at + 0.5) * deepest) / count;
    const y = radius - wornHeight + depth;
    sum += ((2 * Math.sqrt(Math.max(0, radius * radius - y * y)) * deepest) / count) * weigh(depth);
  }
  return sum;
}

/** The flat and the worn volume from strips of the face, each with its own length back along the cylinder. */
function sliced(cutter: Parameters<typeof wearFlat>[0]) {
  const { length, wornHeight, backRake } = cutter;
  const onCylinder = Math.min(wornHeight, length * Math.tan(backRake));
  return {
    area: strips(cutter, onCylinder, () => 1 / Math.sin(backRake)),
    volume: strips(cutter, wornHeight, (depth) => Math.min(length, depth / Math.tan(backRake))),
  };
}

describe("wearFlat", () => {
  it("is what slicing the cylinder gives, also where the flat runs off its back", () => {
    fc.assert(
      fc.property(worn, ({ share, ...of }) => {
        const cutter = { ...of, wornHeight: share * of.faceDiameter };
        const exact = wearFlat(cutter);
        const slices = sliced(cutter);
        expect(slices.area / exact.area).toBeCloseTo(1, 4);
        expect(slices.volume / exact.volume).toBeCloseTo(1, 4);
      }),
      { numRuns: 60 },
    );
  });

  it("grows with the height worn, and the volume grows by the flat", () => {
    fc.assert(
      fc.property(worn, ({ share, ...of }) => {
        const h = share * of.faceDiameter;
        const step = 1e-5 * of.faceDiameter;
        const less = wearFlat({ ...of, wornHeight: h - step });
        const more = wearFlat({ ...of, wornHeight: h + step });
        expect(more.volume).toBeGreaterThan(less.volume);
        expect(more.faceAreaLost).toBeGreaterThan(less.faceAreaLost);
        // The flat moves along its own normal by dh cos β.
        const swept = wearFlat({ ...of, wornHeight: h }).area * Math.cos(of.backRake) * 2 * step;
        expect((more.volume - less.volume) / swept).toBeCloseTo(1, 2);
      }),
    );
  });

  it("is larger the less the face leans, while it stays on the cylinder", () => {
    fc.assert(
      fc.property(worn, ({ share, ...of }) => {
        const cutter = { ...of, length: 10, wornHeight: share * of.faceDiameter };
        const steeper = wearFlat({ ...cutter, backRake: cutter.backRake + 1 * deg });
        expect(steeper.area).toBeLessThan(wearFlat(cutter).area);
        expect(steeper.volume).toBeLessThan(wearFlat(cutter).volume);
      }),
    );
  });

  it("wears the whole length of a cutter that does not lean, without a jump", () => {
    const cutter = { faceDiameter: 0.016, length: 0.008, wornHeight: 0.001 };
    const level = wearFlat({ ...cutter, backRake: 0 });
    expect(level.area).toBeCloseTo(0.008 * level.width, 15);
    const nearly = wearFlat({ ...cutter, backRake: 1.01e-6 });
    expect(nearly.area / level.area).toBeCloseTo(1, 4);
    expect(nearly.volume / level.volume).toBeCloseTo(1, 4);
    expect(wearFlat({ ...cutter, backRake: -0.1 })).toEqual(level);
  });

  it("is nothing on a new cutter", () => {
    const none = wearFlat({ faceDiameter: 0.016, length: 0.008, wornHeight: 0, backRake: 0.2 });
    expect(Object.values(none)).toEqual([0, 0, 0, 0, 0, 0]);
  });

  it("refuses a height beyond the face", () => {
    const cutter = { faceDiameter: 0.016, length: 0.008, wornHeight: 0.017, backRake: 0.2 };
    expect(() => wearFlat(cutter)).toThrow("wornHeight must lie in 0 to 0.016, got 0.017");
  });
});

describe("carbide behind the table", () => {
  const cutter = { faceDiameter: 0.016, length: 0.008, backRake: 20 * deg, tableThickness: 0.002 };
  // h/tan 20° passes 2 mm at h = 0.728 mm.
  it("rubs once the flat is longer than the table", () => {
    expect(carbideRubs({ ...cutter, wornHeight: 0.72e-3 })).toBe(false);
    expect(carbideFlatArea({ ...cutter, wornHeight: 0.72e-3 })).toBe(0);
    expect(carbideRubs({ ...cutter, wornHeight: 0.74e-3 })).toBe(true);
    expect(carbideFlatArea({ ...cutter, wornHeight: 0.74e-3 })).toBeGreaterThan(0);
  });

  it("is the same slice of the face, cut off one table further back", () => {
    const wornHeight = 1e-3;
    const behind = wearFlat({ ...cutter, wornHeight: wornHeight - 0.002 * Math.tan(20 * deg) }).area;
    expect(carbideFlatArea({ ...cutter, wornHeight })).toBeCloseTo(behind, 15);
  });
});

describe("wear grade", () => {
  it("comes back from the caliper while less than half is gone", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.499, noNaN: true }), (share) => {
        const faceDiameter = 0.01344;
        const wornHeight = share * faceDiameter;
        const { width } = wearFlat({ faceDiameter, length: 0.008, wornHeight, backRake: 0.2 });
        const back = wornHeightOfFlat({ flatWidth: width, faceDiameter });
        expect(wearGrade({ wornHeight: back, faceDiameter })).toBeCloseTo(8 * share, 6);
      }),
    );
  });
  it("refuses a flat wider than the face", () => {
    expect(() => wornHeightOfFlat({ flatWidth: 0.014, faceDiameter: 0.01344 })).toThrow(/flatWidth must lie in/);
  });
});
