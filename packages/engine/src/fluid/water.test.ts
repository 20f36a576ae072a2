import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { freshWater } from "./fresh-water.ts";
import { waterDensity } from "./water-density.ts";
import { waterViscosity } from "./water-viscosity.ts";

const celsius = (t: number) => 273.15 + t;

describe("fresh water", () => {
  // Density of air-free water, tables after Tanaka et al. 2001, Metrologia 38:301, recalled.
  it.each([
    [0, 999.84],
    [4, 999.97],
    [15, 999.1],
    [20, 998.21],
    [25, 997.05],
  ])("has the tabled density at %d °C", (t, density) => {
    expect(waterDensity(celsius(t))).toBeCloseTo(density, 1);
  });

  // Viscosity tables after IAPWS 2008, mPa s, recalled; 15 °C (59 °F) is the 1.1375 cp used for "water at 60 °F".
  it.each([
    [15, 1.1375],
    [20, 1.0016],
    [25, 0.89],
    [40, 0.6527],
  ])("has the tabled viscosity at %d °C", (t, viscosity) => {
    expect(waterViscosity(celsius(t)) * 1e3).toBeCloseTo(viscosity, 3);
  });

  it("is near 999.1 kg/m³ and 1.1375 cp at 60 °F, where those two figures are quoted", () => {
    const sixtyFahrenheit = 273.15 + (60 - 32) / 1.8;
    const water = freshWater(sixtyFahrenheit);
    expect(Math.abs(water.density / 999.1 - 1)).toBeLessThan(2e-4);
    expect(Math.abs(water.viscosity / 1.1375e-3 - 1)).toBeLessThan(0.016);
  });

  it("thins as it warms", () => {
    const temperature = fc.double({ min: 274, max: 370, noNaN: true });
    fc.assert(fc.property(temperature, (t) => waterViscosity(t + 1) < waterViscosity(t)));
  });

  it("refuses ice and steam", () => {
    expect(() => waterDensity(270)).toThrow(/temperature must lie in/);
    expect(() => waterViscosity(400)).toThrow(/temperature must lie in/);
  });
});
