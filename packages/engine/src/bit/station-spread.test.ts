import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { equalAreaRadii, spreadExponent, spreadStations } from "./station-spread.ts";

describe("stations", () => {
  it("keep both ends and stand closer together outward", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 30 }),
        fc.double({ min: 0.5, max: 0.99, noNaN: true }),
        (stations, exponent) => {
          const arcs = spreadStations({ first: 0.004, last: 0.08, stations, exponent });
          expect(arcs[0]).toBeCloseTo(0.004, 12);
          expect(arcs.at(-1)).toBeCloseTo(0.08, 12);
          const gaps = arcs.slice(1).map((arc, at) => arc - (arcs[at] ?? 0));
          for (const [at, gap] of gaps.entries()) if (at > 0) expect(gap).toBeLessThan(gaps[at - 1] ?? 0);
        },
      ),
    );
  });

  it("space evenly at exponent 1", () => {
    expect(spreadStations({ first: 0, last: 4, stations: 5, exponent: 1 })).toEqual([0, 1, 2, 3, 4]);
    expect(spreadStations({ first: 1, last: 1, stations: 1, exponent: 1 })).toEqual([1]);
  });

  it("keep the innermost gap within what a face covers, unless there are too few", () => {
    const of = { first: 0.004, last: 0.08, stations: 12, widestGap: 0.0094 };
    const arcs = spreadStations({ ...of, exponent: spreadExponent(of) });
    expect((arcs[1] ?? 0) - (arcs[0] ?? 0)).toBeLessThanOrEqual(0.0094 + 1e-12);
    expect(spreadExponent({ ...of, stations: 4 })).toBe(1);
    expect(spreadExponent({ ...of, widestGap: 0.2 })).toBe(0.5);
  });
});

it("cut equal volumes on rings of equal area", () => {
  // Borders of N equal rings of a disc lie at R √(i/N); each radius halves the area of its ring.
  const radii = equalAreaRadii({ radius: 2, cutters: 4 });
  radii.forEach((radius, at) => {
    expect(radius ** 2 - (4 * at) / 4).toBeCloseTo(0.5, 12);
  });
  expect(() => equalAreaRadii({ radius: 2, cutters: 2.5 })).toThrow("cutters must be a whole number, got 2.5");
});
