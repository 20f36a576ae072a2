import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Cylinder, cylinderDistance, cylinderOverlap } from "./cylinder-distance.ts";
import { cross, dot, length, minus, plus, times, unit, type Vector } from "./vector.ts";

const coordinate = fc.double({ min: -20, max: 20, noNaN: true });
const point = fc.tuple(coordinate, coordinate, coordinate) as fc.Arbitrary<Vector>;
const cylinder: fc.Arbitrary<Cylinder> = fc
  .record({ from: point, to: point, radius: fc.double({ min: 0.5, max: 8, noNaN: true }) })
  .filter(({ from, to }) => length(minus(to, from)) > 0.5);

/** Nearest point of a cylinder to `p`, in closed form. */
function foot(of: Cylinder, p: Vector): Vector {
  const reach = minus(of.to, of.from);
  const axis = unit(reach);
  const offset = minus(p, of.from);
  const along = dot(offset, axis);
  const across = minus(offset, times(along, axis));
  const out = length(across);
  const held = Math.min(Math.max(along, 0), length(reach));
  const kept = out > of.radius ? times(of.radius / out, across) : across;
  return plus(plus(of.from, times(held, axis)), kept);
}

/** An independent answer from above: project to and fro between the two bodies. Slow at grazing angles, never below the truth. */
function byProjection(a: Cylinder, b: Cylinder, steps: number): number {
  let p = foot(a, b.from);
  for (let n = 0; n < steps; n++) p = foot(a, foot(b, p));
  return length(minus(p, foot(b, p)));
}

describe("cylinderDistance", () => {
  it("knows the simple pairs", () => {
    const upright: Cylinder = { from: [0, 0, 0], to: [0, 0, 8], radius: 6 };
    // Side by side: distance of the axes less both radii.
    expect(cylinderDistance(upright, { from: [15, 0, 1], to: [15, 0, 5], radius: 6 })).toBeCloseTo(3, 8);
    // End to end.
    expect(cylinderDistance(upright, { from: [2, 1, 10.5], to: [2, 1, 20], radius: 3 })).toBeCloseTo(2.5, 8);
    // Rim to rim: 5 across, 12 along.
    expect(cylinderDistance(upright, { from: [17, 0, 20], to: [17, 0, 30], radius: 6 })).toBeCloseTo(13, 8);
    // Crossed at right angles.
    expect(cylinderDistance(upright, { from: [20, -9, 4], to: [20, 9, 4], radius: 5 })).toBeCloseTo(9, 7);
    // One inside the other.
    expect(cylinderDistance(upright, { from: [1, 0, 2], to: [1, 0, 3], radius: 1 })).toBe(0);
  });

  it("agrees with projecting to and fro between the bodies", () => {
    fc.assert(
      fc.property(cylinder, cylinder, (a, b) => {
        const found = cylinderDistance(a, b);
        const above = byProjection(a, b, 2000);
        expect(found).toBeLessThanOrEqual(above + 1e-8);
        if (above > 0.3) expect(found).toBeGreaterThan(above - 2e-3);
        else expect(above).toBeLessThan(found + 0.3);
      }),
      { numRuns: 200 },
    );
  });

  it("gives a lower bound where more than enough lies between, the distance itself where not", () => {
    fc.assert(
      fc.property(cylinder, cylinder, fc.double({ min: 0.01, max: 30, noNaN: true }), (a, b, enough) => {
        const whole = cylinderDistance(a, b);
        const found = cylinderDistance(a, b, enough);
        if (found > enough) expect(found).toBeLessThanOrEqual(whole + 1e-7);
        else expect(found).toBe(whole);
        expect(found > enough).toBe(whole > enough);
      }),
    );
  });

  it("does not depend on the order or on which end is named first", () => {
    fc.assert(
      fc.property(cylinder, cylinder, (a, b) => {
        const found = cylinderDistance(a, b);
        expect(cylinderDistance(b, a)).toBeCloseTo(found, 7);
        expect(cylinderDistance({ ...a, from: a.to, to: a.from }, b)).toBeCloseTo(found, 7);
      }),
    );
  });

  it("does not change when both are moved together", () => {
    fc.assert(
      fc.property(cylinder, cylinder, point, (a, b, shift) => {
        const moved = (c: Cylinder): Cylinder => {
          // A quarter turn about the first axis, then a shift.
          const turn = (p: Vector) => plus(cross([1, 0, 0], p), [p[0], 0, 0]);
          return { from: plus(turn(c.from), shift), to: plus(turn(c.to), shift), radius: c.radius };
        };
        expect(cylinderDistance(moved(a), moved(b))).toBeCloseTo(cylinderDistance(a, b), 7);
      }),
    );
  });

  it("refuses a cylinder without size", () => {
    const sound: Cylinder = { from: [0, 0, 0], to: [0, 0, 8], radius: 6 };
    expect(() => cylinderDistance(sound, { ...sound, radius: 0 })).toThrow("radius must be positive, got 0");
    expect(() => cylinderDistance(sound, { ...sound, to: [0, 0, 0] })).toThrow(/needs a vector with length/);
  });
});

describe("cylinderOverlap", () => {
  it("is nothing for bodies apart and counts both radii where they run into each other", () => {
    const upright: Cylinder = { from: [0, 0, 0], to: [0, 0, 8], radius: 6 };
    expect(cylinderOverlap(upright, { from: [13, 0, 0], to: [13, 0, 8], radius: 6 })).toBe(0);
    expect(cylinderOverlap(upright, { from: [11, 0, 0], to: [11, 0, 8], radius: 6 })).toBeCloseTo(1, 6);
    expect(cylinderOverlap(upright, { from: [0, 0, 4], to: [0, 0, 12], radius: 3 })).toBe(6);
  });
});
