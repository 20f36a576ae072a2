import { describe, expect, it } from "vitest";
import { foot } from "../../../../tests/support/field-units.ts";
import type { GroundImport } from "./ground-section.ts";
import { readLas } from "./las.ts";
import { bedsFromLas, type LasBedsOptions } from "./las-beds.ts";

/** An invented sonic log: 60 µs/ft to 130 ft, 80 µs/ft below, one reading missing and one far out of range. */
function log(unit = "US/FT", factor = 1): string {
  const rows = Array.from({ length: 80 }, (_, at) => {
    const slowness = at === 5 ? -999.25 : at === 7 ? 900 * factor : (at < 30 ? 60 : 80) * factor;
    return `${100 + at} ${slowness.toFixed(4)} 0.1`;
  });
  return [
    "~V\nVERS. 2.0 : V\nWRAP. NO : W\n~W\nSTRT.FT 100 : S\nSTOP.FT 179 : S\nSTEP.FT 1 : S\nNULL. -999.25 : N\nCOMP. X : C\n",
    `~C\nDEPT.FT : Depth\nDT.${unit} : Sonic\nNPHI.V/V : Porosity\n~A\n`,
    `${rows.join("\n")}\n`,
  ].join("");
}

function bedsOf(text: string, options: Partial<LasBedsOptions> = {}) {
  const las = readLas(text);
  if (las.refused) throw new Error(las.reason);
  return bedsFromLas(las, {
    curve: "DT",
    correlation: "sonic-sandstone-bowen",
    rocks: [{ from: 0, phrase: "sandstone" }],
    ...options,
  });
}

function readOf(beds: ReturnType<typeof bedsOf>): GroundImport {
  if (beds.refused) throw new Error(beds.reason);
  return beds;
}

describe("bedsFromLas", () => {
  it("makes beds of even strength, each with the correlation and its median reading", () => {
    const { ground, report } = readOf(bedsOf(log()));
    expect(ground.beds.map(({ notes: _, ...bed }) => bed)).toEqual([
      {
        top: "100 ft",
        bottom: "130 ft",
        phrase: "sandstone",
        strengthFrom: { correlation: "sonic-sandstone-bowen", reading: "60 µs/ft" },
      },
      {
        top: "130 ft",
        bottom: "179 ft",
        phrase: "sandstone",
        strengthFrom: { correlation: "sonic-sandstone-bowen", reading: "80 µs/ft" },
      },
    ]);
    // McNally 1987: 138.4 MPa at 60 µs/ft, 67.4 MPa at 80; in the units of a log in feet 20,100 and 9,770 psi.
    expect(ground.beds[0]?.notes).toContain("20,100 psi");
    expect(ground.beds[1]?.notes).toContain("9,770 psi");
    expect(report.faults.filter((fault) => fault.code !== "well-items-missing")).toMatchObject([
      { code: "curve-null", rows: 1 },
      { code: "outside-correlation", rows: 1 },
    ]);
  });

  it("reads the same strength from metres and from a speed", () => {
    const metric = readOf(bedsOf(log("US/M", 1 / foot)));
    expect(metric.ground.beds[0]?.strengthFrom?.reading).toBe("196.9 µs/m");
    expect(metric.ground.beds[0]?.notes).toContain("138 MPa");
  });

  it("parts where the user names another rock, and doubts a correlation made on another", () => {
    const { ground, report } = readOf(
      bedsOf(log(), {
        rocks: [
          { from: 0, phrase: "sandstone" },
          { from: 150.5 * foot, phrase: "limestone" },
        ],
      }),
    );
    expect(ground.beds.map(({ top, phrase }) => [top, phrase])).toEqual([
      ["100 ft", "sandstone"],
      ["130 ft", "sandstone"],
      ["150.5 ft", "limestone"],
    ]);
    expect(report.faults.find((fault) => fault.code === "correlation-doubtful")?.what).toMatch(/^150.5 ft to 179 ft/);
  });

  it("takes a porosity as the share it is", () => {
    const { ground } = readOf(bedsOf(log(), { curve: "NPHI", correlation: "porosity-sandstone" }));
    expect(ground.beds[0]?.strengthFrom).toEqual({ correlation: "porosity-sandstone", reading: "10 %" });
  });

  it.each([
    [{ curve: "GR" }, /no curve "GR"; the curves are DEPT, DT, NPHI/],
    [{ correlation: "any" }, /no correlation "any"/],
    [{ curve: "NPHI" }, /asks for a sonic slowness/],
    [{ set: "core" }, /no set "core"/],
    [{ correlation: "velocity-sandstone-strong" }, /needs the bulk density/],
    [{ depthUnit: "s" }, /no unit of depth/],
  ])("refuses %j", (options, reason) => {
    const beds = bedsOf(log(), options);
    expect(beds.refused && beds.reason).toMatch(reason);
  });
});
