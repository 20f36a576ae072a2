import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { annulusSections } from "./annulus-sections.ts";

const run = (name: string, length: number) => ({ name, outerDiameter: 0.089, bore: 0.07, length });

describe("annuli", () => {
  it("change where pipe or hole changes", () => {
    const sections = annulusSections({
      string: [run("pipe", 80), run("collars", 20)],
      hole: [
        { name: "casing", diameter: 0.16, bottom: 12 },
        { name: "open hole", diameter: 0.155, bottom: 100 },
      ],
    });
    expect(sections.map((s) => [s.name, s.length])).toEqual([
      ["pipe in casing", 12],
      ["pipe in open hole", 68],
      ["collars in open hole", 20],
    ]);
  });

  it("leave out hole below the bit and let the last hole reach it", () => {
    const hole = [
      { name: "casing", diameter: 0.16, bottom: 12 },
      { name: "open hole", diameter: 0.155, bottom: 50 },
    ];
    expect(annulusSections({ string: [run("pipe", 10)], hole }).map((s) => s.name)).toEqual(["pipe in casing"]);
    expect(annulusSections({ string: [run("pipe", 90)], hole }).at(-1)?.length).toBe(78);
  });

  it("add up to the string whatever the cuts", () => {
    const lengths = fc.array(fc.double({ min: 1, max: 90, noNaN: true }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(lengths, lengths, (strings, falls) => {
        let bottom = 0;
        const hole = falls.map((fall, i) => {
          bottom += fall;
          return { name: `hole ${i}`, diameter: 0.2, bottom };
        });
        const sections = annulusSections({ string: strings.map((l, i) => run(`run ${i}`, l)), hole });
        const total = strings.reduce((a, b) => a + b, 0);
        expect(sections.reduce((sum, s) => sum + s.length, 0)).toBeCloseTo(total, 9);
      }),
    );
  });

  it("refuse hole that climbs", () => {
    const hole = [
      { name: "a", diameter: 0.16, bottom: 12 },
      { name: "b", diameter: 0.155, bottom: 12 },
      { name: "c", diameter: 0.15, bottom: 20 },
    ];
    expect(() => annulusSections({ string: [run("pipe", 30)], hole })).toThrow(/fall from one hole section/);
  });
});
