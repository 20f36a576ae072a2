import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FOOT, INCH, POUND, STANDARD_GRAVITY } from "./factors.ts";
import { type Parsed, parseQuantity, type Quantity, type QuantityLimits } from "./parse-quantity.ts";
import type { QuantityKind } from "./quantity-kind.ts";

function si(parsed: Parsed<Quantity>): number {
  if (!parsed.ok) throw new Error(parsed.problem.message);
  return parsed.value.si;
}

function line(kind: QuantityKind, input: unknown, limits?: QuantityLimits): string {
  const parsed = parseQuantity(kind, input, "field", limits);
  if (parsed.ok) throw new Error(`read as ${parsed.value.si}`);
  return parsed.problem.message;
}

const lbf = POUND * STANDARD_GRAVITY;
const gallon = 231 * INCH ** 3;

describe("what people type", () => {
  const cases: readonly [QuantityKind, unknown, number][] = [
    ["diameter", "6 1/8 in", 6.125 * INCH],
    ["diameter", "6-1/8 in", 6.125 * INCH],
    ["diameter", '6 1/8"', 6.125 * INCH],
    ["diameter", "6⅛ in", 6.125 * INCH],
    ["diameter", "½ in", 0.5 * INCH],
    ["diameter", "12/32 in", 0.375 * INCH],
    ["diameter", "155.6 mm", 0.1556],
    ["diameter", "155,6 mm", 0.1556],
    ["diameter", "6.125in.", 6.125 * INCH],
    ["diameter", "6.125 inches", 6.125 * INCH],
    ["depth", "3' 6\"", 42 * INCH],
    ["depth", "3 ft 6 in", 42 * INCH],
    ["depth", "3 ft. 6 1/2 in.", 42.5 * INCH],
    ["depth", "3'6-1/2\"", 42.5 * INCH],
    ["depth", "3′ 6″", 42 * INCH],
    ["depth", "1,200 ft", 1200 * FOOT],
    ["depth", "1 200 m", 1200],
    ["depth", ".5 m", 0.5],
    ["depth", "0,125 m", 0.125],
    ["depth", 0, 0],
    ["force", "1,000 lb", 1000 * lbf],
    ["force", "1,000,000 N", 1e6],
    ["force", "1.234.567 N", 1234567],
    ["force", "1,234.5 N", 1234.5],
    ["force", "1.234,5 N", 1234.5],
    ["force", "15 klbf", 15000 * lbf],
    ["force", "20 kN", 20000],
    ["force", "6000 LBF", 6000 * lbf],
    ["force per length", "1000 lb/in", (1000 * lbf) / INCH],
    ["force per length", "1000 lb per in", (1000 * lbf) / INCH],
    ["flow", "500 gpm", (500 * gallon) / 60],
    ["flow", "500 US gpm", (500 * gallon) / 60],
    ["flow", "36 m3/h", 0.01],
    ["flow", "36 m³ / h", 0.01],
    ["flow", "600 L/min", 0.01],
    ["flow", "10 L/s", 0.01],
    ["air flow", "750 scfm", (750 * FOOT ** 3) / 60],
    ["density", "8.6 ppg", (8.6 * POUND) / gallon],
    ["density", "8.34 lb/gal", (8.34 * POUND) / gallon],
    ["density", "50 kg/m3", 50],
    ["density", "1.03 g/cm³", 1030],
    ["torque", "4500 ft-lbf", 4500 * FOOT * lbf],
    ["torque", "4500 lbf-ft", 4500 * FOOT * lbf],
    ["torque", "4500 ft·lb", 4500 * FOOT * lbf],
    ["torque", "6.1 kN·m", 6100],
    ["rotary speed", "90 rpm", 3 * Math.PI],
    ["pressure", "1.2 kPa", 1200],
    ["pressure", "20 bar", 2e6],
    ["strength", "60 MPa", 60e6],
    ["strength", "1 ksi", (1000 * lbf) / INCH ** 2],
    ["uphole speed", "120 ft/min", 2 * FOOT],
    ["rate", "60 ft/h", FOOT / 60],
    ["advance", "2mm", 0.002],
    ["advance", "2 mm/rev", 0.002],
    ["power", "1 hp", 550 * FOOT * lbf],
    ["power", "45 kW", 45000],
    ["temperature", "60 degF", ((60 - 32) * 5) / 9 + 273.15],
    ["temperature", "15 °C", 288.15],
    ["temperature", "15 C", 288.15],
    ["temperature", "-4 °F", 253.15],
    ["angle", "90 deg", Math.PI / 2],
    ["angle", "-90°", -Math.PI / 2],
    ["share", "10 %", 0.1],
    ["share", "10%", 0.1],
    ["share", 0.1, 0.1],
    ["ratio", "0,3", 0.3],
    ["viscosity", "8 cP", 0.008],
    ["viscosity", "8 mPa·s", 0.008],
    ["yield point", "8 lbf/100ft2", (8 * lbf) / (100 * FOOT ** 2)],
    ["yield point", "8 lb/100 ft²", (8 * lbf) / (100 * FOOT ** 2)],
    ["linear mass", "13.3 lb/ft", (13.3 * POUND) / FOOT],
    ["mass", "45 lb", 45 * POUND],
    ["force per pressure", "7.5 lbf/psi", 7.5 * INCH ** 2],
    ["force per pressure", "20 cm²", 20e-4],
    ["transit time", "80 us/ft", 80e-6 / FOOT],
    ["transit time", "80 µs/ft", 80e-6 / FOOT],
    ["duration", "1 h 30 min", 5400],
    ["duration", "1h30min", 5400],
    ["depth", { value: 3.5, unit: "ft" }, 3.5 * FOOT],
    ["depth", { value: "3 1/2", unit: "ft" }, 3.5 * FOOT],
    ["force", "1e4 N", 1e4],
  ];

  it.each(cases)("reads a %s from %j", (kind, input, expected) => {
    const got = si(parseQuantity(kind, input, "field"));
    expect(Math.abs(got - expected)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(expected), 1e-3));
  });

  it("keeps what was typed", () => {
    expect(parseQuantity("diameter", " 6 1/8 in ", "inquiry.holes[0].diameter")).toEqual({
      ok: true,
      value: { kind: "diameter", si: expect.closeTo(0.155575, 12), unit: "in", text: "6 1/8 in" },
    });
  });
});

