import { describe, expect, it } from "vitest";
import { casingPass, gaugeTolerance, grindWindow } from "./gauge-tolerance.ts";

const inch = 0.0254;

describe("gauge", () => {
  it("keeps a size typed in inches in its own band", () => {
    // 6 3/4 in through metres and back must not slip into the next band.
    expect(gaugeTolerance(6.75 * inch)).toBeCloseTo(0.015 * inch, 12);
    expect(gaugeTolerance(6.7501 * inch)).toBeCloseTo(0.02 * inch, 12);
  });

  it("grinds to nominal or below, never above", () => {
    const window = grindWindow(6.125 * inch);
    expect(window.largest).toBe(6.125 * inch);
    expect(window.smallest).toBeCloseTo(6.11 * inch, 12);
    expect(window.working.value).toBe(window.smallest);
  });

  it("stops a bit that is as wide as the drift", () => {
    const { passes, clearance, findings } = casingPass({ bitDiameter: 0.15, drift: 0.15 });
    expect(passes).toBe(false);
    expect(clearance).toBe(0);
    expect(findings[0]).toMatchObject({ code: "bit-sticks-in-casing", severity: "stop" });
    expect(casingPass({ bitDiameter: 0.1499, drift: 0.15 }).findings).toEqual([]);
  });

  it("refuses sizes that are none", () => {
    expect(() => gaugeTolerance(0)).toThrow("nominalDiameter must be positive, got 0");
    expect(() => casingPass({ bitDiameter: -1, drift: 1 })).toThrow("bitDiameter must be positive");
  });
});
