import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../../tests/support/close-to.ts";
import { degree, mm } from "../../../../../tests/support/field-units.ts";
import { sandstoneLike } from "../../../../../tests/support/rock-responses.ts";
import {
  type BitLayout,
  cuttingTip,
  exposure,
  generateLayout,
  type PlacedCutter,
  usualRakes,
} from "../../bit/index.ts";
import { catalogCutter } from "../../cutter/index.ts";
import { drillAtWeight } from "../drilled-state.ts";
import { traceEdges } from "../trace-edges.ts";
import { depthLimitedAdvance, depthLimitedWeight } from "./depth-limit.ts";
import { rubbingAtAdvance, rubbingAtWeight } from "./rubbing-bit.ts";
import { wingLands } from "./wing-lands.ts";
import { firstRubs, wingLoads } from "./wing-rubbing.ts";

const flat = (radius: number, wing: number, azimuth: number): PlacedCutter => ({
  radius,
  azimuth,
  wing,
  height: 0,
  profileAngle: 0,
  backRake: 0,
  sideRake: 0,
  faceDiameter: 19.05 * mm,
  length: 8 * mm,
  chamferWidth: 0,
  chamferAngle: 0,
  wornHeight: 0,
});

/** Two straight wings, each with cutters at both ends and none between; the cutters between sit on a third. */
const sparse: BitLayout = {
  holeDiameter: 0.16,
  cutters: [
    flat(0.009, 1, 0),
    flat(0.0695, 1, 0),
    ...[0.02, 0.03, 0.04, 0.05, 0.06].map((radius) => flat(radius, 2, 90 * degree)),
  ],
};

describe("wingLands and firstRubs", () => {
  const wingThickness = 1e-6;
  const trace = traceEdges(sparse);
  const over = 3 * mm;
  const lands = wingLands({ trace, exposure: sparse.cutters.map(() => over), wingThickness });

  it("lets a land run over what the wing ahead of it left a quarter of a turn before: d = e/c", () => {
    // Wing 2 is a quarter turn ahead of wing 1; at its tips wing 1's land stands the whole exposure over the groove.
    const [first] = firstRubs(lands).filter(({ wing }) => wing === 1);
    const at = (radius: number) => {
      let found = Number.NaN;
      lands.cell.forEach((cell, k) => {
        if (lands.wings[lands.wing[k]] === 1 && Math.abs(trace.cellRadius[cell] - radius) < 0.6 * trace.cellWidth) {
          found = lands.rubbingAdvance[k];
        }
      });
      return found;
    };
    expectClose(at(0.04), over / 0.25, 2e-3);
    // Near half-way between two tips 10 mm apart the scallop stands R - √(R² - s²) higher, and so nearer to the land.
    const cell = trace.cellRadius.findIndex((radius) => radius > 0.0445);
    const aside = (trace.cellRadius[cell] - 0.04) / mm;
    const scallop = 9.525 - Math.sqrt(9.525 ** 2 - aside ** 2);
    expectClose(at(trace.cellRadius[cell]), (over - scallop * mm) / 0.25, 1e-3);
    expect(first.advance).toBeLessThanOrEqual(at(0.045));
  });

  it("stands near the plain estimate for a track cut once a turn, on a generated bit", () => {
    const { layout } = generateLayout({
      holeDiameter: 155.575 * mm,
      profile: { shape: "short parabolic" },
      wings: { wings: 5 },
      cutter: catalogCutter("1308"),
      rakes: usualRakes(),
      material: "matrix",
    });
    const exposed = exposure({ layout });
    const real = wingLands({
      trace: traceEdges(layout),
      exposure: exposed.cutters.map(({ alongNormal }) => alongNormal),
      wingThickness: 16 * mm,
    });
    const [first] = firstRubs(real);
    // The estimate forgets the scallops between tips, which the wings of a real bit meet first.
    expect(first.advance).toBeGreaterThan(0.8 * exposed.rubbingAdvance);
    expect(first.advance).toBeLessThan(3 * exposed.rubbingAdvance);
    expect(
      firstRubs(real)
        .map(({ wing }) => wing)
        .sort(),
    ).toEqual([1, 2, 3, 4, 5]);
  });

  it("carries nothing before it rubs, rises from nothing, and ends at the contact strength of the whole land", () => {
    const [first] = firstRubs(lands);
    expect(wingLoads(lands, sandstoneLike, first.advance).weight).toBe(0);
    const wide = wingLands({ trace, exposure: sparse.cutters.map(() => over), wingThickness: 5 * mm });
    const [start] = firstRubs(wide);
    expect(wingLoads(wide, sandstoneLike, start.advance * 0.999).weight).toBe(0);
    let before = 0;
    for (const share of [1.001, 1.05, 1.2, 1.6, 2.4]) {
      const { weight } = wingLoads(wide, sandstoneLike, start.advance * share);
      expect(weight).toBeGreaterThan(before);
      before = weight;
    }
    // Pressed far in, every bit of land bears fully: contact stress on length times width of the lands.
    const { weight, contactArea, torque } = wingLoads(wide, sandstoneLike, 1);
    const land = wide.cell.length * trace.cellWidth * 5 * mm;
    expectClose(contactArea, land, 1e-9);
    expectClose(weight, sandstoneLike.contactStress * land, 1e-9);
    const arm = wide.cell.reduce((sum, cell) => sum + trace.cellRadius[cell], 0) / wide.cell.length;
    expectClose(torque, sandstoneLike.flatFriction * weight * arm, 1e-9);
  });

  it("follows the wings' own azimuth and the deepest tips of the profile", () => {
    expect(lands.wings).toEqual([1, 2]);
    lands.cell.forEach((cell, k) => {
      if (lands.wings[lands.wing[k]] !== 1) return;
      const turn = lands.azimuth[k] + wingThickness / trace.cellRadius[cell];
      expect(Math.min(turn, 2 * Math.PI - turn)).toBeLessThan(1e-9);
    });
    const tip = cuttingTip(sparse.cutters[3]).height;
    expectClose(Math.max(...lands.height), tip - over, 1e-9);
  });

  it("refuses what does not fit the layout", () => {
    expect(() => wingLands({ trace, exposure: [1], wingThickness })).toThrow("one for each of 7 cutters, got 1");
    expect(() => wingLands({ trace, exposure: sparse.cutters.map(() => -1), wingThickness })).toThrow(
      "must not be negative",
    );
    expect(() => wingLands({ trace, exposure: sparse.cutters.map(() => 1), wingThickness: 0 })).toThrow(
      "wingThickness",
    );
  });
});

