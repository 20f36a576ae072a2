import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bestCompromise, paretoList, thinnedList } from "./pareto-list.ts";

const points = fc.array(
  fc.record({
    evenness: fc.double({ min: 0.1, max: 1, noNaN: true }),
    imbalance: fc.double({ min: 0, max: 0.2, noNaN: true }),
  }),
  { minLength: 1, maxLength: 60 },
);

describe("paretoList", () => {
  it("keeps just those that no other betters, the most even first", () => {
    fc.assert(
      fc.property(points, (all) => {
        const kept = paretoList(all);
        for (const one of all) {
          const bettered = all.some(
            (other) =>
              other.evenness <= one.evenness &&
              other.imbalance <= one.imbalance &&
              (other.evenness < one.evenness || other.imbalance < one.imbalance),
          );
          const alike = kept.some((k) => k.evenness === one.evenness && k.imbalance === one.imbalance);
          expect(alike).toBe(!bettered);
        }
        for (const [at, one] of kept.entries()) {
          if (at > 0) expect(one.evenness).toBeGreaterThan(kept[at - 1]?.evenness ?? Number.NaN);
        }
      }),
    );
  });
});

describe("thinnedList", () => {
  it("keeps no more than asked, all from the list, and what is left out is all but bettered where nothing was cut", () => {
    fc.assert(
      fc.property(points, fc.integer({ min: 2, max: 12 }), (all, most) => {
        const whole = paretoList(all);
        const kept = thinnedList(all, most);
        expect(kept.length).toBeLessThanOrEqual(most);
        expect(paretoList(kept)).toEqual(kept);
        for (const one of kept) expect(whole).toContain(one);
        const free = thinnedList(all, 1000);
        for (const one of whole) {
          const nearly = free.some(
            (other) => other.evenness < one.evenness + 0.003 + 1e-12 && other.imbalance < one.imbalance + 0.001 + 1e-12,
          );
          expect(nearly).toBe(true);
        }
      }),
    );
  });

  it("of those as even as no shop could tell apart takes the steadiest, of those as steady the most even", () => {
    const list = [
      { evenness: 0.2, imbalance: 0.05 },
      { evenness: 0.201, imbalance: 0.04 },
      { evenness: 0.2025, imbalance: 0.03 },
      { evenness: 0.3, imbalance: 0.0105 },
      { evenness: 0.4, imbalance: 0.01 },
    ];
    expect(thinnedList(list, 12)).toEqual([list[2], list[3]]);
  });

  it("never cuts an end", () => {
    const list = Array.from({ length: 9 }, (_, k) => ({ evenness: 0.2 + 0.1 * k, imbalance: 0.09 - 0.01 * k }));
    const kept = thinnedList(list, 3);
    expect(kept).toHaveLength(3);
    expect([kept[0], kept[2]]).toEqual([list[0], list[8]]);
  });
});

describe("bestCompromise", () => {
  it("takes the one nearest to the corner, each aim against the bit to better", () => {
    const list = [
      { evenness: 0.1, imbalance: 0.04 },
      { evenness: 0.15, imbalance: 0.01 },
      { evenness: 0.3, imbalance: 0.001 },
    ];
    // Against 0.4 and 0.04: 1.031, 0.451, 0.750.
    expect(bestCompromise(list, { evenness: 0.4, imbalance: 0.04 })).toBe(list[1]);
    expect(bestCompromise([], { evenness: 0.4, imbalance: 0.04 })).toBeUndefined();
  });
});
