import { describe, expect, it } from "vitest";
import { binghamEquivalent } from "./bingham-equivalent.ts";
import {
  binghamFromDial,
  DIAL_DEGREE_STRESS,
  herschelBulkleyFromDial,
  powerLawFromDial,
  type TwoDialReadings,
} from "./dial-readings.ts";
import { shearStress } from "./shear-stress.ts";

const two: TwoDialReadings = { density: 1054.5, at600: 24, at300: 16 };
const four = { ...two, at6: 5, at3: 4 };
const LBF_PER_100_FT2 = (0.45359237 * 9.80665) / (100 * 0.3048 ** 2);

describe("dial readings", () => {
  it("take a degree of dial for 1.066 lbf per 100 ft²", () => {
    expect(DIAL_DEGREE_STRESS).toBeCloseTo(1.066 * LBF_PER_100_FT2, 6);
  });

  it("give back both readings from each law", () => {
    for (const fluid of [binghamFromDial(two), powerLawFromDial(two), herschelBulkleyFromDial(four)]) {
      expect(shearStress({ fluid, shearRate: 1022 })).toBeCloseTo(24 * DIAL_DEGREE_STRESS, 9);
      expect(shearStress({ fluid, shearRate: 511 })).toBeCloseTo(16 * DIAL_DEGREE_STRESS, 9);
      expect(binghamEquivalent(fluid).plasticViscosity).toBeCloseTo(binghamFromDial(two).plasticViscosity, 12);
      expect(binghamEquivalent(fluid).yieldPoint).toBeCloseTo(binghamFromDial(two).yieldPoint, 9);
    }
  });

  it("agree with the mud engineer's short form for plastic viscosity: 24 less 16 is 8 cp", () => {
    expect(binghamFromDial(two).plasticViscosity).toBeCloseTo(8e-3, 4);
  });

  it("take the low readings for the yield, which is never negative", () => {
    expect(herschelBulkleyFromDial(four).yieldStress).toBeCloseTo(3 * DIAL_DEGREE_STRESS, 9);
    expect(herschelBulkleyFromDial({ ...four, at6: 9 }).yieldStress).toBe(0);
  });

  it("refuse readings that do not rise with speed", () => {
    expect(() => powerLawFromDial({ ...two, at600: 16 })).toThrow(/rise must be positive/);
    expect(() => herschelBulkleyFromDial({ ...four, at3: 20 })).toThrow(/at300 above the yield must be positive/);
  });
});