describe("a bit that rubs", () => {
  const trace = traceEdges(sparse);
  const lands = wingLands({ trace, exposure: sparse.cutters.map(() => 2 * mm), wingThickness: 12 * mm });
  const bit = { trace, response: sandstoneLike, lands };
  const [start] = firstRubs(lands);

  it("reads a lower friction number the deeper it rubs, and the cutters' own before", () => {
    const number = (advance: number) => rubbingAtAdvance(bit, advance).frictionNumber;
    const alone = number(0.5 * start.advance);
    expectClose(number(0.99 * start.advance), alone, 0.02);
    let before = number(start.advance);
    for (const share of [1.2, 1.5, 2, 3]) {
      const now = number(share * start.advance);
      expect(now).toBeLessThan(before);
      before = now;
    }
  });

  it("takes more weight for the same advance, so less advance for the same weight", () => {
    const weight = 1.5 * rubbingAtAdvance(bit, 1.3 * start.advance).weight;
    const rubbing = rubbingAtWeight(bit, weight);
    expectClose(rubbing.weight, weight, 1e-8);
    expect(rubbing.advance).toBeLessThan(drillAtWeight(bit, weight).advance);
    expect(rubbing.advance).toBeGreaterThan(start.advance);
    const light = rubbingAtWeight(bit, 0.5 * rubbingAtAdvance(bit, start.advance).weight);
    expect(light.wings.weight).toBe(0);
    expectClose(light.advance, drillAtWeight(bit, light.weight).advance, 1e-7);
  });
});

describe("the law of depth-limiting blocks", () => {
  const law = { cutterSlope: 5e6, limitAdvance: 2 * mm, blockSlope: 4e7 };

  it("is a straight line with a bend, read either way", () => {
    for (const advance of [0, 0.5 * mm, 2 * mm, 2.7 * mm]) {
      expectClose(depthLimitedAdvance(law, depthLimitedWeight(law, advance)), advance, 1e-12);
    }
    expectClose(depthLimitedWeight(law, 2 * mm), 10_000, 1e-12);
    expectClose(depthLimitedWeight(law, 3 * mm) - depthLimitedWeight(law, 2 * mm), 45_000, 1e-12);
  });

  it("without blocks is the cutters' own", () => {
    expectClose(depthLimitedAdvance({ ...law, blockSlope: 0 }, 50_000), 10 * mm, 1e-12);
    expect(() => depthLimitedWeight({ ...law, cutterSlope: 0 }, 1)).toThrow("cutterSlope must be positive");
  });
});
