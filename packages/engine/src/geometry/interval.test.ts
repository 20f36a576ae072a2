import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverCounts, gapsBetween } from "./interval.ts";

const end = fc.integer({ min: -200, max: 1200 }).map((hundredths) => hundredths / 100);
const interval = fc.tuple(end, end).map(([a, b]) => ({ from: Math.min(a, b), to: Math.max(a, b) }));

describe("coverCounts", () => {
  it("counts overlaps as steps", () => {
    const steps = coverCounts(
      [
        { from: 0, to: 4 },
        { from: 3, to: 6 },
        { from: 8, to: 12 },
      ],
      { from: 0, to: 10 },
    );
    expect(steps).toEqual([
      { from: 0, to: 3, count: 1 },
      { from: 3, to: 4, count: 2 },
      { from: 4, to: 6, count: 1 },
      { from: 6, to: 8, count: 0 },
      { from: 8, to: 10, count: 1 },
    ]);
  });

  it("fills the span without gaps and agrees with counting at a point", () => {
    fc.assert(
      fc.property(fc.array(interval, { maxLength: 12 }), (intervals) => {
        const steps = coverCounts(intervals, { from: 0, to: 10 });
        expect(steps[0]?.from).toBe(0);
        expect(steps.at(-1)?.to).toBe(10);
        for (const [index, step] of steps.entries()) {
          expect(step.to).toBeGreaterThan(step.from);
          if (index > 0) expect(step.from).toBe(steps[index - 1]?.to);
          // A share that no joint of equal counts can fall on.
          const at = step.from + (step.to - step.from) / Math.PI;
          expect(step.count).toBe(intervals.filter(({ from, to }) => from < at && to > at).length);
        }
      }),
    );
  });
});

describe("gapsBetween", () => {
  it("is the whole span where nothing lies in it", () => {
    expect(gapsBetween([], { from: 1, to: 2 })).toEqual([{ from: 1, to: 2 }]);
  });
  it("passes over gaps no wider than the narrowest asked for", () => {
    const covers = [
      { from: 0, to: 1 },
      { from: 1.05, to: 2 },
    ];
    expect(gapsBetween(covers, { from: 0, to: 3 }, 0.1)).toEqual([{ from: 2, to: 3 }]);
    expect(gapsBetween(covers, { from: 0, to: 3 }).length).toBe(2);
  });
});
