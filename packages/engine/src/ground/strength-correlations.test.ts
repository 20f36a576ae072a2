import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rockIds } from "./rock-table.ts";
import { strengthCorrelations } from "./strength-correlations.ts";

/** Faster, stiffer, tighter rock is stronger rock. */
const RISES = { slowness: -1, porosity: -1, youngsModulus: 1, velocity: 1 } as const;

describe("strength correlations", () => {
  it("have ids of their own, rocks of the table, a range", () => {
    expect(new Set(strengthCorrelations.map(({ id }) => id)).size).toBe(strengthCorrelations.length);
    for (const { id, rockIds: rocks, lowest, highest } of strengthCorrelations) {
      expect(rocks.length, id).toBeGreaterThan(0);
      expect(
        rocks.filter((rock) => !rockIds.includes(rock)),
        id,
      ).toEqual([]);
      expect(lowest, id).toBeLessThan(highest);
    }
  });

  it.each(strengthCorrelations)(
    "$id gives stronger rock for faster, stiffer, tighter readings over all its range",
    (one) => {
      const inRange = fc.double({ min: Math.max(one.lowest, 1e-9), max: one.highest, noNaN: true });
      fc.assert(
        fc.property(inRange, inRange, (first, second) => {
          const [less, more] = first < second ? [first, second] : [second, first];
          const strength = (value: number) => one.strength({ value, density: 2600 });
          const rise = (strength(more) - strength(less)) * RISES[one.input];
          expect(rise).toBeGreaterThanOrEqual(-1e-9 * strength(less));
          expect(strength(less)).toBeGreaterThan(0);
        }),
      );
    },
  );
});
