import { type LayoutStudy, layoutStudy, readLayoutFile } from "@bitwright/traveler";
import { beforeAll, describe, expect, it } from "vitest";
import { demoWorkup } from "../../../../tests/support/demo-workup.ts";
import { elementsWhere, xmlTree } from "../../../../tests/support/xml-tree.ts";
import { layoutSheets } from "./layout-sheets.ts";
import { numberedPlaces } from "./numbered-places.ts";
import { paretoDrawing } from "./pareto-drawing.ts";

const title = { job: "Ridge Road", bit: "6 1/8 in bit", program: "Bitwright 0.1.0", hole: "6 1/8 in" };
const workup = demoWorkup("house-well");

let study: LayoutStudy;
beforeAll(() => {
  const found = layoutStudy(workup, { candidates: 1500, measure: "work" });
  if (!found) throw new Error("the demo bit is a specification");
  study = found;
});

describe("paretoDrawing", () => {
  const marksOf = (of: LayoutStudy, name: string) =>
    elementsWhere(
      xmlTree(paretoDrawing({ study: of, title, units: "field" })),
      ({ attributes }) => attributes.class === name,
    );

  it("draws every layout twice, once among the plain ones and once with its number, the best compromise ringed", () => {
    const { choices, best } = study.solved;
    const plain = marksOf(study, "choice");
    expect(plain).toHaveLength(2 * choices.length - 1);
    const [ringed] = marksOf(study, "choice best");
    expect(elementsWhere(ringed, ({ name }) => name === "circle")).toHaveLength(2);
    const root = xmlTree(paretoDrawing({ study, title, units: "field" }));
    const bold = elementsWhere(root, ({ attributes }) => attributes["font-weight"] === "bold").map(({ text }) => text);
    expect(bold).toContain(String(best + 1));
  });

  it("sets more even to the left and steadier lower down", () => {
    const at = marksOf(study, "choice").flatMap(({ attributes }) =>
      attributes.cx === undefined ? [] : [[Number(attributes.cx), Number(attributes.cy)]],
    );
    expect(at).toHaveLength(study.solved.choices.length);
    for (let k = 1; k < at.length; k++) {
      expect(at[k][0]).toBeGreaterThan(at[k - 1][0]);
      expect(at[k][1]).toBeGreaterThan(at[k - 1][1]);
    }
  });

  it("marks both plain layouts, once where they are one", () => {
    expect(marksOf(study, "plain")).toHaveLength(2);
    const one = { ...study, solved: { ...study.solved, steadied: study.solved.plain } };
    expect(marksOf(one, "plain")).toHaveLength(1);
  });

  it("holds for a single layout", () => {
    const { choices } = study.solved;
    const single = { ...study, solved: { ...study.solved, choices: choices.slice(0, 1), best: 0 } };
    expect(paretoDrawing({ study: single, title, units: "metric" })).toContain("One layout");
  });
});

describe("numberedPlaces", () => {
  it("keeps numbers of points close together apart, inside the frame and off the points", () => {
    const frame = { left: 0, right: 100, top: 0, bottom: 60 };
    const points = [0, 1, 2, 3, 4, 5].map((k) => [30 + 1.5 * k, 20 + k] as const);
    const places = numberedPlaces(points, frame);
    for (const [a, place] of places.entries()) {
      expect(place[0]).toBeGreaterThan(frame.left);
      expect(place[1]).toBeLessThan(frame.bottom);
      for (const [b, other] of places.entries()) {
        if (b < a) expect(Math.abs(place[0] - other[0]) > 4 || Math.abs(place[1] - other[1]) > 3).toBe(true);
      }
      for (const point of points) {
        expect(Math.abs(place[0] - point[0]) > 2 || Math.abs(place[1] - point[1]) > 2).toBe(true);
      }
    }
  });
});

describe("layoutSheets", () => {
  it("draws the layout that is named and writes each as a layout file that can be read back", () => {
    const sheets = layoutSheets(workup, study, { units: "field", program: "Bitwright 0.1.0", choice: 0 });
    const { choices } = study.solved;
    expect(sheets.map(({ name }) => name)).toEqual([
      "pareto.svg",
      "face.svg",
      "profile.svg",
      ...choices.map((_, k) => `layout-${k + 1}.json`),
    ]);
    for (const { name, text } of sheets.slice(0, 3)) {
      expect(() => xmlTree(text), name).not.toThrow();
      if (name !== "pareto.svg") expect(text).toContain(`layout 1 of ${choices.length}`);
    }
    for (const [k, { text }] of sheets.slice(3).entries()) {
      const read = readLayoutFile(JSON.parse(text));
      expect(read.ok && read.value.cutters.length).toBe(choices[k].bit.layout.cutters.length);
      expect(read.ok && read.value.cutters[3].azimuth).toBe(choices[k].bit.layout.cutters[3].azimuth);
    }
  });
});
