import { describe, expect, it } from "vitest";
import { bandText, readBand } from "./band-text.ts";

const STRENGTH = [{ kind: "strength", limits: { least: "0 psi", most: "100 ksi" } }] as const;

describe("readBand", () => {
  it("reads one value, two and three, the last unit for all", () => {
    expect(readBand("8000", STRENGTH, "field")).toMatchObject({ entry: "8000 psi" });
    expect(readBand("5000 to 12000 psi", STRENGTH, "field")).toMatchObject({
      entry: { low: "5000 psi", high: "12000 psi" },
    });
    expect(readBand("35 / 55 / 83 MPa", STRENGTH, "field")).toMatchObject({
      entry: { low: "35 MPa", mid: "55 MPa", high: "83 MPa" },
      si: [35e6, 55e6, 83e6],
    });
  });

  it("says what is wrong", () => {
    expect(readBand("9000 / 5000 psi", STRENGTH, "field")).toMatchObject({
      ok: false,
      words: expect.stringContaining("rising order"),
    });
    expect(readBand("5 / 6 / 7 / 8 psi", STRENGTH, "field")).toMatchObject({
      words: expect.stringContaining("more than three"),
    });
    expect(readBand("200000 psi", STRENGTH, "field")).toMatchObject({ words: expect.stringContaining("over 100 ksi") });
  });

  it("is read back as it was written", () => {
    const entry = { low: "5000 psi", mid: "8000 psi", high: "12000 psi" };
    expect(bandText(entry)).toBe("5000 / 8000 / 12000 psi");
    expect(readBand(bandText(entry), STRENGTH, "metric")).toMatchObject({ entry });
    expect(bandText({ low: "35 MPa", high: "8700 psi" })).toBe("35 MPa / 8700 psi");
  });
});
