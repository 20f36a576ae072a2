import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { degree, mm } from "../../../../tests/support/field-units.ts";
import { coveringCutters } from "../../../../tests/support/random-layout.ts";
import { sandstoneLike } from "../../../../tests/support/rock-responses.ts";
import { edgeResponse } from "./edge-response.ts";

const [, second] = coveringCutters(0.06);
const bevelled = (chamferAngle: number, backRake = 15) => ({
  ...second,
  chamferWidth: 0.4 * mm,
  chamferAngle: chamferAngle * degree,
  backRake: backRake * degree,
});
const { specificEnergy } = sandstoneLike;

describe("edgeResponse", () => {
  it("takes ε along travel and ζ ε normal to it at the sharp face", () => {
    const law = edgeResponse(bevelled(45), sandstoneLike);
    expect(law.faceDrag).toBe(specificEnergy);
    expectClose(law.faceNormal / specificEnergy, 0.6494076, 1e-6);
  });

  it("lets a 45° bevel rub: σ_c tan 60° at 15° of back rake", () => {
    expectClose(edgeResponse(bevelled(45), sandstoneLike).chamferNormal / specificEnergy, Math.tan(60 * degree), 1e-12);
  });

  it("lets a bevel cut where the rock bears more than cutting asks: ε tan(45° + 15° + 18°)", () => {
    const hard = { ...sandstoneLike, contactStress: 10 * specificEnergy };
    expectClose(edgeResponse(bevelled(45), hard).chamferNormal / specificEnergy, 4.7, 2e-3);
  });

  it("makes a blunter bevel ask for more weight, never for less than the sharp face", () => {
    for (const backRake of [5, 10, 20, 25]) {
      const laws = [0, 12, 16, 20, 30, 45].map((angle) => edgeResponse(bevelled(angle, backRake), sandstoneLike));
      laws.forEach((law, i) => {
        expect(law.chamferNormal).toBeGreaterThanOrEqual((laws[i - 1] ?? law).chamferNormal);
        expect(law.chamferNormal).toBeGreaterThanOrEqual(law.faceNormal);
      });
      expect(laws[5].chamferNormal).toBeGreaterThan(laws[0].chamferNormal);
    }
  });

  it("lets a slight bevel cut as a part of the face", () => {
    const slight = edgeResponse(bevelled(12, 10), sandstoneLike);
    expect([slight.chamferNormal, slight.chamferDrag]).toEqual([slight.faceNormal, slight.faceDrag]);
    expect(slight.chamferLength).toBe(0);
  });

  it("gives a bevel that rubs the drag of its normal load times max(μ, cot(β + χ + ψ))", () => {
    const angle = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
    fc.assert(
      fc.property(angle(30, 60), angle(0, 25), angle(0, 0.9), (chamfer, rake, mu) => {
        const law = edgeResponse(bevelled(chamfer, rake), { ...sandstoneLike, flatFriction: mu });
        const lean = (chamfer + rake + 18) * degree;
        const cotangent = lean < Math.PI / 2 ? 1 / Math.tan(lean) : 0;
        expectClose(law.chamferDrag, law.chamferNormal * Math.max(mu, cotangent), 1e-12);
      }),
      { seed: 5 },
    );
  });

  it("spends exactly ε along travel where the bevel cuts: tan and cotangent cancel", () => {
    const hard = { ...sandstoneLike, contactStress: 10 * specificEnergy, flatFriction: 0 };
    expectClose(edgeResponse(bevelled(45), hard).chamferDrag / specificEnergy, 1, 1e-12);
  });

  it("refuses a face that leans past a right angle with its friction", () => {
    expect(() => edgeResponse(bevelled(45, 73), sandstoneLike)).toThrow(/must stay under a right angle/);
    expect(() => edgeResponse(bevelled(45), { ...sandstoneLike, specificEnergy: 0 })).toThrow(
      "specificEnergy must be positive, got 0",
    );
  });
});
