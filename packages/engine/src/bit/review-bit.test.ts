import { describe, expect, it } from "vitest";
import { catalogCutter } from "../cutter/index.ts";
import { generateLayout } from "./generate-layout.ts";
import { usualRakes } from "./rake-schedule.ts";
import { reviewBit } from "./review-bit.ts";

const inch = 0.0254;
const made = (wings: number) =>
  generateLayout({
    holeDiameter: 6.125 * inch,
    profile: { shape: "short parabolic" },
    wings: { wings, cuttersPerWing: 3 },
    cutter: catalogCutter("1308"),
    rakes: usualRakes(),
    material: "steel",
  }).layout;
const ports = { count: 5, diameter: 0.0127 };

describe("reviewBit", () => {
  it("finds nothing grave on a sound bit and names it", () => {
    const review = reviewBit({ layout: made(5), material: "steel", profile: "short parabolic", wings: 5, ports });
    expect(review.findings.filter(({ severity }) => severity !== "note")).toEqual([]);
    expect(review.classification).toBe("S132");
    expect(review.coverage.uncutRings).toEqual([]);
    expect(review.zones.length).toBe(15);
    expect(review.casing).toBeUndefined();
  });

  it("leaves less slot and smaller ports with six wings than with five", () => {
    const body = (wings: number) =>
      reviewBit({ layout: made(wings), material: "steel", profile: "short parabolic", ports }).body;
    expect(body(6).slotArea).toBeLessThan(body(5).slotArea ?? 0);
    expect(body(6).largestPort).toBeLessThan(body(5).largestPort ?? 0);
  });

  it("stops a bit that does not pass its casing", () => {
    const { casing, findings } = reviewBit({
      layout: made(5),
      material: "steel",
      profile: "short parabolic",
      ports,
      casingDrift: 6.065 * inch,
    });
    expect(casing?.passes).toBe(false);
    expect(findings.map(({ code }) => code)).toContain("bit-sticks-in-casing");
  });

  it("shows each figure's working with its unit", () => {
    const { working } = reviewBit({ layout: made(5), material: "steel", profile: "short parabolic", ports });
    expect(working.map(({ name }) => name)).toEqual([
      "width of the uncut rings",
      "cutters over a radius, on average",
      "diameter the cutters sweep",
      "thinnest wall between pockets",
      "slot area",
      "largest port between two wings",
      "advance at which a wing rubs",
      "smallest diameter the gauge may be ground to",
      "cutters counted as half-inch ones",
    ]);
    for (const { value, unit, inputs } of working) {
      expect(Number.isFinite(value)).toBe(true);
      expect(unit).not.toBe("");
      expect(inputs.length).toBeGreaterThan(0);
    }
  });
});
