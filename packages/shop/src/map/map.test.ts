import {
  type LimitLine,
  type RateLimitName,
  type RunningMap,
  type RunningMapPoint,
  rateOfPenetration,
} from "@bitwright/engine";
import { type BedMap, inUnit, type MapStudy, mapStudy } from "@bitwright/traveler";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { demoWorkup } from "../../../../tests/support/demo-workup.ts";
import { rpm } from "../../../../tests/support/field-units.ts";
import { elementsWhere, type XmlElement, xmlTree } from "../../../../tests/support/xml-tree.ts";
import { textWidth } from "../sheet/index.ts";
import { freePlace } from "./free-place.ts";
import { mapLinesCsv, mapTableCsv } from "./map-csv.ts";
import { mapDrawing } from "./map-drawing.ts";
import { insideRegions, weightOn } from "./map-region.ts";
import { rateSteps } from "./rate-steps.ts";

const speeds = [20, 40, 60, 80, 100, 120].map((turns) => turns * rpm);
const pointAt = (rotarySpeed: number, weight: number): RunningMapPoint => ({
  rotarySpeed,
  weight,
  advance: weight * 1e-7,
  rate: rateOfPenetration({ advance: weight * 1e-7, rotarySpeed }),
});
const line = (limit: RateLimitName, weightOf: (speed: number) => number): LimitLine => ({
  limit,
  level: false,
  points: speeds.map((speed) => pointAt(speed, weightOf(speed))),
});
const mapOf = (lines: readonly LimitLine[], more: Partial<RunningMap> = {}): RunningMap => ({
  rotary: { slowest: 30 * rpm, fastest: 110 * rpm },
  rotarySpeeds: speeds,
  mostWeight: 40e3,
  avoid: [],
  ladder: [],
  lines,
  heatLines: [],
  ...more,
});

describe("insideRegions", () => {
  it("takes the lowest line at every speed, and turns from one to the next where they cross", () => {
    const level = line("weight", () => 20e3);
    const falling = line("power", (speed) => 40e3 - (speed / rpm) * 250);
    const [region] = insideRegions(mapOf([level, falling]));
    expectClose(region.from, 30 * rpm, 1e-12);
    expectClose(region.to, 110 * rpm, 1e-12);
    expect(region.edge.map(({ limit }) => limit)).toEqual(["weight", "power"]);
    const turning = region.edge[0].points[region.edge[0].points.length - 1];
    // 40,000 - 250 n = 20,000 at n = 80 turns a minute.
    expectClose(turning.speed / rpm, 80, 1e-9);
    expectClose(turning.weight, 20e3, 1e-9);
  });

  it("never rises over a line", () => {
    const heights = fc.array(fc.double({ min: 1e3, max: 50e3, noNaN: true }), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(heights, heights, (one, other) => {
        const lines = [line("torque", (s) => one[speeds.indexOf(s)]), line("rate", (s) => other[speeds.indexOf(s)])];
        for (const { edge } of insideRegions(mapOf(lines))) {
          for (const { points } of edge) {
            for (const { speed, weight } of points) {
              for (const each of lines)
                expect(weight).toBeLessThanOrEqual((weightOn(each, speed) ?? 0) * (1 + 1e-9) + 1e-6);
            }
          }
        }
      }),
    );
  });

  it("falls apart where speeds are kept out of", () => {
    const avoid = [{ from: 50 * rpm, to: 70 * rpm, why: "swing" }];
    const regions = insideRegions(mapOf([line("weight", () => 20e3)], { avoid }));
    expect(regions.map(({ from, to }) => [Math.round(from / rpm), Math.round(to / rpm)])).toEqual([
      [30, 50],
      [70, 110],
    ]);
  });
});

