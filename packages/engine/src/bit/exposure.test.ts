import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainCutter } from "../../../../tests/support/plain-cutter.ts";
import { exposure } from "./exposure.ts";
import type { BitLayout, PlacedCutter } from "./placed-cutter.ts";

const bit = (more: Partial<PlacedCutter>): BitLayout => ({
  holeDiameter: 0.155,
  cutters: [plainCutter({ radius: 0.05, ...more })],
});

describe("exposure", () => {
  it("is half the face where nothing else is said, and lets the bit take as much in a turn", () => {
    const { cutters, rubbingAdvance, findings } = exposure({ layout: bit({}) });
    expect(cutters[0]?.height).toBe(0.005);
    expect(rubbingAdvance).toBe(0.005);
    expect(findings).toEqual([]);
  });

  it("is shortened by lean and wear; a slope lets the bit take more", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1.3, noNaN: true }),
        fc.double({ min: 0.01, max: 0.6, noNaN: true }),
        (angle, lean) => {
          const { cutters, rubbingAdvance } = exposure({
            layout: bit({ profileAngle: angle, backRake: lean, wornHeight: 0.001 }),
          });
          expect(cutters[0]?.alongNormal).toBeCloseTo(0.004 * Math.cos(lean), 12);
          expect(rubbingAdvance).toBeCloseTo((0.004 * Math.cos(lean)) / Math.cos(angle), 12);
        },
      ),
    );
  });

  it("does not limit the advance at the wall", () => {
    const { rubbingAdvance, working } = exposure({ layout: bit({ profileAngle: Math.PI / 2 }) });
    expect(rubbingAdvance).toBe(Number.POSITIVE_INFINITY);
    expect(working).toEqual([]);
  });

  it("remarks on too little and too much", () => {
    const codes = (share: number) => exposure({ layout: bit({}), share }).findings.map(({ code }) => code);
    expect(codes(0.2)).toEqual(["exposure-small"]);
    expect(codes(0.7)).toEqual(["exposure-large"]);
    expect(codes(0.6)).toEqual([]);
    expect(() => exposure({ layout: bit({}), share: 1.5 })).toThrow(/share must lie in 0 to 1/);
  });
});
