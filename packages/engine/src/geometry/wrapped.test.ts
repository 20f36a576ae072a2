import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wrapped } from "./wrapped.ts";

describe("wrapped", () => {
  it("keeps the direction and gives it in 0 to 2π", () => {
    fc.assert(
      fc.property(fc.double({ min: -100, max: 100, noNaN: true }), (angle) => {
        const one = wrapped(angle);
        expect(one).toBeGreaterThanOrEqual(0);
        expect(one).toBeLessThan(2 * Math.PI);
        expect(Math.hypot(Math.cos(one) - Math.cos(angle), Math.sin(one) - Math.sin(angle))).toBeLessThan(1e-12);
      }),
    );
  });

  it("leaves out the whole turn, also where rounding would give it", () => {
    expect(wrapped(2 * Math.PI)).toBe(0);
    expect(wrapped(-1e-18)).toBe(0);
  });
});
