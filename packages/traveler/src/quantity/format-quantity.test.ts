import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FOOT, INCH, POUND_FORCE, TURN } from "./factors.ts";
import { formatQuantity, inUnit, unitFor } from "./format-quantity.ts";
import { parseQuantity } from "./parse-quantity.ts";
import { kindFacts, QUANTITY_KINDS, type QuantityKind } from "./quantity-kind.ts";

describe("formatQuantity", () => {
  it.each([
    ["diameter", 6.125 * INCH, "6 1/8 in", "155.6 mm"],
    ["diameter", 6 * INCH, "6 in", "152.4 mm"],
    ["diameter", (12 / 32) * INCH, "3/8 in", "9.525 mm"],
    ["diameter", (13 / 32) * INCH, "13/32 in", "10.32 mm"],
    ["diameter", 0.1556, "6.126 in", "155.6 mm"],
    ["depth", 300 * FOOT, "300 ft", "91.44 m"],
    ["force", 6125 * POUND_FORCE, "6,125 lbf", "27.25 kN"],
    ["force", 100, "22.48 lbf", "100 N"],
    ["force", 999.97, "224.8 lbf", "1 kN"],
    ["rotary speed", (90 * TURN) / 60, "90 rpm", "90 rpm"],
    ["temperature", 288.15, "59 °F", "15 °C"],
    ["share", 0.1234, "12.34 %", "12.34 %"],
    ["ratio", 0.3, "0.3", "0.3"],
    ["strength", 60e6, "8,702 psi", "60 MPa"],
    ["force", 0, "0 lbf", "0 N"],
    ["duration", 5400, "1.5 h", "1.5 h"],
  ] as const)("shows a %s of %d", (kind, si, field, metric) => {
    expect(formatQuantity(kind, si, "field")).toBe(field);
    expect(formatQuantity(kind, si, "metric")).toBe(metric);
  });

  it("takes a fraction within a hundredth of a millimetre and no further", () => {
    expect(formatQuantity("diameter", 6.125 * INCH + 0.009e-3, "field")).toBe("6 1/8 in");
    expect(formatQuantity("diameter", 6.125 * INCH + 0.011e-3, "field")).toBe("6.125 in");
    expect(formatQuantity("diameter", 6.125 * INCH, "field", { fractions: false })).toBe("6.125 in");
  });

  it("keeps to the figures and the unit asked for", () => {
    expect(formatQuantity("force", 27245, "metric", { figures: 3 })).toBe("27.2 kN");
    expect(formatQuantity("force", 27245, "metric", { unit: "N" })).toBe("27250 N");
    expect(() => formatQuantity("force", 1, "metric", { unit: "rpm" })).toThrow("rpm is no unit of a force");
    expect(() => formatQuantity("force", Number.NaN, "metric")).toThrow(/finite/);
  });

  it("can be typed back in, whatever the kind, the system and the value", () => {
    const kinds = Object.keys(QUANTITY_KINDS) as QuantityKind[];
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.constantFrom("field" as const, "metric" as const),
        fc.double({ min: 1e-3, max: 9e4, noNaN: true }),
        (kind, system, amount) => {
          const unit = kindFacts(kind).shown[system][0];
          const perUnit = inUnit(kind, 1, unit) - inUnit(kind, 0, unit);
          const si = (amount - inUnit(kind, 0, unit)) / perUnit;
          const shown = formatQuantity(kind, si, system);
          const back = parseQuantity(kind, shown, "shown");
          expect(back.ok, back.ok ? "" : back.problem.message).toBe(true);
          // Four figures of the reading; a fraction of an inch is within a hundredth of a millimetre.
          const room = Math.max(0.51e-3 * (amount / perUnit), kind === "diameter" ? 0.0101e-3 : 0);
          if (back.ok) expect(Math.abs(back.value.si - si)).toBeLessThanOrEqual(Math.abs(room) + 1e-12);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe("inUnit and unitFor", () => {
  it("give the number and the unit for a column", () => {
    expect(inUnit("depth", 91.44, "ft")).toBeCloseTo(300, 9);
    expect(inUnit("temperature", 288.15, "°F")).toBeCloseTo(59, 9);
    expect(unitFor("depth", "metric")).toBe("m");
    expect(unitFor("force", "metric", 20000)).toBe("kN");
  });
});
