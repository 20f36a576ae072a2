import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellNumber, isMissing } from "./cell-number.ts";

describe("cellNumber", () => {
  it.each([
    ["1.25", ".", 1.25],
    [" -999.25 ", ".", -999.25],
    ["1,234.5", ".", 1234.5],
    ["12,345", ".", 12345],
    ["1.45E+12", ".", 1.45e12],
    [".5", ".", 0.5],
    ["7,25", ",", 7.25],
    ["1.234,5", ",", 1234.5],
  ] as const)("%s with a decimal %s", (text, mark, value) => {
    expect(cellNumber(text, mark)).toBe(value);
  });

  it.each(["", "abc", "12 ft", "1,23", "2020-01-01", "10:30:00", "--", "Infinity", "0x10"])(
    "no number in %s",
    (text) => {
      expect(cellNumber(text)).toBeNaN();
    },
  );

  it("reads back any number as it is written", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e15, max: 1e15 }), (value) => {
        expect(cellNumber(String(value))).toBeCloseTo(value, 12);
      }),
    );
  });
});

describe("isMissing", () => {
  it.each(["", " ", "-", "(null)", "NaN", "N/A"])("%s", (text) => expect(isMissing(text)).toBe(true));
  it.each(["0", "-1", "clay"])("not %s", (text) => expect(isMissing(text)).toBe(false));
});
