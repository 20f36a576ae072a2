import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { estimatedProfileAngles } from "./estimated-profile-angle.ts";

const deg = Math.PI / 180;
const onCircle = (angle: number) => ({ radius: 0.04 + 0.03 * Math.sin(angle), height: -0.03 * (1 - Math.cos(angle)) });

describe("estimatedProfileAngles", () => {
  it("finds the circle that cutters are set on, ends included, to within half a degree", () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: -50, max: 88 }), { minLength: 3, maxLength: 12 }), (degrees) => {
        // Points at least two degrees apart, so that no two count as one track.
        const angles = [...degrees]
          .sort((a, b) => a - b)
          .filter((angle, at, all) => at === 0 || angle - (all[at - 1] ?? 0) > 1);
        fc.pre(angles.length >= 3);
        // As near one another as cutters stand.
        fc.pre(angles.every((angle, at) => at === 0 || angle - (angles[at - 1] ?? 0) < 30));
        const found = estimatedProfileAngles(angles.map((angle) => onCircle(angle * deg)));
        for (const [at, angle] of found.entries()) {
          expect(Math.abs(angle / deg - (angles[at] ?? 0))).toBeLessThan(0.5);
        }
      }),
    );
  });

  it("does not depend on the order of the table", () => {
    const points = [-20, 0, 15, 35, 60].map((angle) => onCircle(angle * deg));
    const back = estimatedProfileAngles([...points].reverse()).reverse();
    expect(back).toEqual(estimatedProfileAngles(points));
  });

  it("stands upright where cutters follow one another up the gauge", () => {
    const points = [
      { radius: 0.05, height: 0 },
      { radius: 0.065, height: -0.005 },
      { radius: 0.07, height: -0.015 },
      { radius: 0.07, height: -0.025 },
      { radius: 0.0701, height: -0.035 },
    ];
    const found = estimatedProfileAngles(points);
    expect((found[3] ?? 0) / deg).toBeCloseTo(90, -1);
    expect((found[4] ?? 0) / deg).toBeCloseTo(90, -1);
  });

  it("gives points on one track one angle, a lone track level", () => {
    const found = estimatedProfileAngles([
      { radius: 0.01, height: 0.002 },
      { radius: 0.02, height: 0.004 },
      { radius: 0.0201, height: 0.004 },
      { radius: 0.03, height: 0.006 },
    ]);
    expect(found[1]).toBe(found[2]);
    expect(estimatedProfileAngles([{ radius: 0.01, height: 0 }])).toEqual([0]);
  });
});
