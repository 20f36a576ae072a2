import { describe, expect, it } from "vitest";
import { airDensity, atmosphericPressure, STANDARD_AIR_TEMPERATURE, STANDARD_PRESSURE } from "./air.ts";

describe("air", () => {
  it("weighs 1.225 kg/m³ at 15 °C and sea level (ISO 2533, recalled)", () => {
    expect(airDensity({ pressure: STANDARD_PRESSURE, temperature: 288.15 })).toBeCloseTo(1.225, 4);
  });
  it("stands at the pressures of the standard atmosphere (ISO 2533, recalled)", () => {
    expect(atmosphericPressure(0)).toBe(STANDARD_PRESSURE);
    expect(atmosphericPressure(1000)).toBeCloseTo(89875, -1);
    expect(atmosphericPressure(3000)).toBeCloseTo(70109, -1);
  });
  it("is counted at 60 °F", () => {
    expect(STANDARD_AIR_TEMPERATURE).toBeCloseTo((60 + 459.67) / 1.8, 3);
  });
  it("refuses a vacuum and a height out of range", () => {
    expect(() => airDensity({ pressure: 0, temperature: 288 })).toThrow(/pressure must be positive/);
    expect(() => atmosphericPressure(20_000)).toThrow(/altitude must lie in/);
  });
});
