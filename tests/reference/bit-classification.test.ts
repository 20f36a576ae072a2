import { classificationCode, classificationMeaning, densityDigit } from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { mm } from "../support/field-units.ts";

const cutters = (count: number, diameter: number) => Array(count).fill({ faceDiameter: diameter * mm });

// SPE 23940 (1992) digits as restated in handbooks and trade pages; mm bands recalled.
describe("1992 IADC fixed-cutter code", () => {
  it("prints S132 and S123 for the two worked bits", () => {
    expect(classificationCode({ body: "steel", cutters: cutters(12, 13.44), profile: "short parabolic" })).toBe("S132");
    expect(classificationCode({ body: "steel", cutters: cutters(12, 15.88), profile: "medium parabolic" })).toBe(
      "S123",
    );
  });

  it("parts density at 30, 40 and 50 half-inch cutters", () => {
    expect([30, 31, 40, 41, 49, 50].map(densityDigit)).toEqual([1, 2, 2, 3, 3, 4]);
  });

  it("says in words what the characters mean", () => {
    const words = classificationMeaning({ body: "matrix", cutters: cutters(15, 13.44), profile: "flat" });
    expect(words).toBe(
      "matrix body; up to 30 cutters, counted as half-inch ones; main cutters over 8 to 14 mm; profile fishtail or flat",
    );
  });
});
