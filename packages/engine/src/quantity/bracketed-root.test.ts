import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bracketedRoot } from "./bracketed-root.ts";

describe("bracketedRoot", () => {
  it("finds the square root of two to the last figures", () => {
    expect(bracketedRoot({ f: (x) => x * x - 2, low: 0, high: 2, residual: 1e-14 })).toBeCloseTo(Math.SQRT2, 13);
  });

  it("finds the zero of any rising cubic inside the bracket", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 9, noNaN: true }),
        (x0, k) => {
          const f = (x: number) => k * (x - x0) + (x - x0) ** 3;
          const x = bracketedRoot({ f, low: -10, high: 10, residual: 1e-9 });
          expect(Math.abs(x - x0)).toBeLessThan(1e-7);
        },
      ),
    );
  });

  it("says so when the ends do not bracket a zero", () => {
    expect(() => bracketedRoot({ f: (x) => x * x + 1, low: -1, high: 1, residual: 1e-9 })).toThrow(/no zero between/);
  });

  it("says so when a jump has no zero to reach", () => {
    const f = (x: number) => (x < 0.3 ? -1 : 1);
    expect(() => bracketedRoot({ f, low: 0, high: 1, residual: 1e-9 })).toThrow(/residual/);
  });
});
