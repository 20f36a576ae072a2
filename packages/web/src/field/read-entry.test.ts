import { describe, expect, it } from "vitest";
import { echoOf, entryText, entryUnit, readEntry } from "./read-entry.ts";

const HOLE = [{ kind: "diameter", limits: { least: "0.5 in", most: "60 in" } }] as const;
const WEIGHT = [{ kind: "force", limits: { most: "500 klbf" } }, { kind: "force per length" }] as const;

describe("readEntry", () => {
  it("takes a bare number in the unit beside the field", () => {
    // 6 1/8 in × 25.4 mm/in = 155.575 mm
    expect(readEntry("6 1/8", HOLE, "field")).toEqual({
      ok: true,
      text: "6 1/8 in",
      kind: "diameter",
      si: expect.closeTo(0.155575, 9),
    });
    expect(readEntry("155,6", HOLE, "metric")).toMatchObject({ text: "155,6 mm", si: expect.closeTo(0.1556, 9) });
  });

  it("leaves a text with its own unit as typed, whatever the units of the screen", () => {
    expect(readEntry("8 1/2 in", HOLE, "metric")).toMatchObject({ ok: true, text: "8 1/2 in" });
  });

  it("reads a field that takes two kinds as either", () => {
    expect(readEntry("1000 lb/in", WEIGHT, "field")).toMatchObject({ kind: "force per length" });
    expect(readEntry("6000 lbf", WEIGHT, "field")).toMatchObject({ kind: "force" });
  });

  it("says what is wrong, the limit, and what to do", () => {
    const over = readEntry("80 in", HOLE, "field");
    expect(over).toEqual({
      ok: false,
      words:
        'Got "80 in", which is over 60 in. Give a length of 0.5 in to 60 in, for example "6 1/8 in" or "155.6 mm".',
    });
    expect(readEntry("90 rpm", HOLE, "field")).toMatchObject({ words: expect.stringContaining("rotary speed") });
  });
});

describe("entryUnit", () => {
  it("is the one the trade writes", () => {
    expect([entryUnit("force", "metric"), entryUnit("pressure", "metric"), entryUnit("depth", "field")]).toEqual([
      "kN",
      "kPa",
      "ft",
    ]);
    expect(entryUnit("ratio", "field")).toBe("");
  });
});

describe("echoOf", () => {
  const reading = (text: string) => {
    const read = readEntry(text, HOLE, "field");
    if (!read.ok) throw new Error(read.words);
    return read;
  };

  it("says the value in the units of the screen", () => {
    expect(echoOf(reading("155.575 mm"), "field")).toBe("= 6 1/8 in");
    expect(echoOf(reading("6 1/8 in"), "metric")).toBe("= 155.6 mm");
  });

  it("says it in the other system where the text says it already", () => {
    expect(echoOf(reading("6 1/8 in"), "field")).toBe("= 155.6 mm");
  });
});

describe("entryText", () => {
  it("is the text, or value and unit of an object", () => {
    expect([entryText("6 in"), entryText({ value: 6, unit: "in" }), entryText(undefined)]).toEqual([
      "6 in",
      "6 in",
      "",
    ]);
  });
});
