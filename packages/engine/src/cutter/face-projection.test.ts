import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { faceHalfHeight, faceHalfWidth, grooveArea } from "./face-projection.ts";

const deg = Math.PI / 180;
const lean = fc.double({ min: 0, max: 40 * deg, noNaN: true });
const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });

describe("grooveArea", () => {
  it("is what strips of the projected face add up to", () => {
    fc.assert(
      fc.property(lean, share, (backRake, s) => {
        const faceDiameter = 0.016;
        const across = faceDiameter / 2;
        const down = faceHalfHeight({ faceDiameter, backRake });
        const depth = s * 2 * down;
        const strips = 20_000;
        let area = 0;
        for (let at = 0; at < strips; at++) {
          const y = (down - depth + ((at + 0.5) * depth) / strips) / down;
          area += (2 * across * Math.sqrt(Math.max(0, 1 - y * y)) * depth) / strips;
        }
        expect(area / grooveArea({ faceDiameter, depth, backRake })).toBeCloseTo(1, 4);
      }),
      { numRuns: 50 },
    );
  });

  it("at full depth is the whole projected face", () => {
    const [faceDiameter, backRake] = [0.016, 15 * deg];
    const depth = 2 * faceHalfHeight({ faceDiameter, backRake });
    expect(grooveArea({ faceDiameter, depth, backRake })).toBeCloseTo(Math.PI * 0.008 ** 2 * Math.cos(backRake), 12);
  });

  it("refuses a groove deeper than the face", () => {
    expect(() => grooveArea({ faceDiameter: 0.016, depth: 0.0161, backRake: 0 })).toThrow(/depth must lie in/);
  });
});

it("stands narrower across the travel the more it is turned", () => {
  expect(faceHalfWidth({ faceDiameter: 0.016, sideRake: 0 })).toBe(0.008);
  expect(faceHalfWidth({ faceDiameter: 0.016, sideRake: 60 * deg })).toBeCloseTo(0.004, 15);
});
