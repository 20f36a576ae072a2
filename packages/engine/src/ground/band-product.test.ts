import fc from "fast-check";
import { expect, it } from "vitest";
import { band, exactBand } from "../quantity/index.ts";
import { bandProduct } from "./band-product.ts";

it("scales a band by a known factor", () => {
  const { low, mid, high } = bandProduct(band(1, 2, 4), exactBand(3));
  expect([low, mid, high].map((value) => Number(value.toFixed(9)))).toEqual([3, 6, 12]);
});

it("adds the sides of two bands as roots of squares of logarithms", () => {
  // ln 2 on each side twice: exp(√2 ln 2) = 2.6651
  const product = bandProduct(band(1, 2, 4), band(1, 2, 4));
  expect(product.high / product.mid).toBeCloseTo(2.6651, 4);
  expect(product.mid / product.low).toBeCloseTo(2.6651, 4);
});

it("reaches zero where a side does, and refuses what is negative", () => {
  expect(bandProduct(band(0, 2, 4), exactBand(3)).low).toBe(0);
  expect(bandProduct(exactBand(0), band(1, 2, 3))).toEqual({ low: 0, mid: 0, high: 0 });
  expect(() => bandProduct(band(-1, 2, 4), exactBand(3))).toThrow("low side must not be negative");
});

it("is never wider than both bands at their ends together", () => {
  const positive = fc.double({ min: 0.1, max: 10, noNaN: true });
  const bands = fc.tuple(positive, positive, positive).map((values) => {
    const [low = 1, mid = 1, high = 1] = values.sort((a, b) => a - b);
    return band(low, mid, high);
  });
  fc.assert(
    fc.property(bands, bands, (one, other) => {
      const product = bandProduct(one, other);
      expect(product.low).toBeGreaterThanOrEqual(one.low * other.low * (1 - 1e-12));
      expect(product.high).toBeLessThanOrEqual(one.high * other.high * (1 + 1e-12));
    }),
  );
});
