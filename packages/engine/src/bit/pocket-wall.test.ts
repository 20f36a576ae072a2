import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainCutter } from "../../../../tests/support/plain-cutter.ts";
import type { BitLayout, PlacedCutter } from "./placed-cutter.ts";
import { cutterCylinder, pocketWall, pocketWalls } from "./pocket-wall.ts";

const cutter = (radius: number, more: Partial<PlacedCutter> = {}): PlacedCutter =>
  plainCutter({ radius, backRake: 0.2, faceDiameter: 0.01344, ...more });
const bit = (...cutters: PlacedCutter[]): BitLayout => ({ holeDiameter: 0.155, cutters });

describe("cutterCylinder", () => {
  it("runs back from the face, so that a leaning cutter rises behind it", () => {
    const { from, to, radius } = cutterCylinder(cutter(0.05, { backRake: 0.3 }));
    expect(radius).toBe(0.00672);
    // Travel is toward +y at azimuth 0; the back lies behind and up-hole.
    expect(to[1] - from[1]).toBeCloseTo(-0.008 * Math.cos(0.3), 12);
    expect(to[2] - from[2]).toBeCloseTo(-0.008 * Math.sin(0.3), 12);
  });
});

describe("pocketWalls", () => {
  it("is the gap of parallel neighbours less the clearance", () => {
    const { walls, findings } = pocketWalls({ layout: bit(cutter(0.03), cutter(0.045)), material: "steel" });
    expect(walls[0]?.between).toEqual([0, 1]);
    expect(walls[0]?.sameWing).toBe(true);
    expect(walls[0]?.wall).toBeCloseTo(0.015 - 0.01344 - 0.00013, 8);
    expect(findings).toEqual([]);
  });

  it("holds matrix to a thicker wall than steel", () => {
    const layout = bit(cutter(0.03), cutter(0.0448));
    expect(pocketWalls({ layout, material: "steel" }).findings).toEqual([]);
    expect(pocketWalls({ layout, material: "matrix" }).findings[0]).toMatchObject({
      code: "thin-pocket-wall",
      severity: "caution",
      where: "cutters 1 and 2, wing 1",
      limit: 0.0015,
    });
  });

  it("says where pockets run into each other, and by how much", () => {
    const { walls, findings } = pocketWalls({ layout: bit(cutter(0.03), cutter(0.041)), material: "steel" });
    expect(walls[0]?.wall).toBeCloseTo(0.011 - 0.01344 - 0.00013, 6);
    expect(findings[0]).toMatchObject({ code: "pockets-meet", severity: "stop" });
  });

  it("sees cutters of two wings that meet at the centre, which no flat look along one wing shows", () => {
    const behind = cutter(0.009, { wing: 2, azimuth: -1.2 });
    const { walls } = pocketWalls({ layout: bit(cutter(0.005), behind), material: "steel" });
    expect(walls[0]?.sameWing).toBe(false);
    expect(walls[0]?.wall).toBeLessThan(0);
  });

  it("does not change when the whole bit is turned or its table is in another order", () => {
    const random = fc.array(
      fc.record({
        radius: fc.double({ min: 0, max: 0.07, noNaN: true }),
        azimuth: fc.double({ min: 0, max: 6, noNaN: true }),
        height: fc.double({ min: -0.01, max: 0, noNaN: true }),
        profileAngle: fc.double({ min: -0.2, max: 1, noNaN: true }),
      }),
      { minLength: 2, maxLength: 6 },
    );
    fc.assert(
      fc.property(random, fc.double({ min: -4, max: 4, noNaN: true }), (poses, turn) => {
        const cutters = poses.map((pose) => cutter(pose.radius, pose));
        const plain = pocketWalls({ layout: bit(...cutters), material: "steel" }).walls;
        const turned = cutters.map((each) => ({ ...each, azimuth: each.azimuth + turn }));
        const other = pocketWalls({ layout: bit(...turned.reverse()), material: "steel" }).walls;
        expect(other.length).toBe(plain.length);
        for (const [at, { wall }] of plain.entries()) expect(other[at]?.wall).toBeCloseTo(wall, 6);
      }),
      { numRuns: 40 },
    );
  });

  it("shows how the thinnest was reached", () => {
    const { working, walls } = pocketWalls({ layout: bit(cutter(0.03), cutter(0.045)), material: "steel" });
    expect(working[0]?.value).toBe(walls[0]?.wall);
    expect(pocketWalls({ layout: bit(cutter(0.03)), material: "steel" }).working).toEqual([]);
  });

  it("refuses a negative clearance", () => {
    const one = cutterCylinder(cutter(0.03));
    expect(() => pocketWall({ first: one, second: one, clearance: -1 })).toThrow("clearance must not be negative");
  });
});
