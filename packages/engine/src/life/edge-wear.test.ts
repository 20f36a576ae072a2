import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { degree, mm } from "../../../../tests/support/field-units.ts";
import { wearFlat } from "../cutter/index.ts";
import { deepestWear, levelEdgeWear, wornVolume } from "./edge-wear.ts";
import { WEAR_POINTS } from "./edge-wear-rates.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("wear of one edge", () => {
  it("level wear has the volume of the exact wedge, also where the flat runs off the cylinder", () => {
    const worn = fc.record({
      faceDiameter: between(8 * mm, 19 * mm),
      length: between(3 * mm, 16 * mm),
      backRake: between(3 * degree, 35 * degree),
      share: between(0.03, 0.9),
    });
    fc.assert(
      fc.property(worn, ({ share, ...cutter }) => {
        const wornHeight = share * cutter.faceDiameter;
        const wear = levelEdgeWear({ ...cutter, wornHeight });
        expectClose(wornVolume({ ...cutter, wear }), wearFlat({ ...cutter, wornHeight }).volume, 3e-3);
        expectClose(deepestWear({ ...cutter, wear }), wornHeight, 1e-9);
      }),
    );
  });

  it("none where nothing is worn; the whole length where the face does not lean back", () => {
    const cutter = { faceDiameter: 13 * mm, length: 8 * mm, backRake: 0 };
    expect(wornVolume({ ...cutter, wear: new Float64Array(WEAR_POINTS) })).toBe(0);
    const even = new Float64Array(WEAR_POINTS).fill(1 * mm);
    expectClose(wornVolume({ ...cutter, wear: even }), 13 * mm * 8 * mm * 1 * mm, 2e-3);
  });

  it("reads the grade where the edge has lost most, and no more than the face", () => {
    const wear = new Float64Array(WEAR_POINTS);
    wear[40] = 2 * mm;
    expect(deepestWear({ faceDiameter: 13 * mm, wear })).toBe(2 * mm);
    wear[40] = 20 * mm;
    expect(deepestWear({ faceDiameter: 13 * mm, wear })).toBe(13 * mm);
  });

  it("refuses a worn height beyond the face", () => {
    expect(() => levelEdgeWear({ faceDiameter: 13 * mm, wornHeight: 14 * mm })).toThrow("wornHeight");
  });
});
