import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { PISTON_PUMP_EFFICIENCY, pistonPumpDisplacement, pistonPumpFlow } from "./piston-pump.ts";

const inch = 0.0254;
const barrel = 42 * 231 * inch ** 3;
const gpm = (231 * inch ** 3) / 60;

describe("the volume swept by a piston pump", () => {
  // The trade's rules of barrels a stroke, Lapeyrouse 2002, Formulas and Calculations for Drilling, recalled: triplex
  // .000243 D² L, duplex .000162 L (2 D² - d²). Their factors are rounded to three digits, hence a part in a thousand.
  it("is that of the trade's rule for three cylinders that pump one way", () => {
    const swept = pistonPumpDisplacement({
      cylinders: 3,
      action: "single",
      linerDiameter: 7 * inch,
      strokeLength: 12 * inch,
    });
    expect(Math.abs(swept / barrel / (0.000243 * 7 ** 2 * 12) - 1)).toBeLessThan(2e-3);
  });

  it("is that of the trade's rule for two cylinders that pump both ways, the rod taken off", () => {
    const swept = pistonPumpDisplacement({
      cylinders: 2,
      action: "double",
      linerDiameter: 5.5 * inch,
      strokeLength: 14 * inch,
      rodDiameter: 2 * inch,
    });
    expect(Math.abs(swept / barrel / (0.000162 * 14 * (2 * 5.5 ** 2 - 2 ** 2)) - 1)).toBeLessThan(1e-3);
  });

  it("doubles with both ways and no rod, and a rod never adds to it", () => {
    const size = fc.double({ min: 0.02, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.double({ min: 0, max: 0.9, noNaN: true }), (linerDiameter, strokeLength, thin) => {
        const pump = { cylinders: 2, linerDiameter, strokeLength };
        const one = pistonPumpDisplacement({ ...pump, action: "single" });
        const both = pistonPumpDisplacement({ ...pump, action: "double" });
        const rodded = pistonPumpDisplacement({ ...pump, action: "double", rodDiameter: thin * linerDiameter });
        expect(both / one).toBeCloseTo(2, 9);
        expect(rodded).toBeLessThanOrEqual(both);
        expect(rodded).toBeGreaterThan(one);
      }),
    );
  });

  it("refuses a rod as thick as the liner, and a pump without cylinders", () => {
    const pump = { cylinders: 2, action: "double", linerDiameter: 0.1, strokeLength: 0.2 } as const;
    expect(() => pistonPumpDisplacement({ ...pump, rodDiameter: 0.1 })).toThrow(/liner less rod/);
    expect(() => pistonPumpDisplacement({ ...pump, cylinders: 0 })).toThrow(/cylinders/);
  });
});

describe("the flow of a piston pump", () => {
  it("is that of a 5 x 6 duplex reckoned by hand", () => {
    // 2 (π/4) (2 x 25 - 2.25) 6 = 450.04 in³ a stroke; 60 strokes a minute, 85 % of it, 231 in³ a gallon: 99.36 gpm.
    const pump = {
      cylinders: 2,
      action: "double",
      linerDiameter: 5 * inch,
      strokeLength: 6 * inch,
      rodDiameter: 1.5 * inch,
    } as const;
    expect(pistonPumpFlow({ pump, strokeRate: 1, volumetricEfficiency: 0.85 }) / gpm).toBeCloseTo(99.36, 1);
  });

  it("refuses to deliver more than is swept", () => {
    const pump = { cylinders: 3, action: "single", linerDiameter: 0.1, strokeLength: 0.2 } as const;
    expect(() => pistonPumpFlow({ pump, strokeRate: 1, volumetricEfficiency: 1.1 })).toThrow(/volumetricEfficiency/);
    expect(PISTON_PUMP_EFFICIENCY).toMatchObject({ low: 0.85, high: 0.9 });
  });
});
