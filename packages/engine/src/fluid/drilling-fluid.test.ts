import { describe, expect, it } from "vitest";
import type { DrillingFluid } from "./drilling-fluid.ts";
import { funnelViscosity } from "./funnel-viscosity.ts";
import { herschelBulkleyForm } from "./herschel-bulkley-form.ts";
import { shearStress } from "./shear-stress.ts";

describe("a drilling fluid", () => {
  it("follows its own law", () => {
    const density = 1050;
    const stress = (fluid: DrillingFluid) => shearStress({ fluid, shearRate: 100 });
    expect(stress({ model: "newtonian", density, viscosity: 0.001 })).toBeCloseTo(0.1, 12);
    expect(stress({ model: "bingham", density, plasticViscosity: 0.01, yieldPoint: 5 })).toBeCloseTo(6, 12);
    expect(stress({ model: "power-law", density, consistency: 0.5, flowIndex: 0.5 })).toBeCloseTo(5, 12);
    const thick = { model: "herschel-bulkley", density, yieldStress: 2, consistency: 0.5, flowIndex: 0.5 } as const;
    expect(stress(thick)).toBeCloseTo(7, 12);
  });

  it("refuses properties that no fluid has", () => {
    expect(() => herschelBulkleyForm({ model: "newtonian", density: 0, viscosity: 1e-3 })).toThrow(/density/);
    expect(() =>
      herschelBulkleyForm({ model: "bingham", density: 1000, plasticViscosity: 0.01, yieldPoint: -1 }),
    ).toThrow(/yieldStress must not be negative/);
  });

  it("read by funnel is a wide guess: 26 s for water gives about one mPa s", () => {
    const water = funnelViscosity({ density: 999.1, funnelTime: 26 });
    expect(water.mid).toBeCloseTo(1e-3, 9);
    expect(water.high / water.low).toBeCloseTo(4, 9);
    expect(() => funnelViscosity({ density: 999.1, funnelTime: 25 })).toThrow(/funnelTime above 25 s/);
  });
});
