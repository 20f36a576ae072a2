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
  it("keeps both ends and no more than asked, all of them from the list", () => {
    fc.assert(
      fc.property(points, fc.integer({ min: 2, max: 12 }), (all, most) => {
        const whole = paretoList(all);
        const kept = thinnedList(all, most);
        expect(kept.length).toBeLessThanOrEqual(Math.max(most, 2));
        expect(kept[0]).toBe(whole[0]);
        expect(kept.at(-1)).toBe(whole.at(-1));
        for (const one of kept) expect(whole).toContain(one);
      }),
    );
  });

  it("drops one of two that no shop could tell apart", () => {
    const list = [
      { evenness: 0.2, imbalance: 0.03 },
      { evenness: 0.2005, imbalance: 0.0298 },
      { evenness: 0.3, imbalance: 0.01 },
    ];
    expect(thinnedList(list, 12)).toEqual([list[0], list[2]]);
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
