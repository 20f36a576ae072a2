import { describe, expect, it } from "vitest";
import { plainCutter } from "../../../../tests/support/plain-cutter.ts";
import { catalogCutter } from "../cutter/index.ts";
import { cuttingTip } from "./face-on-profile.ts";
import { generateLayout } from "./generate-layout.ts";
import { type MeasuredRow, measuredLayout } from "./measured-layout.ts";
import { usualRakes } from "./rake-schedule.ts";

const row = (radius: number, height: number, more: Partial<MeasuredRow> = {}): MeasuredRow => {
  const { profileAngle: _, ...unturned } = plainCutter({ wing: 0, backRake: 0.2, faceDiameter: 0.01344 });
  return { ...unturned, radius, azimuth: 100 * radius, height, ...more };
};
const deg = Math.PI / 180;

describe("measuredLayout", () => {
  it("takes the angle of a straight cone from its centres: falling 1 in 4 toward the nose is -14 degrees", () => {
    const rows = [0.005, 0.015, 0.025].map((radius) => row(radius, radius / 4));
    const { layout, findings } = measuredLayout({ holeDiameter: 0.065, rows });
    for (const { profileAngle } of layout.cutters) expect(profileAngle / deg).toBeCloseTo(-Math.atan(1 / 4) / deg, 6);
    expect(findings[0].code).toBe("profile-angle-estimated");
    expect(findings[0].where).toBe("cutter 1, 2, 3");
  });

  it("finds the angles of cutters set on a circle to within what their spacing allows", () => {
    const angles = [-20, -10, 0, 10, 20, 30, 40].map((angle) => angle * deg);
    const rows = angles.map((angle) => row(0.04 + 0.03 * Math.sin(angle), -0.03 * (1 - Math.cos(angle))));
    const { layout } = measuredLayout({ holeDiameter: 0.155, rows });
    layout.cutters.slice(1, -1).forEach(({ profileAngle }, k) => {
      expect(profileAngle).toBeCloseTo(angles[k + 1], 2);
    });
  });

  it("keeps an angle that was measured", () => {
    const { layout, findings } = measuredLayout({ holeDiameter: 0.03, rows: [row(0.0084, 0, { profileAngle: 0.3 })] });
    expect(layout.cutters[0].profileAngle).toBe(0.3);
    expect(findings.filter(({ code }) => code === "profile-angle-estimated")).toEqual([]);
  });

  it("doubts a table that reaches past the hole or not to its wall", () => {
    const at = (holeDiameter: number) =>
      measuredLayout({ holeDiameter, rows: [row(0.02, 0, { profileAngle: 0 })] }).findings.map(({ code }) => code);
    expect(at(0.05)).toEqual(["table-past-gauge"]);
    expect(at(0.07)).toEqual(["table-under-gauge"]);
    expect(at(2 * 0.02672)).toEqual([]);
  });

  it("lets cutters on one track share the slope of their neighbours", () => {
    const rows = [row(0.01, 0.002), row(0.02, 0.004), row(0.0201, 0.004), row(0.03, 0.006)];
    const { layout } = measuredLayout({ holeDiameter: 0.073, rows });
    expect(layout.cutters[1].profileAngle).toBeCloseTo(layout.cutters[2].profileAngle, 9);
  });

  it("doubts two cutters in one place", () => {
    const rows = [row(0.01, 0), row(0.02, 0), row(0.0201, 0.0001, { azimuth: 2 })];
    const { findings } = measuredLayout({ holeDiameter: 0.0537, rows });
    expect(findings.find(({ code }) => code === "cutters-in-one-place")?.where).toBe("cutters 2 and 3");
  });
});

describe("a bit of the shop's own, measured", () => {
  const { layout } = generateLayout({
    holeDiameter: 0.155575,
    profile: { shape: "short parabolic" },
    wings: { wings: 5, cuttersPerWing: 3 },
    cutter: catalogCutter("1308"),
    rakes: usualRakes(),
    material: "steel",
  });

  it("comes back from a table of its cutting tips", () => {
    const rows = layout.cutters.map((cutter) => ({ ...cutter, ...cuttingTip(cutter) }));
    const back = measuredLayout({ holeDiameter: layout.holeDiameter, rows, measuredAt: "cutting tip" }).layout;
    for (const [at, cutter] of back.cutters.entries()) {
      expect(cutter.radius).toBeCloseTo(layout.cutters[at]?.radius ?? Number.NaN, 10);
      expect(cutter.height).toBeCloseTo(layout.cutters[at]?.height ?? Number.NaN, 10);
    }
  });

  it("comes back without its profile angles to a few degrees, save where the line ends at the gauge", () => {
    const rows = layout.cutters.map(({ profileAngle: _, ...rest }) => rest);
    const { layout: back, findings } = measuredLayout({ holeDiameter: layout.holeDiameter, rows });
    expect(findings.map(({ code }) => code)).toContain("profile-angle-estimated");
    for (const [at, { profileAngle }] of back.cutters.slice(0, 9).entries()) {
      expect(Math.abs(profileAngle - (layout.cutters[at]?.profileAngle ?? Number.NaN))).toBeLessThan(4 * deg);
    }
  });
});
