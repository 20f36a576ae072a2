import { readFileSync } from "node:fs";
import { type LifeStation, lifeStation, parseTraveler, type Workup, workUp } from "@bitwright/traveler";
import { describe, expect, it } from "vitest";
import { projectFile } from "../../../../tests/support/command.ts";
import { NOTHING_PRINTED } from "../../../../tests/support/worked-up.ts";
import { elementsWhere, xmlTree } from "../../../../tests/support/xml-tree.ts";
import { lifeSheets } from "./life-sheets.ts";

const read = parseTraveler(readFileSync(projectFile("examples/house-well.traveler.json"), "utf8"));
if (!read.ok) throw new Error("the example is no sound traveler");
const workup: Workup = workUp(read);
const many = lifeStation(workup.inquiry, workup);
const few = lifeStation(workup.inquiry, workup, { holes: 2 });

function sheet(station: LifeStation, name: string, units: "field" | "metric" = "field"): string {
  const found = lifeSheets(workup, station, { units, program: "Bitwright" }).find((one) => one.name === name);
  return found?.text ?? expect.fail(`no ${name}`);
}

const classed = (svg: string, name: string | RegExp) =>
  elementsWhere(xmlTree(svg), ({ attributes }) =>
    typeof name === "string" ? attributes.class === name : name.test(attributes.class ?? ""),
  );

describe("lifeSheets", () => {
  it("draws one line through the beds of a few holes, the ground of each bed behind it", () => {
    const svg = sheet(few, "life.svg");
    expect(classed(svg, "all-beds").length).toBe(4);
    const grounds = classed(svg, "ground");
    expect(grounds.length).toBe(6);
    expect(grounds[0].children.length).toBe(2 * few.beds.length);
    const ends = grounds[0].children.map(({ attributes }) => Number(attributes.x) + Number(attributes.width));
    grounds[0].children.slice(1).forEach(({ attributes }, k) => {
      expect(Number(attributes.x)).toBeCloseTo(ends[k], 2);
    });
  });

  it("draws a line for each bed over many holes, numbered as in the legend", () => {
    const svg = sheet(many, "life.svg");
    expect(classed(svg, "all-beds").length).toBe(0);
    few.beds.forEach((_, k) => {
      expect(classed(svg, `bed-${k + 1}`).length).toBe(4);
    });
    const words = elementsWhere(xmlTree(svg), ({ name }) => name === "text").map(({ text }) => text);
    for (const { name } of many.beds) expect(words).toContain(name);
    expect(words.some((text) => /gauge has lost as much as is allowed/.test(text))).toBe(true);
  });

  it("draws what is written in the table: the gauge line ends at the gauge that was lost", () => {
    const svg = sheet(many, "life.svg");
    const [line] = classed(svg, "gauge-loss");
    const numbers = [...line.attributes.d.matchAll(/-?\d+(\.\d+)?/g)].map(([number]) => Number(number));
    const [startX, startY] = numbers;
    const [endX, endY] = numbers.slice(-2);
    expect(endX).toBeGreaterThan(startX + 100);
    expect(endY).toBeLessThan(startY - 8);
  });

  it("writes the march as a table, in the units that the heads name", () => {
    const rows = sheet(many, "life.csv", "metric").trim().split("\n");
    expect(rows.length).toBe((many.life?.steps.length ?? 0) + 1);
    expect(rows[0]).toContain("hole drilled [m],hole,bed,depth [m],time on bottom [h],rate [m/h]");
    expect(rows[0].split(",").length).toBe(16 + workup.bit.layout.cutters.length);
    const last = rows[rows.length - 1].replace(/"[^"]*"/g, "bed").split(",");
    expect(Number(last[0])).toBeCloseTo(many.life?.footage ?? 0, 1);
    expect(Number(last[13])).toBeCloseTo((many.life?.worn.undergauge ?? 0) * 1000, 2);
    expect(Number(last[14])).toBeCloseTo((many.life?.worn.cutterUndergauge ?? 0) * 1000, 2);
    expect(Number(last[14])).toBeGreaterThanOrEqual(Number(last[13]));
  });

  it("says in words where no weight gets a cutter hot, and prints nothing that is no figure", () => {
    const words = elementsWhere(xmlTree(sheet(many, "heat.svg")), ({ name }) => name === "text").map(
      ({ text }) => text,
    );
    expect(words).toContain("No weight that is run gets any cutter so hot.");
    for (const units of ["field", "metric"] as const) {
      for (const { text } of lifeSheets(workup, many, { units, program: "Bitwright" })) {
        expect(text).not.toMatch(NOTHING_PRINTED);
      }
    }
  });

  it("has nothing to draw without a life", () => {
    const none: LifeStation = { beds: [], holes: 1, limits: few.limits, findings: [], working: [] };
    expect(lifeSheets(workup, none, { units: "field", program: "Bitwright" })).toEqual([]);
  });
});
