import { band } from "@bitwright/engine";
import { type BandsStudy, type BedBands, bandsStudy } from "@bitwright/traveler";
import { beforeAll, describe, expect, it } from "vitest";
import { demoWorkup } from "../../../../tests/support/demo-workup.ts";
import { footPerHour, poundForce } from "../../../../tests/support/field-units.ts";
import { elementsWhere, xmlTree } from "../../../../tests/support/xml-tree.ts";
import { bandText, driversText, heldText, sharesText } from "./band-words.ts";
import { bandsCsv } from "./bands-csv.ts";
import { bandsDrawings } from "./bands-drawing.ts";

const title = { job: "Ridge Road", bit: "6 1/8 in bit", program: "Bitwright 0.1.0", hole: "6 1/8 in" };

let study: BandsStudy;
beforeAll(() => {
  study = bandsStudy(demoWorkup("house-well"), { samples: 30 });
});

describe("words of a band", () => {
  it("give the three figures in one unit, to two figures", () => {
    const rate = band(31.44 * footPerHour, 118.6 * footPerHour, 119.9 * footPerHour);
    expect(bandText("rate", rate, "field")).toBe("31 / 120 / 120 ft/h");
    expect(bandText("weightForRate", band(380.2 * poundForce, 2262 * poundForce, 7745 * poundForce), "field")).toBe(
      "380 / 2,300 / 7,700 lbf",
    );
    expect(bandText("weightForRate", band(900, 2262, 30e3), "metric")).toBe("0.9 / 2.3 / 30 kN");
    expect(bandText("torque", undefined, "field")).toBe("-");
  });

  it("name the parts of a whole, largest first, and leave out what is next to nothing", () => {
    expect(
      sharesText(
        [
          { name: "strength", share: 0.951 },
          { name: "friction", share: 0.045 },
          { name: "cooling", share: 0.004 },
        ],
        3,
      ),
    ).toBe("strength 95 %, friction 5 %");
    expect(driversText(study.beds[0], "rate")).toMatch(/^strength \d+ %/);
    expect(heldText(study.beds[0])).toMatch(/exposure \d+ %/);
  });
});

describe("bandsDrawings", () => {
  const trees = (of: BandsStudy) => bandsDrawings({ study: of, title, units: "field" }).map(xmlTree);

  it("draws one bar a bed from P10 through P50 to P90 on one axis, the figure worked with in it", () => {
    const [root] = trees(study);
    const rows = elementsWhere(root, ({ attributes }) => attributes.class === "bed-bands");
    expect(rows).toHaveLength(study.beds.length);
    const places: [number, number][] = [];
    for (const [k, row] of rows.entries()) {
      const { band: rate } = study.beds[k].bands.figures.rate;
      if (!rate) throw new Error("no band");
      const [low, high] = elementsWhere(row, ({ name, attributes }) => name === "rect" && attributes.height === "6");
      const [worked] = elementsWhere(row, ({ attributes }) => attributes.class === "worked");
      places.push(
        [rate.low, Number(low.attributes.x)],
        [rate.mid, Number(high.attributes.x)],
        [study.beds[k].worked.rate, Number(worked.attributes.cx)],
      );
    }
    // All on one straight axis: the place on the page goes with the rate.
    const [[r0, x0], [r1, x1]] = [places[0], places.reduce((most, one) => (one[0] > most[0] ? one : most))];
    for (const [rate, x] of places)
      expect(Math.abs(x - (x0 + ((rate - r0) / (r1 - r0)) * (x1 - x0)))).toBeLessThan(0.01);
  });

  it("lays the drivers out as parts of one strip", () => {
    const [root] = trees(study);
    const [row] = elementsWhere(root, ({ attributes }) => attributes.class === "bed-bands");
    const widths = elementsWhere(row, ({ attributes }) => attributes.class === "driver").map((one) =>
      Number(one.attributes.width),
    );
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
    const shares = study.beds[0].bands.figures.rate.drivers.map(({ share }) => share);
    expect(widths[0] / widths[1]).toBeCloseTo(shares[0] / shares[1], 1);
  });

  it("goes on to more sheets where the beds are many, and says of which", () => {
    const many: BedBands[] = Array.from({ length: 12 }, (_, k) => ({ ...study.beds[k % 4], number: k + 1 }));
    const sheets = trees({ ...study, beds: many });
    expect(sheets).toHaveLength(3);
    const words = sheets.map((root) => elementsWhere(root, ({ name }) => name === "text").map(({ text }) => text));
    expect(words.map((texts) => texts.includes("2 of 3"))).toEqual([false, true, false]);
  });

  it("says when it was stopped early", () => {
    const [first] = study.beds;
    const [root] = trees({ ...study, asked: 500, beds: [first], notReached: ["limestone"] });
    const words = elementsWhere(root, ({ name }) => name === "text").map(({ text }) => text);
    expect(words.join(" ")).toMatch(/Stopped early: 30 of 500 samples/);
    expect(words.join(" ")).toMatch(/Not reached: limestone/);
  });

  it("never prints what it does not have", () => {
    for (const text of bandsDrawings({ study, title, units: "metric" }))
      expect(text).not.toMatch(/NaN|undefined|Infinity/);
  });
});

describe("bandsCsv", () => {
  it("has a row for each figure of each bed, its P10 to P90 in order", () => {
    const [heads, ...rows] = bandsCsv(study, "field").trimEnd().split("\n");
    expect(
      heads.startsWith("bed,from [ft],to [ft],figure,unit,P10,P50,P90,worked with,samples,seed,driver 1,share 1 [%]"),
    ).toBe(true);
    expect(rows).toHaveLength(5 * study.beds.length);
    for (const row of rows) {
      const figures = /,(?:ft\/h|lbf|ft-lbf|psi),([\d.]+),([\d.]+),([\d.]+),/.exec(row)?.slice(1).map(Number) ?? [];
      expect(figures).toHaveLength(3);
      expect(figures).toEqual([...figures].sort((a, b) => a - b));
    }
  });
});
