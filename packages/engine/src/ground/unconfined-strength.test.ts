import fc from "fast-check";
import { expect, it } from "vitest";
import { unconfinedStrengthFromMohr } from "./unconfined-strength.ts";

it("is twice the cohesion where there is no friction", () => {
  expect(unconfinedStrengthFromMohr({ cohesion: 3e5, frictionAngle: 0 })).toBe(6e5);
});

it("puts the circle of that diameter tangent to the line", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e4, max: 1e8, noNaN: true }),
      fc.double({ min: 0, max: 1.3, noNaN: true }),
      (cohesion, frictionAngle) => {
        const radius = unconfinedStrengthFromMohr({ cohesion, frictionAngle }) / 2;
        const distance = (cohesion + radius * Math.tan(frictionAngle)) * Math.cos(frictionAngle);
        expect(distance / radius).toBeCloseTo(1, 9);
      },
    ),
  );
});

it("refuses a negative cohesion and a line that stands upright", () => {
  expect(() => unconfinedStrengthFromMohr({ cohesion: -1, frictionAngle: 0.5 })).toThrow(
    "cohesion must not be negative",
  );
  expect(() => unconfinedStrengthFromMohr({ cohesion: 1, frictionAngle: Math.PI / 2 })).toThrow(
    "frictionAngle must lie",
  );
});
