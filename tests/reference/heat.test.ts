import { criticalFlatLoad, cutterThermalResponse, flatHeat, flatTemperatureRise } from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { mm } from "../support/field-units.ts";

// Form: Glowka & Stone 1985, SPE Journal, recalled and derived again; all numbers derived from it.
const flat = {
  flatFriction: 0.1,
  flatNormal: 1000,
  speed: 1,
  flatArea: 9 * mm ** 2,
  flatLength: 3 * mm,
  rock: { conductivity: 3, diffusivity: 1.3e-6 },
};
const responses = [1.437e-5, 5e-5, 2e-4];
const speeds = [0.5, 1, 2];

describe("temperature of a wear flat", () => {
  it("flux, split and rise for a cutter cooled far from its flat", () => {
    const cutterResponse = cutterThermalResponse({ flatArea: 9 * mm ** 2, cutterConductivity: 100 });
    const heat = flatHeat({ ...flat, cutterResponse });
    expectClose(heat.flux, 11.1111e6, 5e-4);
    expectClose(cutterResponse, 1.4367e-5, 5e-4);
    expectClose(heat.rockPull, 0.917467, 5e-4);
    expectClose(heat.cutterShare, 0.521521, 5e-4);
    expectClose(heat.rise, 83.252, 5e-4);
  });

  it("rise for three responses and three speeds", () => {
    const rise = [
      [48.417, 83.261, 138.98],
      [85.266, 132.5, 201.45],
      [110.77, 161.36, 233.16],
    ];
    responses.forEach((cutterResponse, row) => {
      speeds.forEach((speed, column) => {
        expectClose(flatTemperatureRise({ ...flat, cutterResponse, speed }), rise[row][column], 1e-3);
      });
    });
  });

  it("critical load to 750 °C and to 350 °C from 30 °C", () => {
    const loads = [
      {
        limit: 750,
        newton: [
          [14871, 8648, 5181],
          [8444, 5434, 3574],
          [6500, 4462, 3088],
        ],
      },
      {
        limit: 350,
        newton: [
          [6609, 3843, 2303],
          [3753, 2415, 1588],
          [2889, 1983, 1372],
        ],
      },
    ];
    for (const { limit, newton } of loads) {
      responses.forEach((cutterResponse, row) => {
        speeds.forEach((speed, column) => {
          const load = criticalFlatLoad({ ...flat, cutterResponse, speed, allowedRise: limit - 30 });
          expectClose(load, newton[row][column], 1e-3);
          // The critical load is the load that gives the allowed rise.
          expectClose(flatTemperatureRise({ ...flat, cutterResponse, speed, flatNormal: load }), limit - 30, 1e-9);
        });
      });
    }
  });

  it("grows as v while the cutter takes the heat, as √v while the rock does; in step with load; less on a larger flat", () => {
    const exponent = (cutterResponse: number) => {
      const [slow, fast] = [1, 1.01].map((speed) => flatTemperatureRise({ ...flat, cutterResponse, speed }));
      return Math.log(fast / slow) / Math.log(1.01);
    };
    expectClose(exponent(1e-9), 1, 2e-3);
    expectClose(exponent(1), 0.5, 2e-3);
    const at = (change: Partial<typeof flat>) => flatTemperatureRise({ ...flat, cutterResponse: 5e-5, ...change });
    expectClose(at({ flatNormal: 2000 }) / at({}), 2, 2e-3);
    expectClose(at({ flatFriction: 0.2 }) / at({}), 2, 2e-3);
    expect(at({ flatArea: 18 * mm ** 2 })).toBeLessThan(at({}));
  });
});
