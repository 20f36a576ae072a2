import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import {
  EDGE_ROUNDING,
  EDGE_SHARE_OF_CUTTING,
  type RubbedEdge,
  relativeAbrasivity,
  wearHeatFactor,
  wearPressure,
} from "./wear-law.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const edge = fc.record({
  depth: between(1e-6, 5e-3),
  flatLength: between(0, 5e-3),
  bevelLength: between(0, 5e-4),
  bevelLoad: between(0, 1e5),
  cuttingLoad: between(0, 3e5),
  contactStress: between(1e6, 3e8),
  kappa: between(1, 10),
});
const bare: RubbedEdge = {
  depth: 1e-3,
  flatLength: 0,
  bevelLength: 0,
  bevelLoad: 0,
  cuttingLoad: 0,
  contactStress: 60e6,
  kappa: 5,
};

describe("wearPressure", () => {
  it("is the contact stress on a young flat and on an edge that has none yet", () => {
    expectClose(wearPressure(bare), 60e6, 1e-12);
    expectClose(wearPressure({ ...bare, flatLength: 2e-3 }), 60e6, 1e-12);
  });

  it("falls where the flat outgrows what the depth of cut can load", () => {
    const long = wearPressure({ ...bare, flatLength: 10e-3 });
    expectClose(long, (60e6 * 5e-3) / (10e-3 + EDGE_ROUNDING), 1e-12);
  });

  it("counts a share of the cutting load, most on an edge that is still keen", () => {
    const extra = (flatLength: number) =>
      wearPressure({ ...bare, flatLength, cuttingLoad: 1e5 }) - wearPressure({ ...bare, flatLength });
    expectClose(extra(0), (EDGE_SHARE_OF_CUTTING * 1e5) / EDGE_ROUNDING, 1e-9);
    expect(extra(2e-3)).toBeLessThan(extra(1e-3));
  });

  it("never falls with depth, load or stress, and keeps the load it is made from", () => {
    fc.assert(
      fc.property(edge, (of) => {
        const p = wearPressure(of);
        expect(wearPressure({ ...of, depth: 2 * of.depth })).toBeGreaterThanOrEqual(p * (1 - 1e-12));
        expect(wearPressure({ ...of, cuttingLoad: 2 * of.cuttingLoad })).toBeGreaterThanOrEqual(p * (1 - 1e-12));
        expect(wearPressure({ ...of, contactStress: 2 * of.contactStress })).toBeGreaterThan(p);
        const blunt = of.flatLength + EDGE_ROUNDING;
        const load = of.contactStress * Math.min(blunt, of.kappa * of.depth) + of.bevelLoad;
        expectClose(p * (blunt + of.bevelLength), load + EDGE_SHARE_OF_CUTTING * of.cuttingLoad, 1e-9);
      }),
    );
  });

  it("refuses a negative length", () => {
    expect(() => wearPressure({ ...bare, flatLength: -1e-3 })).toThrow("flatLength must not be negative, got -0.001");
  });
});

describe("wearHeatFactor", () => {
  const at = (celsius: number, tableLimit = 1023.15) => wearHeatFactor({ temperature: celsius + 273.15, tableLimit });

  it("is one up to 350 °C, rises from there without a jump, and reaches its multiple at the table's limit", () => {
    expect(at(20)).toBe(1);
    expect(at(350)).toBe(1);
    expectClose(at(350.001), 1, 1e-4);
    expectClose(at(750), 20, 1e-12);
    expect(at(600) / at(500)).toBeCloseTo(at(500) / at(400), 9);
  });

  it("rises later in a table that bears more", () => {
    expect(at(700, 1473.15)).toBeLessThan(at(700));
    expectClose(at(1200, 1473.15), 20, 1e-12);
  });

  it("refuses a table that bears less than where wear quickens, and a factor under one", () => {
    expect(() => at(400, 600)).toThrow("table limit over 350 °C must be positive");
    expect(() => wearHeatFactor({ temperature: 300, tableLimit: 1000, multipleAtLimit: 0.5 })).toThrow(
      "multipleAtLimit",
    );
  });
});

it("relativeAbrasivity is one in the reference sandstone", () => {
  expect(relativeAbrasivity(2.5)).toBe(1);
  expect(relativeAbrasivity(0)).toBe(0);
  expect(() => relativeAbrasivity(-1)).toThrow("cerchar must not be negative, got -1");
});
