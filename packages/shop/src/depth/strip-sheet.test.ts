import { describe, expect, it } from "vitest";
import { demoWorkup } from "../../../../tests/support/demo-workup.ts";
import { elementsWhere, xmlTree } from "../../../../tests/support/xml-tree.ts";
import { stripSheet } from "./strip-sheet.ts";

const sheet = stripSheet(demoWorkup("house-well"), { units: "field", program: "Bitwright 0.0.0" });
const root = xmlTree(sheet.text);
const beds = elementsWhere(root, ({ attributes }) => attributes.class === "bed");
const rects = beds.map((bed) => elementsWhere(bed, ({ name }) => name === "rect"));
const texts = elementsWhere(root, ({ name }) => name === "text");
const number = (text: string | undefined) => Number(text);

describe("the sheet of the ground", () => {
  it("draws each bed as thick as it was logged", () => {
    // Bottoms of the beds in the demo's file [ft]
    const bottoms = [14, 37, 44, 128, 205, 228, 360];
    const perFoot = rects.reduce((sum, [ground]) => sum + number(ground.attributes.height), 0) / 360;
    expect(rects).toHaveLength(bottoms.length);
    rects.forEach(([ground], at) => {
      const thickness = bottoms[at] - (bottoms[at - 1] ?? 0);
      expect(number(ground.attributes.height) / perFoot).toBeCloseTo(thickness, 1);
    });
  });

  it("draws the band of strength where its figures stand on the axis", () => {
    const xOf = (words: string) => number(texts.find(({ text }) => text === words)?.attributes.x);
    const decade = xOf("10,000") - xOf("1,000");
    const [, bar] = rects[6];
    // 5,000 to 12,000 psi for the sandstone, as typed in the demo's file
    expect((number(bar.attributes.x) - xOf("1,000")) / decade).toBeCloseTo(Math.log10(5), 2);
    expect(number(bar.attributes.width) / decade).toBeCloseTo(Math.log10(12_000 / 5000), 2);
  });

  it("marks hole and shoe, and says each verdict in words", () => {
    const said = texts.map(({ text }) => text);
    expect(said).toContain("gravel, unfit");
    expect(said).toContain("shale, fit with care");
    expect(said).toContain("shoe");
    expect(elementsWhere(root, ({ attributes }) => attributes.class === "bit-hole")).toHaveLength(1);
  });

  it("keeps the words of many thin beds apart and on the sheet", () => {
    const workup = demoWorkup("house-well");
    const [ground] = workup.ground.beds;
    const [fit] = workup.advice.fits;
    const thin = Array.from({ length: 25 }, (_, at) => ({ top: at * 0.3, bottom: (at + 1) * 0.3 }));
    const many = {
      ...workup,
      ground: { ...workup.ground, beds: thin.map((span) => ({ ...ground, bed: { ...ground.bed, ...span } })) },
      advice: { ...workup.advice, fits: thin.map((span) => ({ ...fit, bed: { ...fit.bed, ...span } })) },
    };
    const drawn = xmlTree(stripSheet(many, { units: "metric", program: "Bitwright 0.0.0" }).text);
    const names = elementsWhere(drawn, ({ name, text }) => name === "text" && text === ground.bed.name);
    const places = names.map(({ attributes }) => number(attributes.y));
    const gaps = places.slice(1).map((place, at) => place - places[at]);
    expect(places).toHaveLength(25);
    expect(Math.min(...gaps)).toBeGreaterThan(5.5);
    expect(Math.max(...places)).toBeLessThan(260);
  });
});
