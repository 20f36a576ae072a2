import { describe, expect, it } from "vitest";
import { CUTTER_CATALOG, catalogCutter } from "./cutter-catalog.ts";

describe("catalog", () => {
  it("names every size once and none twice", () => {
    const codes = CUTTER_CATALOG.map((each) => each.code);
    expect(new Set(codes).size).toBe(codes.length);
    const sizes = CUTTER_CATALOG.map((each) => `${each.faceDiameter} ${each.length}`);
    expect(new Set(sizes).size).toBe(sizes.length);
  });

  it("never holds the cutter that reading the code as sixteenths of an inch would give", () => {
    for (const each of CUTTER_CATALOG) {
      const sixteenths = (Number(each.code.slice(0, 2)) * 0.0254) / 16;
      expect(Math.abs(each.faceDiameter - sixteenths)).toBeGreaterThan(3e-3);
    }
  });

  it("takes the usual table and bevel, or what was ordered", () => {
    expect(catalogCutter("1308")).toMatchObject({ faceDiameter: 0.01344, length: 0.008, chamferWidth: 4e-4 });
    expect(catalogCutter("1308", { leachedDepth: 2e-4, chamferAngle: 0 })).toMatchObject({
      leachedDepth: 2e-4,
      chamferAngle: 0,
      tableThickness: 2e-3,
    });
  });

  it("names what it has when asked for something else", () => {
    expect(() => catalogCutter("1309")).toThrow(/cutter must be one of 0808, .*1916, got 1309/);
  });
});
