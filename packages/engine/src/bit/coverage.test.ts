import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainCutter } from "../../../../tests/support/plain-cutter.ts";
import { coverage, cuttersSweeping, uncutRings } from "./coverage.ts";
import type { BitLayout, PlacedCutter } from "./placed-cutter.ts";

const level = (radius: number, more: Partial<PlacedCutter> = {}): PlacedCutter => plainCutter({ radius, ...more });
const bit = (...cutters: PlacedCutter[]): BitLayout => ({ holeDiameter: 0.06, cutters });

const random = fc
  .array(
    fc.record({
      radius: fc.double({ min: 0, max: 0.03, noNaN: true }),
      azimuth: fc.double({ min: 0, max: 6, noNaN: true }),
      backRake: fc.double({ min: 0, max: 0.5, noNaN: true }),
      sideRake: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
    }),
    { maxLength: 8 },
  )
  .map((poses) => bit(...poses.map((pose) => level(pose.radius, pose))));

describe("uncutRings", () => {
  it("lists the rings between the sweeps, from the centre outward", () => {
    const rings = uncutRings(bit(level(0.01), level(0.022)));
    expect(rings.map(([from, to]) => [from, to].map((r) => Math.round(r * 1e6)))).toEqual([
      [0, 5000],
      [15000, 17000],
      [27000, 30000],
    ]);
  });

  it("is the whole hole for a bit without cutters and nothing for one that covers it", () => {
    expect(uncutRings(bit())).toEqual([[0, 0.03]]);
    expect(uncutRings(bit(level(0.005), level(0.0145), level(0.02), level(0.025)))).toEqual([]);
  });

  it("leaves with the sweeps the whole radius, and the same however the bit is turned", () => {
    fc.assert(
      fc.property(random, (layout) => {
        const { uncutRings: rings, redundancy } = coverage(layout);
        const cut = redundancy.filter(({ count }) => count > 0).reduce((sum, { from, to }) => sum + to - from, 0);
        const uncut = rings.reduce((sum, [from, to]) => sum + to - from, 0);
        expect(cut + uncut).toBeCloseTo(0.03, 4);
        const turned = { ...layout, cutters: layout.cutters.map((c) => ({ ...c, azimuth: c.azimuth + 2.5 })) };
        const again = uncutRings(turned);
        expect(again.length).toBe(rings.length);
        for (const [at, [from, to]] of again.entries()) {
          expect(from).toBeCloseTo(rings[at]?.[0] ?? Number.NaN, 9);
          expect(to).toBeCloseTo(rings[at]?.[1] ?? Number.NaN, 9);
        }
      }),
    );
  });
});

describe("coverage", () => {
  it("counts the cutters over each radius", () => {
    const { redundancy, swept } = coverage(bit(level(0.005), level(0.012), level(0.025)));
    expect(redundancy.map(({ count }) => count)).toEqual([1, 2, 1, 0, 1]);
    expect(cuttersSweeping({ swept, radius: 0.008 })).toBe(2);
    expect(cuttersSweeping({ swept, radius: 0.018 })).toBe(0);
  });

  it("names a ring with its radii and the cutters and wings beside it", () => {
    const { findings } = coverage(bit(level(0.005), level(0.016, { wing: 2 }), level(0.025, { wing: 3 })));
    const [ring] = findings;
    expect(ring?.code).toBe("uncut-ring");
    expect(ring?.severity).toBe("stop");
    expect(ring?.where).toBe("radius 10.0 mm (0.39 in) to 11.0 mm (0.43 in), cutter 1 on wing 1, cutter 2 on wing 2");
    expect(ring?.value).toBeCloseTo(0.001, 9);
  });

  it("takes a slight core as broken off, a wide one as a fault", () => {
    const codes = (inner: number) =>
      coverage(bit(level(0.005 + inner), level(0.014), level(0.0249))).findings.filter(({ where }) =>
        where.startsWith("bit centre"),
      );
    expect(codes(0.0005)[0]?.severity).toBe("note");
    expect(codes(0.0015)[0]?.severity).toBe("stop");
  });

  it("tells under gauge within the tolerance from under gauge beyond it", () => {
    const outer = (radius: number) =>
      coverage(bit(level(0.005), level(0.0145), level(0.02), level(radius))).findings[0];
    // 3 in class: 0.381 mm below nominal, over the diameter.
    expect(outer(0.0249)).toMatchObject({ code: "under-gauge", severity: "note" });
    expect(outer(0.0247)).toMatchObject({ code: "under-gauge", severity: "caution" });
    expect(outer(0.0251)).toMatchObject({ code: "past-gauge", severity: "caution" });
  });

  it("sees gauge lost by wear", () => {
    const worn = level(0.025, { profileAngle: Math.PI / 2, wornHeight: 0.001 });
    expect(coverage(bit(worn)).outerRadius).toBeCloseTo(0.029, 9);
  });

  it("refuses a hole without size", () => {
    expect(() => coverage({ holeDiameter: 0, cutters: [] })).toThrow("holeDiameter must be positive, got 0");
  });
});
