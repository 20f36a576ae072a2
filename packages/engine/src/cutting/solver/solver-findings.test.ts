import { describe, expect, it } from "vitest";
import { catalogCutter } from "../../cutter/index.ts";
import { figuredLayout } from "./layout-figures.ts";
import { unmetFindings } from "./solver-findings.ts";
import { solverSetting } from "./solver-setting.ts";

const degree = Math.PI / 180;

/** Where the port that fits no slot is said not to fit, on a bit with these wings. */
function slotNamed(angles: readonly number[]): string | undefined {
  const setting = solverSetting({
    spec: {
      holeDiameter: 7.875 * 0.0254,
      profile: { shape: "short parabolic" },
      wings: { wings: 4, cuttersPerWing: 3, angles: angles.map((angle) => angle * degree) },
      cutter: catalogCutter("1308"),
      rakes: { kind: "even", centre: { backRake: 0.17, sideRake: 0.1 }, gauge: { backRake: 0.25, sideRake: 0.15 } },
      material: "steel",
    },
    portDiameter: 0.1,
  });
  const findings = unmetFindings(setting, setting.plain, figuredLayout(setting, setting.plain));
  return findings.find(({ code }) => code === "port-does-not-fit-slot")?.where;
}

describe("unmetFindings", () => {
  it("names the wings beside the narrowest slot, whatever turn their azimuths are counted in", () => {
    // Wings 2 and 3 stand 80 degrees apart, all others more.
    const expected = "slot between wings 2 and 3";
    expect(slotNamed([0, 95, 175, 268])).toBe(expected);
    expect(slotNamed([360, 95 - 360, 175, 268 + 720])).toBe(expected);
  });
});
