import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FOAM_LIFTING_SPEED, type FoamNeedInput, foamNeed } from "./foam-need.ts";

const well: FoamNeedInput = {
  holeDiameter: 0.155575,
  pipeDiameter: 0.0889,
  depth: 100,
  injection: 6e-4,
  rate: 0,
  rockDensity: 2600,
  temperatureGradient: 0,
};
const R = 287.05;
const T = 288.706;
const P = 101325;

describe("foamNeed", () => {
  it("holds the column of an isothermal foam, whose integral is closed", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 300, noNaN: true }),
        fc.double({ min: 2e-4, max: 2e-3, noNaN: true }),
        (depth, injection) => {
          const { leastAirFlow, bottomPressure } = foamNeed({ ...well, depth, injection });
          // q_l (p2 - p1) + w_g R T ln(p2/p1) = g (w_l + w_g) L
          const air = (leastAirFlow * P) / (R * T);
          const left = injection * (bottomPressure - P) + air * R * T * Math.log(bottomPressure / P);
          expect(left / (9.80665 * (injection * 999.1 + air) * depth)).toBeCloseTo(1, 3);
        },
      ),
    );
  });

  it("moves the foam at the bottom as fast as it has to be", () => {
    const { leastAirFlow, bottomPressure, bottomQuality, topQuality, topSpeed } = foamNeed(well);
    const area = (Math.PI / 4) * (well.holeDiameter ** 2 - well.pipeDiameter ** 2);
    const gas = (leastAirFlow * P) / bottomPressure;
    expect((gas + well.injection) / area).toBeCloseTo(FOAM_LIFTING_SPEED, 6);
    expect(FOAM_LIFTING_SPEED / (0.3048 / 60)).toBeCloseTo(90, 9);
    expect(bottomQuality).toBeCloseTo(gas / (gas + well.injection), 9);
    expect(topQuality).toBeGreaterThan(bottomQuality);
    expect(topSpeed).toBeGreaterThan(FOAM_LIFTING_SPEED);
  });

  it("needs more air in a deeper or a wider hole, more where chips weigh on it, and none where the liquid rises fast enough", () => {
    const { leastAirFlow } = foamNeed(well);
    expect(foamNeed({ ...well, depth: 150 }).leastAirFlow).toBeGreaterThan(leastAirFlow);
    expect(foamNeed({ ...well, holeDiameter: 0.2 }).leastAirFlow).toBeGreaterThan(leastAirFlow);
    expect(foamNeed({ ...well, rate: 0.008 }).leastAirFlow).toBeGreaterThan(leastAirFlow);
    const flood = foamNeed({ ...well, injection: 0.02 });
    expect(flood.leastAirFlow).toBe(0);
    expect(flood.bottomPressure - P).toBeCloseTo(999.1 * 9.80665 * 100, -4);
  });

  it("refuses what is no hole", () => {
    expect(() => foamNeed({ ...well, depth: 0 })).toThrow("depth must be positive, got 0");
    expect(() => foamNeed({ ...well, injection: 0 })).toThrow("injection must be positive, got 0");
    expect(() => foamNeed({ ...well, rate: -1 })).toThrow("rate must not be negative, got -1");
  });
});
