/** Published and derived checks of air drilling. Source kinds: (a) read, (b) published and recalled, (d) derived. */
import {
  actualAirFlow,
  airDensity,
  airKineticPressure,
  atmosphericPressure,
  compressorFuelFlow,
  conduitSpeed,
  flowForUpholeSpeed,
  minimumAirFlow,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { foot, footPerHour, footPerMinute, gallon, gpm, inch, pound, poundForce, ppg } from "../support/field-units.ts";

const rankine = 1 / 1.8;
const cubicFootPerMinute = foot ** 3 / 60;
const poundPerCubicFoot = pound / foot ** 3;
const hour = 3600;

describe("air", () => {
  it("weight at 2116 lbf/ft² and 60 °F", () => {
    // air.weight, (a) Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual
    const density = airDensity({ pressure: (2116 * poundForce) / foot ** 2, temperature: 519.67 * rankine });
    expectClose(density / poundPerCubicFoot, 0.0763, 1e-3);
  });

  it.each([
    // air.altitude (a) Lyons, Guo & Seidel 2001: 6,000 ft, 70 °F; air.altitude-4000 (d) on a chart reading: 4,000 ft, 40 °F
    { standard: 378, weight: 0.06, actual: 481, feet: 6000, fahrenheit: 70 },
    { standard: 835, weight: 0.0685, actual: 930, feet: 4000, fahrenheit: 40 },
  ])("flow at $feet ft", ({ standard, weight, actual, feet, fahrenheit }) => {
    const standardFlow = standard * cubicFootPerMinute;
    const inletDensity = weight * poundPerCubicFoot;
    expectClose(actualAirFlow({ standardFlow, inletDensity }) / cubicFootPerMinute, actual, 1e-3);
    // the weights quoted are those of the standard atmosphere at that height and temperature
    const there = airDensity({
      pressure: atmosphericPressure(feet * foot),
      temperature: (fahrenheit + 459.67) * rankine,
    });
    expectClose(there / poundPerCubicFoot, weight, 2e-3);
  });

  it("fuel of a compressor, 82.7 lb/h of specific gravity .8156", () => {
    // air.compressor-fuel, (a) Lyons, Guo & Seidel 2001, before their 20 % for connections
    const fuel = compressorFuelFlow({ fuelMassFlow: (82.7 * pound) / hour, fuelDensity: 0.8156 * 8.33 * ppg });
    expectClose((fuel / gallon) * hour, 12.2, 3e-3);
  });

  it("kinetic pressure of standard air at 3000 ft/min", () => {
    // air.ke, (b) Angel 1957 criterion recalled; 3.0 used by Lyons, Guo & Seidel 2001
    const pressure = airKineticPressure({ density: 0.0763 * poundPerCubicFoot, speed: 50 * foot });
    expectClose((pressure * foot ** 2) / poundForce, 2.96, 5e-3);
  });

  it("surface flow and speed in an annulus with D² - d² of one square inch", () => {
    // air.surface-constant, (d); a web page prints 183.4
    const annulus = { shape: "annulus", holeDiameter: Math.SQRT2 * inch, pipeDiameter: inch } as const;
    const flow = flowForUpholeSpeed({ upholeSpeed: 3000 * footPerMinute, annulus });
    expectClose(flow / cubicFootPerMinute, 16.36, 1e-3);
    expectClose(conduitSpeed({ flow: cubicFootPerMinute, conduit: annulus }) / footPerMinute, 183.3, 1e-3);
    expectClose(cubicFootPerMinute / gpm, 7.48052, 1e-5);
  });
});

describe("least flow of air", () => {
  it("agrees with a published chart within its reading", () => {
    // air.minimum-chart, (a) Lyons, Guo & Seidel 2001, chart reading near 835 scfm; the depth model reads 7 % higher
    const flow = minimumAirFlow({
      holeDiameter: 6.25 * inch,
      pipeDiameter: 2.875 * inch,
      depth: 2400 * foot,
      rate: 90 * footPerHour,
      rockDensity: 2.7 * 62.4 * poundPerCubicFoot,
    });
    expectClose(flow / cubicFootPerMinute, 835, 0.08);
  });

  it.each([
    // air.minimum-own, (d) same criterion integrated by an independent script; not checked against published tables
    [6, 3.5, [391, 446, 481, 562]],
    [6.125, 3.5, [416, 470, 505, 587]],
    [6.5, 3.5, [494, 547, 582, 664]],
    [7.875, 4.5, [688, 752, 794, 896]],
  ])("%d in hole on %d in pipe at 0, 300, 500 and 1000 ft", (hole, pipe, flows) => {
    for (const [i, depth] of [0.1, 300, 500, 1000].entries()) {
      const flow = minimumAirFlow({
        holeDiameter: hole * inch,
        pipeDiameter: pipe * inch,
        depth: depth * foot,
        rate: 60 * footPerHour,
        rockDensity: 2.7 * 62.4 * poundPerCubicFoot,
        surfaceTemperature: 519.67 * rankine,
        temperatureGradient: (0.01 * rankine) / foot,
        holeRoughness: 0.01 * foot,
        pipeRoughness: 0.00015 * foot,
      });
      expectClose(flow / cubicFootPerMinute, flows[i], 2e-3);
    }
  });

  it("rises with depth, rate and roughness", () => {
    const base = { holeDiameter: 0.155575, pipeDiameter: 0.0889, depth: 100, rate: 0.005, rockDensity: 2700 };
    const flow = minimumAirFlow(base);
    expect(minimumAirFlow({ ...base, depth: 200 })).toBeGreaterThan(flow);
    expect(minimumAirFlow({ ...base, rate: 0.01 })).toBeGreaterThan(flow);
    expect(minimumAirFlow({ ...base, holeRoughness: 0.006 })).toBeGreaterThan(flow);
  });
});
