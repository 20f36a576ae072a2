import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../../tests/support/close-to.ts";
import { degree, mm } from "../../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../../tests/support/profiled-bit.ts";
import { sandstoneLike } from "../../../../../tests/support/rock-responses.ts";
import { drillAtAdvance, drillAtWeight } from "../drilled-state.ts";
import { traceEdges } from "../trace-edges.ts";
import { bedCrossing } from "./bed-crossing.ts";
import { bitInBeds } from "./bit-in-beds.ts";
import { thinBeds } from "./crossed-bed.ts";
import { throughBeds } from "./through-beds.ts";

const trace = traceEdges(profiledBit(), { cells: 300 });
const soft = { ...sandstoneLike, specificEnergy: 15e6, contactStress: 15e6 };
const weight = 8000;

describe("bedCrossing", () => {
  const crossing = bedCrossing({ trace, above: soft, below: sandstoneLike, weight });
  const [first] = crossing.curve;
  const last = crossing.curve[crossing.curve.length - 1];

  it("begins in the old bed and ends in the new one, as the plain solver finds them", () => {
    const before = drillAtWeight({ trace, response: soft }, weight);
    const after = drillAtWeight({ trace, response: sandstoneLike }, weight);
    expectClose(first.heldWeight.advance, before.advance, 1e-7);
    expectClose(last.heldWeight.advance, after.advance, 1e-7);
    expectClose(first.heldWeight.torque, before.bit.torque, 1e-7);
    expectClose(last.heldWeight.lateralForce, after.bit.lateralForce, 1e-6);
    const held = drillAtAdvance({ trace, response: sandstoneLike }, before.advance);
    expectClose(last.heldAdvance.weight, held.bit.weight, 1e-7);
    expectClose(last.heldAdvance.torque, held.bit.torque, 1e-7);
  });

  it("carries the weight at every place, and slows down all the way from soft to hard", () => {
    crossing.curve.forEach(({ heldWeight, heldAdvance }, k) => {
      expectClose(heldWeight.weight, weight, 1e-8);
      if (k === 0) return;
      const before = crossing.curve[k - 1];
      expect(heldWeight.advance).toBeLessThanOrEqual(before.heldWeight.advance * (1 + 1e-9));
      expect(heldAdvance.weight).toBeGreaterThanOrEqual(before.heldAdvance.weight * (1 - 1e-9));
    });
  });

  it("is as long as the bit is deep: the span is the height of its cut edges and one layer", () => {
    const heights = trace.height.filter(
      (_, k) => drillAtAdvance({ trace, response: soft }, crossing.before.advance).engagement.depth[k] > 0,
    );
    const deep = Math.max(...heights) - Math.min(...heights);
    expect(crossing.span).toBeGreaterThan(deep);
    expect(crossing.span).toBeLessThan(deep + 1.001 * crossing.before.advance);
  });

  it("overloads the first cutters in at held weight, never at held advance", () => {
    // One cutter stands 4 mm deeper than the rest: it meets the hard bed alone, at the soft bed's advance.
    const ahead = profiledBit();
    const cutters = ahead.cutters.map((c, k) => (k === 7 ? { ...c, height: c.height + 4 * mm } : c));
    const sharp = traceEdges({ ...ahead, cutters }, { cells: 300 });
    const { peak, curve, before, after } = bedCrossing({ trace: sharp, above: soft, below: sandstoneLike, weight });
    expect(peak.cutter).toBe(8);
    expect(peak.overloadRatio).toBeGreaterThan(1.5);
    // Never more than the strength ratio can make it.
    expect(peak.overloadRatio).toBeLessThan(4);
    const heldHard = drillAtAdvance({ trace: sharp, response: sandstoneLike }, before.advance).loads;
    for (const { heldAdvance } of curve) {
      heldAdvance.cutterForces.forEach((force, k) => {
        const inHard = Math.hypot(
          heldHard.tangential[k],
          heldHard.cuttingAxial[k] + heldHard.contactAxial[k],
          heldHard.radial[k],
        );
        expect(force).toBeLessThanOrEqual(inHard * (1 + 1e-9));
      });
    }
    expect(after.advance).toBeLessThan(before.advance);
  });

  it("takes longer where the boundary dips, and pushes to the side", () => {
    const even = { ...profiledBit(), cutters: profiledBit().cutters };
    const level = bedCrossing({ trace: traceEdges(even, { cells: 200 }), above: soft, below: sandstoneLike, weight });
    const dipping = bedCrossing({
      trace: traceEdges(even, { cells: 200 }),
      above: soft,
      below: sandstoneLike,
      weight,
      dipAngle: 20 * degree,
    });
    expect(dipping.span).toBeGreaterThan(level.span + 0.5 * even.holeDiameter * Math.tan(20 * degree));
    expect(dipping.mostLateral.heldWeight.lateralShare).toBeGreaterThan(level.mostLateral.heldWeight.lateralShare);
    for (const { heldWeight } of dipping.curve) expectClose(heldWeight.weight, weight, 1e-8);
  });

  it("refuses no weight and less than two places", () => {
    expect(() => bedCrossing({ trace, above: soft, below: soft, weight: 0 })).toThrow("weight must be positive, got 0");
    expect(() => bedCrossing({ trace, above: soft, below: soft, weight, places: 1 })).toThrow("placesOverOne");
  });
});

describe("throughBeds", () => {
  it("in beds far thinner than the bit is deep takes the mean of them", () => {
    const alternating = thinBeds({
      from: -0.1,
      to: 0.1,
      thickness: 0.05 * mm,
      responseAt: (depth) => (Math.round((depth - 0.025 * mm) / (0.05 * mm)) % 2 === 0 ? soft : sandstoneLike),
    });
    const bit = bitInBeds({ trace, beds: alternating });
    const [mixed] = throughBeds({ bit, held: { advance: 1 * mm }, depths: [0] });
    const mean = [soft, sandstoneLike]
      .map((response) => drillAtAdvance({ trace, response }, 1 * mm).bit.weight)
      .reduce((sum, one) => sum + one / 2, 0);
    expectClose(mixed.weight, mean, 0.01);
  });

  it("repeats itself from one pair of beds to the next", () => {
    const pair = 8 * mm;
    const stack = thinBeds({
      from: -0.2,
      to: 0.2,
      thickness: pair / 2,
      responseAt: (depth) => ((depth + 1) % pair < pair / 2 ? soft : sandstoneLike),
    });
    const bit = bitInBeds({ trace, beds: stack });
    const [one, next] = throughBeds({ bit, held: { weight }, depths: [0.001, 0.001 + pair] });
    expectClose(next.advance, one.advance, 1e-6);
    expectClose(next.torque, one.torque, 1e-6);
  });
});
