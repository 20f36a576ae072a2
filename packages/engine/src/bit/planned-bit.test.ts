import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { usualSpec } from "../../../../tests/support/usual-spec.ts";
import { faceStock } from "./face-stock.ts";
import { generateLayout } from "./generate-layout.ts";
import { planOfBit } from "./layout-plan.ts";
import { plannedBit } from "./planned-bit.ts";
import { usualRakes } from "./rake-schedule.ts";
import { NO_RAKE_SHIFTS, shiftedRakes } from "./rake-shifts.ts";
import { sweptInterval } from "./swept-interval.ts";

const deg = Math.PI / 180;

describe("plannedBit", () => {
  it("gives back the bit that a plan was read off, whatever its profile, wings and rakes", () => {
    const specs = fc.record({
      shape: fc.constantFrom("flat", "short parabolic", "medium parabolic" as const),
      wings: fc.integer({ min: 3, max: 6 }),
      sweep: fc.double({ min: 0, max: 30 * deg, noNaN: true }),
      even: fc.boolean(),
    });
    fc.assert(
      fc.property(specs, ({ shape, wings, sweep, even }) => {
        const rake = (back: number) => ({ backRake: back * deg, sideRake: 5 * deg });
        const of = usualSpec({
          profile: { shape },
          wings: { wings, sweep },
          ...(even ? { rakes: { kind: "even", centre: rake(8), gauge: rake(16) } } : {}),
        });
        const bit = generateLayout(of);
        const again = plannedBit(of, planOfBit(of, bit, faceStock(of)));
        expect(again.places.map(({ wing, role }) => [wing, role])).toEqual(
          bit.places.map(({ wing, role }) => [wing, role]),
        );
        expect(again.findings.map(({ code }) => code)).toEqual(bit.findings.map(({ code }) => code));
        for (const [at, cutter] of again.layout.cutters.entries()) {
          const before = bit.layout.cutters[at];
          for (const key of ["radius", "azimuth", "height", "profileAngle", "backRake", "sideRake"] as const) {
            expect(Math.abs(cutter[key] - (before?.[key] ?? Number.NaN))).toBeLessThan(1e-8);
          }
        }
      }),
      { numRuns: 12 },
    );
  });

  it("adds its rake shifts zone by zone and leaves the centre cutter alone", () => {
    const of = usualSpec();
    const stock = faceStock(of);
    const plan = planOfBit(of, generateLayout(of), stock);
    const before = plannedBit(of, plan, stock);
    const after = plannedBit(of, { ...plan, rakeShifts: { ...NO_RAKE_SHIFTS, gauge: 2 * deg, cone: -1 * deg } }, stock);
    const rakesOf = (role: string, bit: typeof before) =>
      bit.places.flatMap((place, at) => (place.role === role ? [bit.layout.cutters[at]?.backRake ?? Number.NaN] : []));
    expect((rakesOf("gauge", after)[0] ?? 0) - (rakesOf("gauge", before)[0] ?? 0)).toBeCloseTo(2 * deg, 12);
    expect(rakesOf("centre", after)).toEqual(rakesOf("centre", before));
    // The gauge cutters still reach the hole wall exactly.
    for (const [at, { role }] of after.places.entries()) {
      const cutter = after.layout.cutters[at];
      if (role === "gauge" && cutter) expect(sweptInterval(cutter).to).toBeCloseTo(of.holeDiameter / 2, 8);
    }
  });

  it("refuses a wing that the plan does not have", () => {
    const of = usualSpec();
    const plan = planOfBit(of, generateLayout(of), faceStock(of));
    const lost = { ...plan, cutters: [{ role: "face" as const, wing: 6, arc: 0.03 }] };
    expect(() => plannedBit(of, lost)).toThrow(/wing must be one of 5, got 6/);
  });
});

describe("shiftedRakes", () => {
  it("adds the same back rake everywhere and keeps side rakes", () => {
    const rake = { backRake: 10 * deg, sideRake: 3 * deg };
    const even = shiftedRakes({ kind: "even", centre: rake, gauge: rake }, 2 * deg);
    if (even.kind !== "even") throw new Error("the kind has changed");
    for (const end of ["centre", "gauge"] as const) {
      expect(even[end].backRake).toBeCloseTo(12 * deg, 12);
      expect(even[end].sideRake).toBe(rake.sideRake);
    }
    const usual = usualRakes();
    const shifted = shiftedRakes(usual, -deg);
    if (shifted.kind !== "by zone") throw new Error("the kind has changed");
    for (const zone of ["centre", "cone", "nose", "shoulder", "gauge"] as const) {
      expect(shifted[zone].backRake).toBeCloseTo(usual[zone].backRake - deg, 12);
      expect(shifted[zone].sideRake).toBe(usual[zone].sideRake);
    }
  });
});

describe("faceStock", () => {
  it("works a face out once, and again for another rake", () => {
    const stock = faceStock(usualSpec());
    expect(stock.onFace(0.03, 0)).toBe(stock.onFace(0.03, 0));
    expect(stock.onFace(0.03, deg)).not.toBe(stock.onFace(0.03, 0));
    expect(stock.onFace(0.03, deg).pose.backRake - stock.onFace(0.03, 0).pose.backRake).toBeCloseTo(deg, 12);
    expect(stock.zoneAt(0.03)).toBe("cone");
  });
});
