import fc from "fast-check";
import { unit as mathUnit } from "mathjs";
import { describe, expect, it } from "vitest";
import { inUnit } from "./format-quantity.ts";
import { parseQuantity } from "./parse-quantity.ts";
import { QUANTITY_KINDS, type QuantityKind } from "./quantity-kind.ts";
import { unitKey, unitOf } from "./unit-lookup.ts";
import { type Dimension, UNIT_TABLE } from "./unit-table.ts";

const factor = (dimension: Dimension, text: string) => unitOf(dimension, text)?.factor ?? Number.NaN;

describe("factors against their published values", () => {
  // NIST Special Publication 811 appendix B.8 and NIST Handbook 44 appendix C, recalled; all are exact or rounded there.
  it.each([
    ["length", "in", 0.0254],
    ["length", "ft", 0.3048],
    ["mass", "lb", 0.45359237],
    ["force", "lbf", 4.4482216152605],
    ["force", "kgf", 9.80665],
    ["pressure", "psi", 6894.757293168],
    ["pressure", "atm", 101325],
    ["pressure", "kgf/cm2", 98066.5],
    ["volume", "gal", 3.785411784e-3],
    ["money per volume", "/gal", 1 / 3.785411784e-3],
    ["volume", "bbl", 0.158987294928],
    ["volume per length", "gal/ft", 3.785411784e-3 / 0.3048],
    ["flow", "gpm", 6.30901964e-5],
    ["air flow", "cfm", 4.719474432e-4],
    ["density", "ppg", 119.826427],
    ["density", "lb/ft3", 16.01846337],
    ["torque", "ft-lbf", 1.3558179483314],
    ["torque", "in-lbf", 0.1129848290276167],
    ["rotary speed", "rpm", 0.10471975512],
    ["power", "hp", 745.69987158227],
    ["viscosity", "cP", 1e-3],
    ["shear stress", "lbf/100 ft2", 0.4788025898],
    ["linear mass", "lb/ft", 1.488163944],
    ["force per length", "lbf/in", 175.1268352],
    ["force per pressure", "lbf/psi", 6.4516e-4],
    ["slowness", "us/ft", 3.280839895e-6],
    ["angle", "deg", 0.017453292519943],
  ] as const)("one %s of %s", (dimension, text, expected) => {
    expect(Math.abs(factor(dimension, text) / expected - 1)).toBeLessThan(5e-9);
  });

  it("meets the fixed points of the temperature scales", () => {
    const kelvin = (text: string) => {
      const parsed = parseQuantity("temperature", text, "t");
      return parsed.ok ? parsed.value.si : Number.NaN;
    };
    expect(kelvin("32 °F")).toBeCloseTo(273.15, 10);
    expect(kelvin("212 °F")).toBeCloseTo(373.15, 10);
    expect(kelvin("-40 °F")).toBeCloseTo(kelvin("-40 °C"), 10);
    expect(kelvin("0 K")).toBe(0);
  });
});

/**
 * What the mathematics library calls each unit and its SI unit; compound units are spelled out. Its kip is rounded, so
 * a thousand lbf stands for it; its gallon is rounded to 3.785 L, so units with gallons are left to the values above.
 */
