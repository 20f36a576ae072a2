import {
  casingPass,
  gaugeTolerance,
  grindWindow,
  ringGap,
  ringSizes,
  thermalGrowth,
  undergaugeOverGap,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { inch, mm } from "../support/field-units.ts";

// API Spec 7-1 tolerance of fixed-cutter bits, seen in trade reprints, standard itself not read; plus side 0.
describe("outside diameter of a fixed-cutter bit", () => {
  // od.tolerance
  it("may be below nominal by the tolerance of its size", () => {
    const sizes = [6.75, 6.78125, 9, 9.03125, 13.75, 13.78125, 17.5, 17.53125];
    const minus = [0.015, 0.02, 0.02, 0.03, 0.03, 0.045, 0.045, 0.063];
    for (const [at, size] of sizes.entries()) {
      expectClose(gaugeTolerance(size * inch) / inch, minus[at] ?? Number.NaN, 1e-9);
    }
  });

  // od.metric: the same tolerances as printed in millimetres.
  it("has the tolerance that the reprints give in millimetres", () => {
    const printed = [
      [6, 0.38],
      [8.5, 0.51],
      [12.25, 0.76],
      [16, 1.14],
      [20, 1.6],
    ] as const;
    for (const [size, minus] of printed) expectClose(gaugeTolerance(size * inch) / mm, minus, 0.006);
  });

  // od.window: derived from the tolerances.
  it("is ground between these limits", () => {
    const windows = [
      [5.125, 5.11],
      [5.875, 5.86],
      [6, 5.985],
      [6.125, 6.11],
      [6.5, 6.485],
      [7.875, 7.855],
      [8.75, 8.73],
      [9.875, 9.845],
    ] as const;
    for (const [size, least] of windows) {
      const { smallest, largest } = grindWindow(size * inch);
      expectClose(smallest / inch, least, 1e-6);
      expectClose(largest / inch, size, 1e-12);
    }
  });
});

// casing.drift: bore of 6 in schedule 40 casing, recalled; the comparison is derived. Use the drift where it is known.
it("a 6 in bit passes 6 in schedule 40 casing, a 6 1/8 in bit does not", () => {
  const drift = 6.065 * inch;
  expect(casingPass({ bitDiameter: 6 * inch, drift }).passes).toBe(true);
  expect(casingPass({ bitDiameter: 6.125 * inch, drift }).passes).toBe(false);
});

describe("a bit in its ring", () => {
  // ring.factor, derived: G at the far blade against the undergauge, G small
  it.each([
    [3, 0.6666667],
    [4, 1],
    [6, 1],
    [7, 0.9479049],
  ])("undergauge of %d wings over the gap", (wings, factor) => {
    expectClose(undergaugeOverGap(wings), factor, 1e-5);
  });

  // ring.exact, derived: R 3 in, 0.010 in of wear
  it.each([
    [3, 0.6688742],
    [7, 0.9480975],
  ])("undergauge of %d wings over the gap, ring of 3 in radius", (wings, factor) => {
    const radialWear = 0.01 * inch;
    expectClose((2 * radialWear) / ringGap({ ringRadius: 3 * inch, radialWear, wings }), factor, 1e-5);
  });

  it("a gap of 0.100 in on three wings", () => {
    // ring.three-wing, derived; the grade counts sixteenths of an inch
    const undergauge = undergaugeOverGap(3) * 0.1 * inch;
    expectClose(undergauge / inch, 0.0667, 5e-3);
    expectClose((undergauge / inch) * 16, 1.07, 5e-3);
    expect(Math.round((undergauge / inch) * 16)).toBe(1);
  });

  it("rings of a 6 1/4 in bit", () => {
    // ring.sizes, API Spec 7 ring practice recalled
    const { smallestGo, largestGo, smallestNoGo, largestNoGo } = ringSizes(6.25 * inch);
    expectClose(smallestGo / inch, 6.252, 1e-6);
    expectClose(largestGo / inch, 6.255, 1e-6);
    expectClose(largestNoGo / inch, 6.233, 1e-6);
    expectClose(smallestNoGo / inch, 6.23, 1e-6);
  });

  it("grows with warmth", () => {
    // ring.thermal, derived: 6.25 in and 20 °F
    expectClose(thermalGrowth({ diameter: 6.25 * inch, warming: 20 / 1.8 }) / inch, 0.0008, 2e-2);
  });
});
