import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { portRoom, slotArea, type WingedCore } from "./slot-area.ts";

/** The open area counted over a grid of points across the hole. */
function counted(holeDiameter: number, { wings, wingThickness, coreRadius }: WingedCore): number {
  const holeRadius = holeDiameter / 2;
  const cells = 600;
  const step = holeDiameter / cells;
  let open = 0;
  for (let row = 0; row < cells; row++) {
    for (let column = 0; column < cells; column++) {
      const x = (column + 0.5) * step - holeRadius;
      const y = (row + 0.5) * step - holeRadius;
      const rho = Math.hypot(x, y);
      if (rho > holeRadius || rho < coreRadius) continue;
      const covered = Array.from({ length: wings }, (_, k) => (2 * Math.PI * k) / wings).some(
        (at) =>
          x * Math.cos(at) + y * Math.sin(at) > 0 && Math.abs(y * Math.cos(at) - x * Math.sin(at)) < wingThickness / 2,
      );
      if (!covered) open += step * step;
    }
  }
  return open;
}

const core = fc.record({
  wings: fc.integer({ min: 2, max: 6 }),
  wingThickness: fc.double({ min: 0.005, max: 0.03, noNaN: true }),
  coreRadius: fc.double({ min: 0.03, max: 0.06, noNaN: true }),
});

describe("slotArea", () => {
  it("is what counting points across the hole gives", () => {
    fc.assert(
      fc.property(core, (of) => {
        expect(slotArea({ holeDiameter: 0.2, ...of }) / counted(0.2, of)).toBeCloseTo(1, 2);
      }),
      { numRuns: 12 },
    );
  });

  it("shrinks with every wing, with thicker wings and with a larger core; so does the room for a port with every wing", () => {
    fc.assert(
      fc.property(core, (of) => {
        const area = slotArea({ holeDiameter: 0.2, ...of });
        expect(slotArea({ holeDiameter: 0.2, ...of, wings: of.wings + 1 })).toBeLessThan(area);
        expect(slotArea({ holeDiameter: 0.2, ...of, wingThickness: of.wingThickness * 1.1 })).toBeLessThan(area);
        expect(slotArea({ holeDiameter: 0.2, ...of, coreRadius: of.coreRadius * 1.1 })).toBeLessThan(area);
        expect(portRoom({ ...of, wings: of.wings + 1, wall: 0.003 })).toBeLessThanOrEqual(
          portRoom({ ...of, wall: 0.003 }),
        );
      }),
    );
  });

  it("starts slots where wings part when they touch beyond the core", () => {
    // Six wings of 30 mm part at 30 mm; a core of 10 mm changes nothing.
    const wide = { holeDiameter: 0.2, wings: 6, wingThickness: 0.03 };
    expect(slotArea({ ...wide, coreRadius: 0.01 })).toBe(slotArea({ ...wide, coreRadius: 0.03 }));
  });
});

it("leaves no port where the wings meet at the core", () => {
  expect(portRoom({ wings: 8, wingThickness: 0.03, coreRadius: 0.03, wall: 0.003 })).toBe(0);
});