const ORACLE: Readonly<Record<string, readonly [string, string]>> = {
  "length in": ["in", "m"],
  "length ft": ["ft", "m"],
  "length mm": ["mm", "m"],
  "length cm": ["cm", "m"],
  "length km": ["km", "m"],
  "length µm": ["um", "m"],
  "area in²": ["in^2", "m^2"],
  "area ft²": ["ft^2", "m^2"],
  "area mm²": ["mm^2", "m^2"],
  "area cm²": ["cm^2", "m^2"],
  "volume in³": ["in^3", "m^3"],
  "volume ft³": ["ft^3", "m^3"],
  "volume L": ["L", "m^3"],
  "volume cm³": ["cm^3", "m^3"],
  "volume mm³": ["mm^3", "m^3"],
  "mass lb": ["lbm", "kg"],
  "mass g": ["g", "kg"],
  "mass t": ["tonne", "kg"],
  "force lbf": ["lbf", "N"],
  "force klbf": ["1000 lbf", "N"],
  "force kN": ["kN", "N"],
  "force MN": ["MN", "N"],
  "force daN": ["daN", "N"],
  "pressure psi": ["psi", "Pa"],
  "pressure ksi": ["1000 lbf/in^2", "Pa"],
  "pressure lbf/ft²": ["lbf/ft^2", "Pa"],
  "pressure kPa": ["kPa", "Pa"],
  "pressure MPa": ["MPa", "Pa"],
  "pressure GPa": ["GPa", "Pa"],
  "pressure bar": ["bar", "Pa"],
  "pressure mbar": ["mbar", "Pa"],
  "pressure atm": ["atm", "Pa"],
  "flow L/min": ["L/minute", "m^3/s"],
  "flow L/s": ["L/s", "m^3/s"],
  "flow m³/h": ["m^3/hour", "m^3/s"],
  "flow m³/min": ["m^3/minute", "m^3/s"],
  "air flow cfm": ["ft^3/minute", "m^3/s"],
  "air flow m³/min": ["m^3/minute", "m^3/s"],
  "air flow m³/h": ["m^3/hour", "m^3/s"],
  "density lb/ft³": ["lbm/ft^3", "kg/m^3"],
  "density g/cm³": ["g/cm^3", "kg/m^3"],
  "torque ft-lbf": ["ft lbf", "N m"],
  "torque kft-lbf": ["1000 ft lbf", "N m"],
  "torque in-lbf": ["in lbf", "N m"],
  "torque kN m": ["kN m", "N m"],
  "rotary speed rpm": ["360 deg/minute", "rad/s"],
  "stroke rate spm": ["minute^-1", "s^-1"],
  "speed ft/min": ["ft/minute", "m/s"],
  "speed ft/s": ["ft/s", "m/s"],
  "speed ft/h": ["ft/hour", "m/s"],
  "speed in/min": ["in/minute", "m/s"],
  "speed m/min": ["m/minute", "m/s"],
  "speed m/h": ["m/hour", "m/s"],
  "speed mm/s": ["mm/s", "m/s"],
  "speed mm/min": ["mm/minute", "m/s"],
  "advance in/rev": ["in", "m"],
  "advance mm/rev": ["mm", "m"],
  "power hp": ["550 ft lbf/s", "W"],
  "power kW": ["kW", "W"],
  "angle deg": ["deg", "rad"],
  "angle mrad": ["mrad", "rad"],
  "viscosity cP": ["mPa s", "Pa s"],
  "shear stress lbf/100 ft²": ["0.01 lbf/ft^2", "Pa"],
  "shear stress kPa": ["kPa", "Pa"],
  "linear mass lb/ft": ["lbm/ft", "kg/m"],
  "force per length lbf/in": ["lbf/in", "N/m"],
  "force per length N/mm": ["N/mm", "N/m"],
  "force per length kN/m": ["kN/m", "N/m"],
  "force per pressure lbf/psi": ["lbf/psi", "N/Pa"],
  "force per pressure N/kPa": ["N/kPa", "N/Pa"],
  "force per pressure N/bar": ["N/bar", "N/Pa"],
  "force per pressure kN/bar": ["kN/bar", "N/Pa"],
  "force per pressure kN/MPa": ["kN/MPa", "N/Pa"],
  "force per pressure cm²": ["cm^2", "N/Pa"],
  "volume per length L/m": ["L/m", "m^2"],
  "slowness µs/ft": ["us/ft", "s/m"],
  "slowness µs/m": ["us/m", "s/m"],
  "duration d": ["day", "s"],
  "duration h": ["hour", "s"],
  "duration min": ["minute", "s"],
  "flow L/h": ["L/hour", "m^3/s"],
  "money per time /h": ["hour^-1", "s^-1"],
  "money per time /d": ["day^-1", "s^-1"],
  "money per volume /L": ["L^-1", "m^-3"],
  "money per length /ft": ["ft^-1", "m^-1"],
  "temperature °F": ["degF", "K"],
  "temperature °C": ["degC", "K"],
};

/** Units the library lacks, or holds rounded; they stand in the table of published values above or follow from one there. */
const NOT_IN_THE_ORACLE: ReadonlySet<string> = new Set([
  "volume gal",
  "volume bbl",
  "flow gpm",
  "flow bbl/min",
  "flow gal/h",
  "money per volume /gal",
  "volume per length gal/ft",
  "density ppg",
  "density sg",
  "force kgf",
  "pressure kgf/cm²",
  "torque kgf m",
  "rotary speed rev/s",
  "viscosity P",
  "share %",
  "air flow L/s",
  "air flow L/min",
]);

describe("factors against an independent mathematics library, over random values", () => {
  const all = (Object.keys(UNIT_TABLE) as Dimension[]).flatMap((dimension) =>
    UNIT_TABLE[dimension].filter((unit) => unit.factor !== 1 || unit.zero !== 0).map((unit) => ({ dimension, unit })),
  );

  it("leaves no unit unchecked without saying so", () => {
    const names = all.map(({ dimension, unit }) => `${dimension} ${unit.name}`);
    expect(names.filter((name) => !(name in ORACLE) && !NOT_IN_THE_ORACLE.has(name))).toEqual([]);
  });

  it.each(
    all
      .map(({ dimension, unit }) => ({ name: `${dimension} ${unit.name}`, unit }))
      .filter(({ name }) => name in ORACLE),
  )("$name", ({ name, unit }) => {
    const [from, to] = ORACLE[name] ?? ["", ""];
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e5, noNaN: true }), (value) => {
        // A temperature is a reading on a scale, anything else a multiple.
        const expected = /°/.test(name)
          ? mathUnit(value, from).toNumber(to)
          : value * mathUnit(/^[\d.]/.test(from) ? from : `1 ${from}`).toNumber(to);
        const got = (value + unit.zero) * unit.factor;
        expect(Math.abs(got / expected - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 20 },
    );
  });
});

describe("the table as a whole", () => {
  it("has no text that stands for two units of one dimension", () => {
    for (const units of Object.values(UNIT_TABLE)) {
      const keys = units.flatMap((unit) => [...new Set([unit.name, ...unit.alsoWritten].map(unitKey))]);
      expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
    }
  });

  it("reads back every unit it writes", () => {
    for (const dimension of Object.keys(UNIT_TABLE) as Dimension[]) {
      for (const unit of UNIT_TABLE[dimension]) expect(unitOf(dimension, unit.name)?.name).toBe(unit.name);
    }
  });

  it("reads every example of every kind and knows every unit that is shown", () => {
    for (const kind of Object.keys(QUANTITY_KINDS) as QuantityKind[]) {
      for (const example of QUANTITY_KINDS[kind].examples) expect(parseQuantity(kind, example, "f").ok).toBe(true);
      for (const unit of Object.values(QUANTITY_KINDS[kind].shown).flat()) expect(inUnit(kind, 1, unit)).not.toBeNaN();
    }
  });
});
