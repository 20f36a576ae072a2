import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { usualSpec } from "../../../../tests/support/usual-spec.ts";
import { catalogCutter } from "../cutter/index.ts";
import type { BitSpec } from "./bit-spec.ts";
import { coverage } from "./coverage.ts";
import { cuttingTip } from "./face-on-profile.ts";
import { generateLayout } from "./generate-layout.ts";
import { pocketWalls } from "./pocket-wall.ts";
import { profileAtRadius } from "./profile-place.ts";
import { profileShapeOf } from "./profile-shape-of.ts";
import { usualRakes } from "./rake-schedule.ts";
import { zonesOfLayout } from "./zones-of-layout.ts";

const inch = 0.0254;
const deg = Math.PI / 180;

/** Specifications such as a shop would write: the face at most about a seventh of the hole. */
const sensible: fc.Arbitrary<BitSpec> = fc
  .record({
    holeDiameter: fc.double({ min: 3 * inch, max: 12 * inch, noNaN: true }),
    shape: fc.constantFrom("flat", "step", "short parabolic", "medium parabolic", "long parabolic" as const),
    code: fc.constantFrom("0808", "1008", "1308", "1608", "1908"),
    wings: fc.integer({ min: 3, max: 6 }),
    sweep: fc.double({ min: 0, max: 35 * deg, noNaN: true }),
    unevenness: fc.double({ min: 0, max: 8 * deg, noNaN: true }),
    ground: fc.constantFrom("soft", "usual", "hard" as const),
    gaugeAngle: fc.double({ min: 40 * deg, max: 80 * deg, noNaN: true }),
    material: fc.constantFrom("steel", "matrix" as const),
  })
  .map(({ holeDiameter, shape, code, wings, sweep, unevenness, ground, gaugeAngle, material }) =>
    usualSpec({
      holeDiameter,
      profile: { shape },
      wings: { wings, sweep, unevenness },
      cutter: catalogCutter(code),
      rakes: usualRakes(ground),
      gaugeAngle,
      material,
    }),
  )
  .filter((of) => of.holeDiameter / 2 > 3.4 * of.cutter.faceDiameter);

