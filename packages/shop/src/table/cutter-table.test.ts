import { describe, expect, it } from "vitest";
import { csvText } from "./csv-text.ts";
import { cutterTableCsv, cutterTableRows } from "./cutter-table.ts";

const deg = Math.PI / 180;
const layout = {
  holeDiameter: 0.1556,
  cutters: [
    {
      radius: 0.0508,
      azimuth: 90 * deg,
      height: -0.001,
      profileAngle: -15 * deg,
      backRake: 12 * deg,
      sideRake: -1e-12,
      faceDiameter: 0.01344,
      length: 0.008,
      wing: 0,
      chamferWidth: 4e-4,
      chamferAngle: 45 * deg,
      wornHeight: 0,
    },
  ],
};

describe("cutterTableCsv", () => {
  it("heads every number with its unit and keeps cutters in millimetres in both systems", () => {
    const [heads, row] = cutterTableRows({ layout, units: "metric" });
    expect(heads.slice(2).every((head) => /\[[^\]]+\]$/.test(head))).toBe(true);
    const metric = Object.fromEntries(heads.map((head, k) => [head, row[k]]));
    expect(metric).toMatchObject({
      cutter: "1",
      wing: "",
      "radius [mm]": "50.800",
      "azimuth [deg]": "90.00",
      "height [mm]": "-1.000",
      "side rake [deg]": "0.00",
      "face diameter [mm]": "13.44",
    });
    const [fieldHeads, fieldRow] = cutterTableRows({ layout, units: "field" });
    expect(fieldRow[fieldHeads.indexOf("radius [in]")]).toBe("2.0000");
    expect(fieldRow[fieldHeads.indexOf("face diameter [mm]")]).toBe("13.44");
  });

  it("adds what was computed, and refuses a row of the wrong length", () => {
    // 100 lbf and 1 in² from the definitions of pound and inch.
    const perCutter = {
      drag: [100 * 0.45359237 * 9.80665],
      areaOfCut: [0.0254 ** 2],
      contactTemperature: [Number.NaN],
    };
    const [heads, row] = cutterTableRows({ layout, units: "field", perCutter });
    expect(row[heads.indexOf("drag [lbf]")]).toBe("100.0");
    expect(row[heads.indexOf("area of cut [in²]")]).toBe("1.000000");
    expect(row[heads.indexOf("contact temperature [°F]")]).toBe("");
    expect(() => cutterTableCsv({ layout, units: "field", perCutter: { drag: [1, 2] } })).toThrow(/drag needs a value/);
  });
});

describe("csvText", () => {
  it("quotes what would break a row and disarms what a spreadsheet would run", () => {
    expect(csvText([["a,b", 'say "x"', "=1+1", "-3.5", "-A1"]])).toBe(`"a,b","say ""x""",'=1+1,-3.5,'-A1\n`);
    // A number so small that it is written with a power of ten is still a number.
    expect(csvText([["-2.2481e-13", "-1e+21", "-1e"]])).toBe(`-2.2481e-13,-1e+21,'-1e\n`);
  });
});