describe("rateSteps", () => {
  it("gives a few plain rates up to the best and some beyond", () => {
    expect(rateSteps(144, 400)).toEqual({ inside: [25, 50, 75, 100, 125], beyond: [300] });
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 5000, noNaN: true }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        (best, more) => {
          const { inside, beyond } = rateSteps(best, best * more);
          expect(inside.length).toBeGreaterThanOrEqual(2);
          expect(inside.length).toBeLessThanOrEqual(6);
          expect(Math.max(...inside)).toBeLessThanOrEqual(best * (1 + 1e-9));
          for (const rate of beyond) {
            expect(rate).toBeGreaterThan(best);
            expect(rate).toBeLessThan(best * more);
          }
        },
      ),
    );
  });
});

describe("freePlace", () => {
  const frame = { left: 0, right: 100, top: 0, bottom: 100 };
  it("takes the first place that is in the frame and touches nothing", () => {
    const box = { at: [50, 50] as const, width: 20, height: 10 };
    const size = { width: 10, height: 4 };
    expect(
      freePlace(
        [
          [1, 50],
          [50, 52],
          [50, 70],
          [20, 20],
        ],
        size,
        [box],
        frame,
      ),
    ).toEqual([50, 70]);
    expect(freePlace([[50, 52]], size, [box], frame)).toBeUndefined();
  });
});

