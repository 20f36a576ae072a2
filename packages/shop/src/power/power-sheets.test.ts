import { describe, expect, it } from "vitest";
import { demoWorkup } from "../../../../tests/support/demo-workup.ts";
import { elementsWhere, xmlTree } from "../../../../tests/support/xml-tree.ts";
import { figuresIn } from "../summary/figures.ts";
import { powerSheets, powerTable, powerWords } from "./index.ts";

const workup = demoWorkup("house-well");
const { power } = workup;
if (!power) throw new Error("the house well is drilled");
const sheet = (name: string, units: "field" | "metric" = "field") =>
  powerSheets(workup, { units, program: "Bitwright 0.0.0" }).find((one) => one.name === name)?.text ?? "";
const drawing = xmlTree(sheet("power.svg"));
const byClass = (name: string) => elementsWhere(drawing, ({ attributes }) => attributes.class === name);

describe("the sheet of the engine", () => {
  const bars = byClass("bed-power").map((group) =>
    elementsWhere(group, ({ name }) => name === "rect").map(({ attributes }) => ({
      from: Number(attributes.x),
      width: Number(attributes.width),
    })),
  );

  it("has a bar for each bed, its parts end to end, each as long as its power", () => {
    expect(bars).toHaveLength(power.beds.length);
    for (const [k, parts] of bars.entries()) {
      const { rotaryPower, pumpPower } = power.beds[k].parts;
      expect(parts[0].width / parts[1].width).toBeCloseTo(rotaryPower / pumpPower, 1);
      for (const [at, { from, width }] of parts.entries()) {
        if (parts[at + 1]) expect(from + width).toBeCloseTo(parts[at + 1].from, 1);
      }
    }
  });

  it("has the line of the engine where its rating is on the axis", () => {
    const [line] = byClass("rated");
    const x = Number(/^M([\d.]+)/.exec(line.attributes.d ?? "")?.[1]);
    const [first] = bars[0];
    const whole = bars[0].reduce((sum, { width }) => sum + width, 0);
    expect((x - first.from) / whole).toBeCloseTo(power.ratedPower / power.beds[0].enginePower.mid, 1);
  });
});

describe("the table of the engine", () => {
  it("sums its parts to the load in every row", () => {
    const [heads, ...rows] = sheet("power.csv")
      .trim()
      .split("\n")
      .map((line) => line.replace(/"[^"]*"/g, "quoted").split(","));
    expect(rows).toHaveLength(power.beds.length);
    expect(heads).toHaveLength(rows[0].length);
    for (const row of rows) {
      const parts = row.slice(1, 6).reduce((sum, cell) => sum + Number(cell), 0);
      expect(parts).toBeCloseTo(Number(row[7]), 2);
      expect(Number(row[6])).toBeLessThan(Number(row[7]));
    }
    expect(sheet("power.csv", "metric")).toContain("turning [kW]");
  });

  it("says engine, fuel and whose burn it is in words", () => {
    const figures = figuresIn("field");
    expect(powerTable(power, figures)[0]).toMatch(/^ground +turning +mud pump +pushing +engine itself +engine gives/);
    expect(powerWords(power, figures, 200).join(" ")).toMatch(/rated 150 hp.*Fuel by 0\.36 lb/);
    const own = { ...power, givenFuelFlow: power.meanFuelFlow.mid };
    expect(powerWords(own, figures, 200).join(" ")).toMatch(/burn as given; the load alone/);
  });
});
