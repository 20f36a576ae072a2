import { describe, expect, it } from "vitest";
import { channelUnit } from "./channel-unit.ts";
import { columnHead } from "./column-head.ts";

describe("channelUnit", () => {
  // Sizes from definitions: pound of force 0.45359237 kg × 9.80665 m/s², foot 0.3048 m, gallon 231 in³.
  it.each([
    ["k-lbs", "force", 1000 * 0.45359237 * 9.80665],
    ["klbm", "force", 1000 * 0.45359237 * 9.80665],
    ["kdaN", "force", 1e4],
    ["ft/hr", "speed", 0.3048 / 3600],
    ["m/h", "speed", 1 / 3600],
    ["1/min", "rotary speed", (2 * Math.PI) / 60],
    ["klbf.ft", "torque", 1000 * 0.45359237 * 9.80665 * 0.3048],
    ["FT-LBF", "torque", 0.45359237 * 9.80665 * 0.3048],
    ["KPa", "pressure", 1e3],
    ["gal/min", "flow", (231 * 0.0254 ** 3) / 60],
    ["liters/min", "flow", 1e-3 / 60],
    ["US/FT", "slowness", 1e-6 / 0.3048],
    ["US/M", "slowness", 1e-6],
    ["V/V", "share", 1],
    ["[M]", "length", 1],
  ])("%s is a %s", (text, dimension, factor) => {
    const unit = channelUnit(text);
    expect(unit?.dimension).toBe(dimension);
    expect((unit?.factor ?? 0) / factor).toBeCloseTo(1, 12);
  });

  it("tells F as feet on a depth and as degrees elsewhere", () => {
    expect(channelUnit("F", ["length"])?.name).toBe("ft");
    expect(channelUnit("F")?.dimension).toBe("temperature");
  });

  it.each(["1 ft", "units", "", "AMPS", "K-factor"])("knows no unit in %s", (text) => {
    expect(channelUnit(text)).toBeUndefined();
  });
});

describe("columnHead", () => {
  it.each([
    ["Depth(ft)", { name: "Depth", unit: "ft" }],
    ["weight on bit (k-lbs)", { name: "weight on bit", unit: "k-lbs" }],
    ["Rotary Speed [rpm]", { name: "Rotary Speed", unit: "rpm" }],
    ["Temp Out( degF)", { name: "Temp Out", unit: "degF" }],
    ["from_m", { name: "from", unit: "m" }],
    ["Flow Out %", { name: "Flow Out", unit: "%" }],
    ["ROP, ft/h", { name: "ROP", unit: "ft/h" }],
    ["ROP(1 ft)", { name: "ROP", aside: "1 ft" }],
    ["Flow In", { name: "Flow In" }],
    ["rpm", { name: "rpm" }],
  ])("%s", (header, expected) => {
    expect(columnHead(header)).toEqual({ header, ...expected });
  });
});
