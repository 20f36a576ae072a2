import fc from "fast-check";
import { expect, it } from "vitest";
import { cross, dot, length, minus, plus, times, unit, type Vector } from "./vector.ts";

const coordinate = fc.double({ min: -10, max: 10, noNaN: true });
const vector = fc.tuple(coordinate, coordinate, coordinate) as fc.Arbitrary<Vector>;

it("makes a right-handed frame: x cross y is z", () => {
  expect(cross([1, 0, 0], [0, 1, 0])).toEqual([0, 0, 1]);
});

it("keeps the vector product normal to both, with |a x b|² + (a·b)² = |a|²|b|²", () => {
  fc.assert(
    fc.property(vector, vector, (a, b) => {
      const c = cross(a, b);
      expect(Math.abs(dot(c, a))).toBeLessThan(1e-9);
      expect(dot(c, c) + dot(a, b) ** 2).toBeCloseTo(dot(a, a) * dot(b, b), 6);
    }),
  );
});

it("adds, subtracts and stretches", () => {
  expect(plus([1, 2, 3], minus([4, 4, 4], [1, 1, 1]))).toEqual([4, 5, 6]);
  expect(length(times(2, [3, 4, 0]))).toBe(10);
});

it("refuses a direction without length", () => {
  expect(() => unit([0, 0, 0])).toThrow(/needs a vector with length/);
  expect(length(unit([2, 3, 6]))).toBeCloseTo(1, 15);
});