describe("generateLayout", () => {
  it("leaves no ring uncut and reaches the hole radius to a micrometre, for any sensible specification", () => {
    fc.assert(
      fc.property(sensible, (of) => {
        const { layout, places } = generateLayout(of);
        const { uncutRings, outerRadius } = coverage(layout);
        expect(uncutRings).toEqual([]);
        expect(Math.abs(outerRadius - of.holeDiameter / 2)).toBeLessThan(1e-6);
        expect(places.filter(({ role }) => role === "gauge").length).toBeGreaterThanOrEqual(of.wings.wings / 2);
      }),
      { numRuns: 40 },
    );
  });

  it("keeps the wall between pockets on nearly all rounded and flat profiles, and every thin one is a finding", () => {
    const specs = fc.sample(
      sensible.filter((of) => of.profile.shape !== "step"),
      { numRuns: 60, seed: 23 },
    );
    const kept = specs.filter((of) => {
      const { layout } = generateLayout(of);
      const { walls, leastWall, findings } = pocketWalls({ layout, material: of.material });
      const thin = walls.filter(({ wall }) => wall < leastWall);
      expect(findings.length).toBe(thin.length);
      return thin.length === 0;
    });
    expect(kept.length).toBeGreaterThanOrEqual(57);
  });

  it("says so where a 3 in bit with gauge cutters set at 40 degrees cannot keep its walls", () => {
    const of = usualSpec({
      holeDiameter: 3 * inch,
      profile: { shape: "flat" },
      wings: { wings: 3, sweep: 0, unevenness: 0 },
      cutter: catalogCutter("1008"),
      rakes: usualRakes("soft"),
      gaugeAngle: (40 * Math.PI) / 180,
    });
    const { layout } = generateLayout(of);
    const { walls, findings } = pocketWalls({ layout, material: of.material });
    expect(walls[0].wall).toBeLessThan(0.001);
    expect(findings.length).toBeGreaterThan(0);
  });

  it("lays out the bits of the trade: 6 1/8 in with five wings of three, 4 3/4 in with three or four wings", () => {
    for (const shape of ["flat", "short parabolic"] as const) {
      for (const code of ["1308", "1608"]) {
        for (const [size, wings] of [
          [6.125, 5],
          [4.75, 3],
          [4.75, 4],
        ] as const) {
          // Twelve 16 mm cutters do not go on the face of a 4 3/4 in bit.
          if (wings === 4 && code === "1608") continue;
          const of = usualSpec({
            holeDiameter: size * inch,
            profile: { shape },
            wings: { wings, cuttersPerWing: 3 },
            cutter: catalogCutter(code),
          });
          const { layout } = generateLayout(of);
          expect(layout.cutters.length).toBe(3 * wings);
          expect(coverage(layout).uncutRings).toEqual([]);
          expect(pocketWalls({ layout, material: "steel" }).findings).toEqual([]);
        }
      }
    }
  });

  it("always gives the same bit", () => {
    expect(generateLayout(usualSpec())).toEqual(generateLayout(usualSpec()));
  });

  it("is the same bit, turned, when all wings are turned", () => {
    const angles = [0, 1.2, 2.5, 3.7, 5];
    const plain = generateLayout(usualSpec({ wings: { wings: 5, cuttersPerWing: 3, angles } }));
    const turned = generateLayout(
      usualSpec({ wings: { wings: 5, cuttersPerWing: 3, angles: angles.map((angle) => angle + 0.7) } }),
    );
    expect(turned.places.map(({ wing }) => wing)).toEqual(plain.places.map(({ wing }) => wing));
    for (const [at, cutter] of turned.layout.cutters.entries()) {
      const before = plain.layout.cutters[at];
      expect(cutter).toEqual({ ...before, azimuth: cutter.azimuth });
      expect(cutter.azimuth - (before?.azimuth ?? 0)).toBeCloseTo(0.7, 12);
    }
  });

  it("puts every tip on the profile", () => {
    fc.assert(
      fc.property(sensible, (of) => {
        const { layout, places, profile } = generateLayout(of);
        for (const [at, cutter] of layout.cutters.entries()) {
          const tip = cuttingTip(cutter);
          expect(tip.height).toBeCloseTo(profileAtRadius(profile, Math.min(tip.radius, profile.holeRadius)).height, 8);
          expect(places[at]?.tipRadius).toBeCloseTo(tip.radius, 12);
        }
      }),
      { numRuns: 15 },
    );
  });

  it("lets the outer cutters of a wing trail, and offsets the cutters from wing to wing", () => {
    const { layout } = generateLayout(usualSpec());
    for (let wing = 1; wing <= 5; wing++) {
      const onWing = layout.cutters.filter((cutter) => cutter.wing === wing);
      for (const [at, cutter] of onWing.entries()) {
        if (at > 0) expect(cutter.azimuth).toBeLessThan(onWing[at - 1]?.azimuth ?? 0);
      }
    }
    const face = layout.cutters.slice(0, 10).map(({ radius }) => radius);
    for (const [at, radius] of face.entries()) if (at > 0) expect(radius - (face[at - 1] ?? 0)).toBeGreaterThan(1e-3);
  });

  it("numbers from the centre outward, with one centre cutter on wing 1", () => {
    const { places } = generateLayout(usualSpec());
    expect(places.map(({ number }) => number)).toEqual(Array.from({ length: 15 }, (_, at) => at + 1));
    expect(places.filter(({ role }) => role === "centre").map(({ number, wing }) => [number, wing])).toEqual([[1, 1]]);
    for (const [at, place] of places.entries()) {
      if (at > 0) expect(place.tipRadius).toBeGreaterThan((places[at - 1]?.tipRadius ?? 0) - 1e-9);
    }
  });

  it("gives short wings one cutter less and lets them stop short of the centre", () => {
    const { layout } = generateLayout(usualSpec({ wings: { wings: 6, cuttersPerWing: 3, centreWings: 3 } }));
    const inmost = [1, 2, 3, 4, 5, 6].map((wing) =>
      Math.min(...layout.cutters.filter((cutter) => cutter.wing === wing).map(({ radius }) => radius)),
    );
    expect(layout.cutters.length).toBe(15);
    expect(Math.min(...inmost.slice(3))).toBeGreaterThan(Math.max(...inmost.slice(0, 3)));
  });

  it("says what it turned or moved on its own account", () => {
    const even = {
      kind: "even" as const,
      centre: { backRake: 10 * deg, sideRake: 0 },
      gauge: { backRake: 20 * deg, sideRake: 10 * deg },
    };
    const codes = generateLayout(usualSpec({ rakes: even, profile: { shape: "flat" } })).findings.map(
      ({ code }) => code,
    );
    expect(codes).toContain("centre-cutter-turned");
    expect(codes).toContain("wing-without-gauge-cutter");
  });

  it("chooses by a judge among the ways that keep the walls", () => {
    const side = (layout: { cutters: readonly { azimuth: number; radius: number }[] }) =>
      layout.cutters.reduce((sum, { azimuth, radius }) => sum + radius * Math.cos(azimuth), 0);
    const judged = generateLayout(usualSpec(), side);
    expect(side(judged.layout)).toBeLessThanOrEqual(side(generateLayout(usualSpec()).layout));
    expect(pocketWalls({ layout: judged.layout, material: "steel" }).findings).toEqual([]);
  });

  it("stays within reason on a bit far denser than any", () => {
    const { layout } = generateLayout(
      usualSpec({ holeDiameter: 12 * inch, wings: { wings: 16, cuttersPerWing: 12 }, cutter: catalogCutter("0808") }),
    );
    expect(layout.cutters.length).toBe(192);
  });

  it("refuses a face wider than the hole's radius", () => {
    expect(() => generateLayout(usualSpec({ holeDiameter: 0.02 }))).toThrow(
      /faceDiameter must be at most the hole radius/,
    );
  });
});

describe("what is read off a layout", () => {
  it("is the shape it was made to", () => {
    for (const shape of ["flat", "short parabolic", "medium parabolic", "long parabolic"] as const) {
      for (const [size, wings] of [
        [4.75, 4],
        [6.125, 5],
        [8.5, 5],
        [12, 6],
      ] as const) {
        const { layout } = generateLayout(
          usualSpec({ holeDiameter: size * inch, profile: { shape }, wings: { wings } }),
        );
        expect(profileShapeOf(layout), `${shape} ${size}`).toBe(shape);
      }
    }
  });

  it("is the zone it was set in, but for the straight flank", () => {
    const { layout, places } = generateLayout(usualSpec());
    expect(zonesOfLayout(layout)).toEqual(places.map(({ zone }) => (zone === "taper" ? "shoulder" : zone)));
  });
});
