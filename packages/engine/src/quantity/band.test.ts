import { describe, expect, it } from "vitest";
import { band, exactBand, mapBand } from "./band.ts";

describe("band", () => {
  it("keeps three ascending values", () => {
    expect(band(1, 2, 4)).toEqual({ low: 1, mid: 2, high: 4 });
    expect(exactBand(3)).toEqual({ low: 3, mid: 3, high: 3 });
  });
  it("refuses values out of order or not finite", () => {
    expect(() => band(2, 1, 3)).toThrow(/must ascend/);
    expect(() => band(0, Number.NaN, 3)).toThrow(/mid must be a finite number/);
  });
  it("turns round under a falling map", () => {
    expect(mapBand(band(1, 2, 4), (x) => 1 / x)).toEqual({ low: 0.25, mid: 0.5, high: 1 });
  });
});
