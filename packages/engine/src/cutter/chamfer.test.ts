import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chamferContactLength, chamferHeight, chamferRake, TRADE_CHAMFERS } from "./chamfer.ts";

const deg = Math.PI / 180;
const angle = fc.double({ min: 1 * deg, max: 45 * deg, noNaN: true });
const backRake = fc.double({ min: 0, max: 40 * deg, noNaN: true });

describe("chamfer", () => {
  it("spans between the two corners of the bevel, whichever way it is measured", () => {
    // Corners in the plane of travel and profile normal: where the bevel leaves the face, and where it meets the side.
    fc.assert(
      fc.property(angle, backRake, (chi, beta) => {
        const width = 4e-4;
        const down = [-Math.sin(beta), Math.cos(beta)]; // along the face, toward the rock: [travel, normal]
        const ahead = [Math.cos(beta), Math.sin(beta)]; // face normal
        const back = width * Math.tan(chi);
        // From the corner on the face to the corner on the side.
        const along = down.map((d, i) => width * d - back * (ahead[i] ?? 0));
        expect(chamferHeight({ width, angle: chi, backRake: beta })).toBeCloseTo(along[1] ?? 0, 12);
        expect(chamferContactLength({ depth: 1, width, angle: chi, backRake: beta })).toBeCloseTo(-(along[0] ?? 0), 12);
      }),
    );
  });

  it("is lower the more the face leans and the steeper the bevel", () => {
    fc.assert(
      fc.property(angle, backRake, (chi, beta) => {
        const height = chamferHeight({ width: 4e-4, angle: chi, backRake: beta });
        expect(chamferHeight({ width: 4e-4, angle: chi, backRake: beta + 0.01 })).toBeLessThan(height);
        if (beta > 1e-3) {
          expect(chamferHeight({ width: 4e-4, angle: chi + 0.01, backRake: beta })).toBeLessThan(height);
        }
        expect(chamferHeight({ width: 8e-4, angle: chi, backRake: beta })).toBeCloseTo(2 * height, 12);
      }),
    );
  });

  it("offers the rock the sum of both angles", () => {
    expect(chamferRake({ angle: 45 * deg, backRake: 15 * deg })).toBeCloseTo(60 * deg, 12);
  });

  it("is nothing on a sharp edge or where it leans past the vertical", () => {
    expect(chamferHeight({ width: 4e-4, angle: 0, backRake: 0.2 })).toBe(0);
    expect(chamferHeight({ width: 4e-4, angle: 70 * deg, backRake: 25 * deg })).toBe(0);
    expect(chamferContactLength({ depth: 1e-3, width: 4e-4, angle: 0, backRake: 0.2 })).toBe(0);
  });

  it("lists the bevels of the trade, sharpest first", () => {
    expect(TRADE_CHAMFERS.map((each) => Math.round(each.angle / deg))).toEqual([0, 12, 16, 20]);
  });

  it("refuses what is no bevel", () => {
    expect(() => chamferHeight({ width: -1, angle: 0.2, backRake: 0.2 })).toThrow("width must not be negative, got -1");
    expect(() => chamferHeight({ width: 1, angle: 2, backRake: 0.2 })).toThrow(/angle must lie in 0/);
  });
});