describe("mapDrawing", () => {
  let study: MapStudy;
  beforeAll(() => {
    study = mapStudy(demoWorkup("house-well"), { avoid: [{ from: 40 * rpm, to: 46 * rpm, why: "the string swings" }] });
  });
  const title = { job: "Ridge Road", bit: "6 1/8 in bit", program: "Bitwright 0.1.0", hole: "6 1/8 in" };
  const drawn = (bed: BedMap, units: "field" | "metric" = "field") => xmlTree(mapDrawing({ bed, title, units }));
  const classed = (root: XmlElement, name: string) =>
    elementsWhere(root, ({ attributes }) => (attributes.class ?? "").split(" ").includes(name));

  it("is one text for one bed, well formed, with a title and a description", () => {
    for (const bed of study.beds) {
      expect(mapDrawing({ bed, title, units: "field" })).toBe(mapDrawing({ bed, title, units: "field" }));
      const root = drawn(bed);
      const [head, description] = root.children;
      expect(head.text).toContain(bed.name);
      expect(description.text).toContain("rotary speed");
      expect(JSON.stringify(root)).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  it("marks the best point, the card and the rule of thumb where they belong on the axes", () => {
    for (const bed of study.beds) {
      const root = drawn(bed);
      const [frame] = elementsWhere(
        root,
        ({ name, attributes }) =>
          name === "rect" && attributes["stroke-width"] === "0.35" && attributes.fill === "none",
      );
      const [x, y, width, height] = ["x", "y", "width", "height"].map((key) => Number(frame.attributes[key]));
      const { map, run, rule } = bed;
      const last = map.rotarySpeeds[map.rotarySpeeds.length - 1];
      const at = (speed: number, weight: number) => [
        x + ((speed - map.rotarySpeeds[0]) / (last - map.rotarySpeeds[0])) * width,
        y + height - (weight / map.mostWeight) * height,
      ];
      const [card] = classed(root, "card-point");
      const [cardX, cardY] = at(run.rotarySpeed, run.weight);
      expect(Math.abs(Number(card.attributes.cx) - cardX)).toBeLessThan(0.01);
      expect(Math.abs(Number(card.attributes.cy) - cardY)).toBeLessThan(0.01);
      const [box] = classed(root, "rule-of-thumb");
      const [left, top] = at(rule.rotarySpeed.low, rule.weight.high);
      const [right, bottom] = at(rule.rotarySpeed.high, rule.weight.low);
      expect(Math.abs(Number(box.attributes.x) - left)).toBeLessThan(0.01);
      expect(Math.abs(Number(box.attributes.y) - top)).toBeLessThan(0.01);
      expect(Math.abs(Number(box.attributes.width) - (right - left))).toBeLessThan(0.01);
      expect(Math.abs(Number(box.attributes.height) - (bottom - top))).toBeLessThan(0.01);
      const [best] = classed(root, "best-point");
      const numbers = (best.attributes.d.match(/-?[\d.]+/g) ?? []).map(Number);
      const middle = [0, 1].map((k) => numbers.filter((_, j) => j % 2 === k).reduce((sum, n) => sum + n, 0) / 4);
      const [bestX, bestY] = at(map.best?.rotarySpeed ?? 0, map.best?.weight ?? 0);
      expect(Math.abs(middle[0] - bestX)).toBeLessThan(0.01);
      expect(Math.abs(middle[1] - bestY)).toBeLessThan(0.01);
    }
  });

  it("hatches what is past a limit, what the rig does not turn and what is kept out of, and says why in words", () => {
    const root = drawn(study.beds[0]);
    expect(classed(root, "beyond-limits")).toHaveLength(1);
    expect(classed(root, "avoid")).toHaveLength(1);
    const words = elementsWhere(root, ({ name }) => name === "text").map(({ text }) => text);
    expect(words).toContain("wings rub beyond this");
    expect(words).toContain("keep out: the string swings");
    expect(words).toContain("the rig turns up to 120 rpm");
    expect(classed(root, "binds").length).toBeGreaterThan(0);
  });

  it("sets no word of the map over another", () => {
    for (const units of ["field", "metric"] as const) {
      for (const bed of study.beds) {
        const boxes = elementsWhere(
          drawn(bed, units),
          ({ name, attributes }) => name === "text" && attributes["paint-order"] === "stroke" && !attributes.transform,
        ).map(({ text, attributes }) => ({
          text,
          x: Number(attributes.x),
          y: Number(attributes.y) - 0.36 * Number(attributes["font-size"]),
          width: 0.9 * textWidth(text, Number(attributes["font-size"])),
          height: 0.7 * Number(attributes["font-size"]),
        }));
        for (const [k, one] of boxes.entries()) {
          for (const other of boxes.slice(k + 1)) {
            const apart =
              Math.abs(one.x - other.x) >= (one.width + other.width) / 2 ||
              Math.abs(one.y - other.y) >= (one.height + other.height) / 2;
            expect(apart, `"${one.text}" over "${other.text}" in ${bed.name}`).toBe(true);
          }
        }
      }
    }
  });

  it("draws a bed of which no speed is left, without a best point", () => {
    const [bed] = mapStudy(demoWorkup("loop-hole"), {
      bed: "1",
      avoid: [{ from: 1 * rpm, to: 900 * rpm, why: "all" }],
    }).beds;
    const root = drawn(bed);
    expect(classed(root, "best-point")).toEqual([]);
    expect(classed(root, "binds")).toEqual([]);
  });
});

describe("the tables of a map", () => {
  it("hold every point of the study with units in their heads", () => {
    const study = mapStudy(demoWorkup("loop-hole"));
    const rows = (text: string) =>
      text
        .trimEnd()
        .split("\n")
        .map((row) => row.split(","));
    const [heads, ...cells] = rows(mapTableCsv(study, "field"));
    expect(heads).toEqual([
      "bed",
      "from [ft]",
      "to [ft]",
      "rotary speed [rpm]",
      "weight on bit [lbf]",
      "advance [in/rev]",
      "rate [ft/h]",
      "torque [ft-lbf]",
      "limits passed",
    ]);
    expect(cells).toHaveLength(study.beds.reduce((sum, { table }) => sum + table.length, 0));
    const [first] = study.beds[0].table;
    expectClose(Number(cells[0][6]), inUnit("rate", first.rate, "ft/h"), 0.02);
    const [lineHeads, ...lines] = rows(mapLinesCsv(study, "metric"));
    expect(lineHeads.slice(3)).toEqual([
      "line or point",
      "rotary speed [rpm]",
      "weight on bit [kN]",
      "advance [mm/rev]",
      "rate [m/h]",
    ]);
    for (const { name, map } of study.beds) {
      const own = lines.filter((row) => row[0] === name);
      for (const { limit, points } of map.lines) {
        const word =
          { exposure: "exposure", weight: "weight", torque: "torque", rate: "cleaning" }[limit as string] ?? limit;
        expect(own.filter((row) => row[3] === `limit: ${word}`)).toHaveLength(points.length);
      }
    }
  });
});
