import { describe, expect, it } from "vitest";
import { pumpCurvePressure } from "./pump-curve.ts";

const curve = [
  { flow: 0.002, pressure: 4e5 },
  { flow: 0.006, pressure: 3e5 },
  { flow: 0.01, pressure: 1e5 },
];

describe("the curve of a centrifugal pump", () => {
  it("goes through its points and straight between them", () => {
    for (const { flow, pressure } of curve) expect(pumpCurvePressure({ curve, flow })).toBeCloseTo(pressure, 6);
    // Half way between two points, half way between their pressures.
    expect(pumpCurvePressure({ curve, flow: 0.004 })).toBeCloseTo(3.5e5, 6);
    expect(pumpCurvePressure({ curve, flow: 0.008 })).toBeCloseTo(2e5, 6);
  });

  it("is level before its first point and gives nothing past its last", () => {
    expect(pumpCurvePressure({ curve, flow: 0.001 })).toBe(4e5);
    expect(pumpCurvePressure({ curve, flow: 0.0101 })).toBe(0);
  });

  it("refuses one point, flows that do not rise and pressures that do", () => {
    expect(() => pumpCurvePressure({ curve: curve.slice(1, 2), flow: 0.006 })).toThrow(RangeError);
    expect(() => pumpCurvePressure({ curve: [curve[1], curve[0]], flow: 0.003 })).toThrow(/rise of flow/);
    const rising = [curve[2], { flow: 0.02, pressure: 2e5 }];
    expect(() => pumpCurvePressure({ curve: rising, flow: 0.015 })).toThrow(/fall of pressure/);
  });
});
