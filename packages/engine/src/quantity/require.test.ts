import { describe, expect, it } from "vitest";
import { requireBetween, requireFinite, requireNotNegative, requirePositive } from "./require.ts";

describe("guards", () => {
  it("name the quantity and the value", () => {
    expect(() => requirePositive({ portArea: 0 })).toThrow("portArea must be positive, got 0");
    expect(() => requireNotNegative({ depth: -1 })).toThrow("depth must not be negative, got -1");
    expect(() => requireFinite({ flow: Number.POSITIVE_INFINITY })).toThrow(
      "flow must be a finite number, got Infinity",
    );
    expect(() => requireBetween("share", 1.2, 0, 1)).toThrow("share must lie in 0 to 1, got 1.2");
  });
  it("let sound values pass", () => {
    requirePositive({ a: 1e-9 });
    requireNotNegative({ a: 0 });
    requireFinite({ a: -3 });
    requireBetween("share", 1, 0, 1);
  });
  it("refuse NaN everywhere", () => {
    expect(() => requirePositive({ x: Number.NaN })).toThrow();
    expect(() => requireNotNegative({ x: Number.NaN })).toThrow();
    expect(() => requireBetween("x", Number.NaN, 0, 1)).toThrow();
  });
});