describe("the comma", () => {
  it("parts thousands before a field unit and is refused as ambiguous before a metric one", () => {
    expect(si(parseQuantity("force", "1,234 lbf", "f"))).toBeCloseTo(1234 * lbf, 9);
    expect(line("diameter", "1,234 mm")).toBe(
      'field: got "1,234 mm", where the comma may part thousands or decimals: write 1234 or 1.234; give a length, for example "6 1/8 in" or "155.6 mm"',
    );
  });

  it("is a decimal mark where it can be nothing else", () => {
    expect(si(parseQuantity("diameter", "155,60 mm", "f"))).toBeCloseTo(0.1556, 12);
    expect(si(parseQuantity("diameter", "1555,625 mm", "f"))).toBeCloseTo(1.555625, 12);
  });

  it("says how it read the comma when that breaks a limit", () => {
    expect(line("diameter", "6,125 in", { least: "0.5 in", most: "60 in" })).toMatch(
      /got "6,125 in" \(its comma read as a thousands mark\), which is over 60 in/,
    );
  });

  it("is refused where it parts nothing", () => {
    expect(line("force", "1,23,456 N")).toMatch(/do not part it into thousands/);
    expect(line("force", "12.34.5 N")).toMatch(/do not part it into thousands/);
  });
});

describe("what is refused, in one line each", () => {
  it("names field, value and what is taken", () => {
    expect(line("diameter", "90 rpm", { least: "0.5 in", most: "60 in" })).toBe(
      'field: got "90 rpm", which is a rotary speed; give a length of 0.5 in to 60 in, for example "6 1/8 in" or "155.6 mm"',
    );
    expect(line("diameter", 6.125)).toBe(
      'field: got 6.125 without a unit; give a length, for example "6 1/8 in" or "155.6 mm"',
    );
  });

  it.each([
    ["depth", "300", /got "300" without a unit/],
    ["depth", "", /nothing is given/],
    ["depth", undefined, /nothing is given/],
    ["depth", null, /nothing is given/],
    ["depth", Number.NaN, /NaN, which is no number to work with/],
    ["depth", "NaN ft", /no number to work with/],
    ["depth", "Infinity m", /no number to work with/],
    ["depth", Number.POSITIVE_INFINITY, /Infinity, which is no number/],
    ["depth", "1e999 m", /too large/],
    ["depth", "-10 ft", /below zero/],
    ["depth", "deep", /does not begin with a number/],
    ["depth", "12 furlongs", /"furlongs" is no unit known here/],
    ["depth", "6 9/8 in", /less than one/],
    ["depth", "1/0 in", /over zero/],
    ["depth", "5-10 ft", /what follows the number is not understood|no unit known here/],
    ["depth", "6 in 3 ft", /no unit known here/],
    ["depth", true, /got true, which is no quantity/],
    ["depth", ["3 ft"], /which is no quantity/],
    ["depth", { unit: "ft" }, /which is no quantity/],
    ["depth", { value: 3 }, /without a unit/],
    ["force", "100 kg", /which is a mass/],
    ["diameter", "13 lb", /which is a mass or a force/],
    ["temperature", 0, /without a unit/],
    ["air flow", "100 gpm", /which is a flow/],
  ] as const)("%s from %j", (kind, input, pattern) => {
    const message = line(kind, input);
    expect(message).toMatch(pattern);
    expect(message).toMatch(/^field: .*; give an? .*, for example /);
    expect(message).not.toMatch(/\n/);
  });

  it("lets a limit itself pass and refuses what is beyond it", () => {
    const limits = { least: "1/2 in", most: "60 in" };
    expect(si(parseQuantity("diameter", "12.7 mm", "f", limits))).toBeCloseTo(0.0127, 12);
    expect(si(parseQuantity("diameter", "1524 mm", "f", limits))).toBeCloseTo(1.524, 12);
    expect(line("diameter", "12.6 mm", limits)).toMatch(/under 1\/2 in/);
    expect(line("diameter", "61 in", limits)).toMatch(/over 60 in/);
    expect(line("diameter", "-6 in", limits)).toMatch(/below zero/);
  });

  it("never throws, whatever is typed", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.jsonValue(), fc.stringMatching(/^[-0-9., /'"a-z]{0,12}$/)), (input) => {
        const parsed = parseQuantity("depth", input, "field");
        if (parsed.ok) expect(Number.isFinite(parsed.value.si)).toBe(true);
        else expect(parsed.problem.message.startsWith("field: ")).toBe(true);
      }),
    );
  });
});
