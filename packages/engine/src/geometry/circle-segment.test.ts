import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { segmentArea, segmentChord, segmentHalfAngle } from "./circle-segment.ts";

const radius = fc.double({ min: 0.1, max: 30, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe("circle segment", () => {
  it("is nothing at height 0, half the circle at R, the whole at 2R", () => {
    expect(segmentArea({ radius: 2, height: 0 })).toBe(0);
    expect(segmentArea({ radius: 2, height: 2 })).toBeCloseTo(2 * Math.PI, 12);
    expect(segmentArea({ radius: 2, height: 4 })).toBeCloseTo(4 * Math.PI, 12);
    expect(segmentHalfAngle({ radius: 2, height: 4 })).toBeCloseTo(Math.PI, 12);
  });

  it("leaves the rest of the circle to the slice from the other side", () => {
    fc.assert(
      fc.property(radius, share, (R, s) => {
        const height = 2 * R * s;
        const both = segmentArea({ radius: R, height }) + segmentArea({ radius: R, height: 2 * R - height });
        expect(both / (Math.PI * R * R)).toBeCloseTo(1, 7);
      }),
    );
  });

  it("grows by its chord: dA/dh = w", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 0.95, noNaN: true }), (s) => {
        const height = 2 * s;
        const step = 1e-5;
        const growth =
          (segmentArea({ radius: 1, height: height + step }) - segmentArea({ radius: 1, height: height - step })) /
          (2 * step);
        expect(growth).toBeCloseTo(segmentChord({ radius: 1, height }), 6);
      }),
    );
  });

  it("keeps its figures for a slice a millionth of the radius thick", () => {
    // Thin slice: A = (4/3) √(2R) h^(3/2) (1 - 3h/(20R) ...).
    const height = 1e-6;
    expect(segmentArea({ radius: 1, height }) / ((4 / 3) * Math.SQRT2 * height ** 1.5)).toBeCloseTo(1, 6);
  });

  it("refuses a slice higher than the circle", () => {
    expect(() => segmentArea({ radius: 1, height: 2.1 })).toThrow("height must lie in 0 to 2, got 2.1");
    expect(() => segmentChord({ radius: 0, height: 0 })).toThrow("radius must be positive");
  });
});
