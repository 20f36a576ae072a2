import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { degree, mm, rpm } from "../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../tests/support/profiled-bit.ts";
import { anyAdvance, anyCoveredLayout, turned } from "../../../../tests/support/random-layout.ts";
import { sandstoneLike } from "../../../../tests/support/rock-responses.ts";
import { drillAtAdvance, drillAtPower, drillAtTorque, drillAtWeight } from "./drilled-state.ts";
import { traceEdges } from "./trace-edges.ts";

const cells = 300;
const bit = { trace: traceEdges(profiledBit()), response: sandstoneLike };

describe("drillAtAdvance", () => {
  it("is all zero at no advance", () => {
    const { bit: loads } = drillAtAdvance(bit, 0);
    for (const figure of Object.values(loads)) expect(figure).toBe(0);
  });

  it("obeys F_t = ε A + μ N on every cutter without a bevel: all states lie on the friction line", () => {
    fc.assert(
      fc.property(anyCoveredLayout, anyAdvance, (bevelled, advance) => {
        const layout = { ...bevelled, cutters: bevelled.cutters.map((cutter) => ({ ...cutter, chamferWidth: 0 })) };
        const trace = traceEdges(layout, { cells });
        const { engagement, loads } = drillAtAdvance({ trace, response: sandstoneLike }, advance);
        const { specificEnergy, flatFriction } = sandstoneLike;
        loads.tangential.forEach((drag, i) => {
          const expected = specificEnergy * engagement.area[i] + flatFriction * loads.contactNormal[i];
          expect(Math.abs(drag - expected)).toBeLessThanOrEqual(1e-9 * Math.max(1, expected));
        });
      }),
      { seed: 6, numRuns: 40 },
    );
  });

  it("asks for more weight and more torque the faster it goes", () => {
    fc.assert(
      fc.property(anyCoveredLayout, anyAdvance, anyAdvance, (layout, one, other) => {
        const trace = traceEdges(layout, { cells });
        const at = (advance: number) => drillAtAdvance({ trace, response: sandstoneLike }, advance).bit;
        const [slow, fast] = [at(Math.min(one, other)), at(Math.max(one, other) + 0.01 * mm)];
        expect(fast.weight).toBeGreaterThan(slow.weight);
        expect(fast.torque).toBeGreaterThan(slow.torque);
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("gives the same weight, torque and side force however the bit is turned; the side force turns with it", () => {
    const layout = profiledBit();
    const straight = drillAtAdvance(bit, 1 * mm).bit;
    for (const by of [0.4, 2, -3]) {
      const round = drillAtAdvance({ ...bit, trace: traceEdges(turned(layout, by)) }, 1 * mm).bit;
      for (const name of ["weight", "torque", "lateralForce", "bendingMoment"] as const) {
        expectClose(round[name], straight[name], 1e-9);
      }
      expectClose(Math.cos(round.lateralAzimuth - straight.lateralAzimuth - by), 1, 1e-9);
      expectClose(Math.cos(round.bendingAzimuth - straight.bendingAzimuth - by), 1, 1e-9);
    }
  });

  it("scales all forces with the strength of the rock", () => {
    const harder = { ...sandstoneLike, specificEnergy: 180e6, contactStress: 180e6 };
    const [soft, hard] = [sandstoneLike, harder].map((response) => drillAtAdvance({ ...bit, response }, 1 * mm).bit);
    expectClose(hard.weight, 3 * soft.weight, 1e-12);
    expectClose(hard.torque, 3 * soft.torque, 1e-12);
  });

  it("pushes gauge cutters in and cone cutters out", () => {
    const [inner] = profiledBit().cutters;
    const alone = (profileAngle: number) => {
      const cutter = { ...inner, radius: 0.05, sideRake: 0, profileAngle: profileAngle * degree, wornHeight: 0 };
      const shape = { holeDiameter: 0.16, cutters: [cutter] };
      return drillAtAdvance({ ...bit, trace: traceEdges(shape) }, 0.2 * mm).loads.radial[0];
    };
    expect(alone(70)).toBeLessThan(alone(0));
    expect(alone(-20)).toBeGreaterThan(alone(0));
  });
});

describe("the solver", () => {
  it("comes back to the advance a weight, a torque or a power was computed from", () => {
    fc.assert(
      fc.property(anyCoveredLayout, anyAdvance, (layout, advance) => {
        const bitInRock = { trace: traceEdges(layout, { cells }), response: sandstoneLike };
        const { weight, torque } = drillAtAdvance(bitInRock, advance).bit;
        const rotarySpeed = 90 * rpm;
        expectClose(drillAtWeight(bitInRock, weight).advance, advance, 1e-7);
        expectClose(drillAtTorque(bitInRock, torque).advance, advance, 1e-7);
        expectClose(drillAtPower(bitInRock, { power: torque * rotarySpeed, rotarySpeed }).advance, advance, 1e-7);
      }),
      { seed: 8, numRuns: 40 },
    );
  });

  it("carries the weight it was asked to", () => {
    for (const weight of [1e-3, 50, 5e3, 9e4]) expectClose(drillAtWeight(bit, weight).bit.weight, weight, 1e-8);
    expect(drillAtWeight(bit, 0).advance).toBe(0);
  });

  it("says when no advance can carry it", () => {
    const none = { trace: traceEdges({ holeDiameter: 0.1, cutters: [] }), response: sandstoneLike };
    expect(() => drillAtWeight(none, 1000)).toThrow("no advance reaches a weight of 1000");
    expect(() => drillAtWeight(bit, -1)).toThrow("weight must not be negative, got -1");
  });
});
