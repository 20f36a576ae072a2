import { describe, expect, it } from "vitest";
import { plainCutter } from "../../../../tests/support/plain-cutter.ts";
import { bitBody } from "./bit-body.ts";
import type { PlacedCutter } from "./placed-cutter.ts";

const cutter = (wing: number, more: Partial<PlacedCutter> = {}): PlacedCutter =>
  plainCutter({ wing, radius: 0.05, azimuth: wing, backRake: 0.2, faceDiameter: 0.01344, ...more });
const bitOf = (wings: number) => ({
  holeDiameter: 0.155575,
  cutters: Array.from({ length: wings }, (_, k) => cutter(k + 1)),
});
const ports = { count: 3, diameter: 0.0127 };

describe("bitBody", () => {
  it("leaves smaller slots and smaller ports with six wings than with five (common practice, no source)", () => {
    const five = bitBody({ layout: bitOf(5), material: "steel", ports });
    const six = bitBody({ layout: bitOf(6), material: "steel", ports });
    expect(six.slotArea).toBeLessThan(five.slotArea ?? 0);
    expect(six.largestPort).toBeLessThan(five.largestPort ?? 0);
  });

  it("gives the slot area worked by hand: 155.575 mm hole, 5 wings of 16.33 mm on a core of 38.89 mm", () => {
    // t = 8 (1 + 2/3) + 3 = 16.333 mm. Ring π 77.7875² (1 - 0.25) = 14257 mm². One wing, from S(R) = 1268.19 and
    // S(r_c) = 630.57 mm²: 637.63 mm².
    const { slotArea, wingThickness } = bitBody({ layout: bitOf(5), material: "steel", ports });
    expect(wingThickness * 1e3).toBeCloseTo(16.333, 3);
    expect((slotArea ?? 0) * 1e6).toBeCloseTo(14257 - 5 * 637.63, -1);
  });

  it("says where a port does not fit between the wings", () => {
    const { findings } = bitBody({ layout: bitOf(8), material: "steel", ports: { count: 3, diameter: 0.016 } });
    expect(findings.map(({ code }) => code)).toEqual(["port-too-large-for-slot", "no-room-for-ports"]);
  });

  it("knows no slots where the wings are not known, and takes wear off the exposure", () => {
    const layout = { holeDiameter: 0.155575, cutters: [cutter(0), cutter(0, { wornHeight: 0.002 })] };
    const body = bitBody({ layout, material: "matrix", ports });
    expect(body.slotArea).toBeUndefined();
    expect(body.leastExposure).toBeCloseTo((0.00672 - 0.002) * Math.cos(0.2), 9);
  });
});
