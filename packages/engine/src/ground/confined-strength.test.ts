import fc from "fast-check";
import { expect, it } from "vitest";
import { confinedStrength } from "./confined-strength.ts";
import { unconfinedStrengthFromMohr } from "./unconfined-strength.ts";

it("is the unconfined strength without pressure, and grows by the pressure alone without friction", () => {
  expect(confinedStrength({ ucs: 5e7, pressureDifference: 0, frictionAngle: 0.6 })).toBe(5e7);
  expect(confinedStrength({ ucs: 5e7, pressureDifference: 2e6, frictionAngle: 0 })).toBe(5.2e7);
});

it("keeps the Mohr circle between the pressure and the strength tangent to the same line", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e5, max: 1e8, noNaN: true }),
      fc.double({ min: 0, max: 1.2, noNaN: true }),
      fc.double({ min: 0, max: 3e7, noNaN: true }),
      (cohesion, frictionAngle, pressureDifference) => {
        const ucs = unconfinedStrengthFromMohr({ cohesion, frictionAngle });
        const largest = confinedStrength({ ucs, pressureDifference, frictionAngle });
        const radius = (largest - pressureDifference) / 2;
        const centre = (largest + pressureDifference) / 2;
        const distance = (cohesion + centre * Math.tan(frictionAngle)) * Math.cos(frictionAngle);
        expect(distance / radius).toBeCloseTo(1, 9);
      },
    ),
  );
});

it("refuses negative pressure", () => {
  expect(() => confinedStrength({ ucs: 1, pressureDifference: -1, frictionAngle: 0.5 })).toThrow(
    "pressureDifference must not be negative, got -1",
  );
});
