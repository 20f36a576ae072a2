import fc from "fast-check";
import { expect, it } from "vitest";
import { bottomHolePressureDifference, DEFAULT_WATER_LEVEL } from "./bottom-hole-pressure-difference.ts";

it("is the whole fluid column above the water level", () => {
  // 10 m of 1,000 kg/m³ is 98,066.5 Pa
  expect(bottomHolePressureDifference({ depth: 10, fluidDensity: 1000, waterLevel: 30 })).toBeCloseTo(98066.5, 6);
});

it("takes the ground water off below its level", () => {
  const at = (depth: number) =>
    bottomHolePressureDifference({ depth, fluidDensity: 1000, groundWaterDensity: 1000, waterLevel: 30 });
  expect(at(30)).toBeCloseTo(294199.5, 6);
  expect(at(300)).toBeCloseTo(294199.5, 6);
});

it("is never below zero, however light the fluid or deep its top", () => {
  expect(bottomHolePressureDifference({ depth: 100, fluidDensity: 1.2, waterLevel: 5 })).toBe(0);
  expect(bottomHolePressureDifference({ depth: 100, fluidDensity: 1000, fluidLevel: 200, waterLevel: 200 })).toBe(0);
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 2000, noNaN: true }),
      fc.double({ min: 0, max: 2000, noNaN: true }),
      fc.double({ min: 0, max: 400, noNaN: true }),
      (depth, fluidDensity, waterLevel) => {
        expect(bottomHolePressureDifference({ depth, fluidDensity, waterLevel })).toBeGreaterThanOrEqual(0);
      },
    ),
  );
});

it("adds the annulus loss and uses the stated default water level", () => {
  const hole = { depth: 60, fluidDensity: 1030 };
  const still = bottomHolePressureDifference(hole);
  expect(bottomHolePressureDifference({ ...hole, waterLevel: DEFAULT_WATER_LEVEL })).toBe(still);
  expect(bottomHolePressureDifference({ ...hole, annulusLoss: 5e4 }) - still).toBeCloseTo(5e4, 6);
});
