import { describe, expect, it } from "vitest";
import { bitPrice } from "./bit-price.ts";
import { cheapestPull } from "./cost-along-life.ts";
import { costPerLength, handlingPerLength } from "./cost-per-length.ts";
import type { PriceSheet } from "./price-sheet.ts";
import { USUAL_CUTTER_PRICES, USUAL_HARDFACING_PRICE, USUAL_POCKET_PRICE, usualBodyPrice } from "./usual-prices.ts";

const sheet: Pick<PriceSheet, "bodyPrices" | "cutterPrices" | "pocketPrice" | "hardfacingPrice"> = {
  bodyPrices: { steel: 600, matrix: 900 },
  cutterPrices: [{ faceDiameter: 0.01344, cutterPrice: 20 }],
  pocketPrice: 10,
  hardfacingPrice: 100,
};

describe("bitPrice", () => {
  it("adds up body, cutters, pockets and hardfacing", () => {
    const bit = { material: "steel" as const, faceDiameters: Array<number>(15).fill(0.01344) };
    expect(bitPrice({ bit, sheet })).toBe(600 + 15 * 30 + 100);
    expect(bitPrice({ bit: { ...bit, material: "matrix" }, sheet })).toBe(900 + 15 * 30 + 100);
  });

  it("wants a price for some cutter", () => {
    const bit = { material: "steel" as const, faceDiameters: [0.013] };
    expect(() => bitPrice({ bit, sheet: { ...sheet, cutterPrices: [] } })).toThrow(
      "cutters with a price must be positive, got 0",
    );
  });

  it("with the usual prices, of bits of 5 to 6 1/2 in, lies in the 600 to 2,500 dollars that the trade pays", () => {
    for (const inches of [5, 5.875, 6.125, 6.5]) {
      for (const material of ["steel", "matrix"] as const) {
        const holeDiameter = inches * 0.0254;
        const bodyPrices = { steel: 0, matrix: 0, [material]: usualBodyPrice({ holeDiameter, material }) };
        for (const { faceDiameter } of USUAL_CUTTER_PRICES) {
          const price = bitPrice({
            bit: { material, faceDiameters: Array<number>(12).fill(faceDiameter) },
            sheet: {
              bodyPrices,
              cutterPrices: USUAL_CUTTER_PRICES,
              pocketPrice: USUAL_POCKET_PRICE,
              hardfacingPrice: USUAL_HARDFACING_PRICE,
            },
          });
          expect(price).toBeGreaterThan(600);
          expect(price).toBeLessThan(2500);
        }
      }
    }
  });
});

describe("costPerLength", () => {
  const one = { bitPrice: 1, timePrice: 1, timeOnBottom: 1, handlingTime: 1, length: 1 };

  it("throws with name and value", () => {
    expect(() => costPerLength({ ...one, length: 0 })).toThrow("length must be positive, got 0");
    expect(() => costPerLength({ ...one, timePrice: -1 })).toThrow("timePrice must not be negative, got -1");
    expect(() => handlingPerLength({ tripTime: 1, connectionTime: 1, holeLength: 1, jointLength: 0 })).toThrow(
      "jointLength must be positive, got 0",
    );
  });
});

describe("cheapestPull", () => {
  const life = { bitPrice: 100, timePrice: 1, handlingPerLength: 0 };

  it("is the end of a bit that keeps its rate, and before it where the rate drops", () => {
    const even = [1, 2, 3].map((n) => ({ footage: 100 * n, timeOnBottom: 100 * n }));
    expect(cheapestPull({ ...life, points: even })?.pointIndex).toBe(2);
    const slower = [...even.slice(0, 2), { footage: 300, timeOnBottom: 900 }];
    expect(cheapestPull({ ...life, points: slower })?.pointIndex).toBe(1);
  });

  it("is nowhere where nothing is drilled", () => {
    expect(cheapestPull({ ...life, points: [] })).toBeUndefined();
    expect(cheapestPull({ ...life, points: [{ footage: 0, timeOnBottom: 0 }] })).toBeUndefined();
  });
});
