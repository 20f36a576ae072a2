import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../../tests/support/close-to.ts";
import { degree, mm } from "../../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../../tests/support/profiled-bit.ts";
import { anyAdvance, anyCoveredLayout, turned } from "../../../../../tests/support/random-layout.ts";
import { sandstoneLike } from "../../../../../tests/support/rock-responses.ts";
import { bitLoads } from "../bit-loads.ts";
import { edgeLoads } from "../edge-loads.ts";
import { engage } from "../engage.ts";
import { traceEdges } from "../trace-edges.ts";
import { bedLoads, emptyBedLoads } from "./bed-loads.ts";
import { bitInBeds } from "./bit-in-beds.ts";
import { thinBeds } from "./crossed-bed.ts";

const cells = 300;
const soft = { ...sandstoneLike, specificEnergy: 15e6, contactStress: 12e6, flatFriction: 0.2, kappa: 8 };
const at = (depth: number, azimuth = 0) => ({ depth, azimuth });

describe("bedLoads", () => {
  it("gives in one bed what edgeLoads gives, to 1 part in 10¹², whether it is one bed or many alike", () => {
    fc.assert(
      fc.property(anyCoveredLayout, anyAdvance, (layout, advance) => {
        const trace = traceEdges(layout, { cells });
        const engagement = engage(trace, advance);
        const plain = edgeLoads(trace, engagement, sandstoneLike);
        const alike = thinBeds({ from: -0.01, to: 0.01, thickness: 0.7 * mm, responseAt: () => sandstoneLike });
        for (const beds of [[{ top: 0, response: sandstoneLike }], alike]) {
          const loads = bedLoads(bitInBeds({ trace, beds, dipAngle: 12 * degree }), engagement, at(0.001, 1));
          for (const name of Object.keys(plain) as (keyof typeof plain)[]) {
            const scale = Math.max(...plain[name].map(Math.abs), 1e-30);
            plain[name].forEach((value, k) => {
              expect(Math.abs(loads[name][k] - value) / scale).toBeLessThan(1e-12);
            });
          }
        }
      }),
      { seed: 31, numRuns: 25 },
    );
  });

  it("takes each edge at the depth it stands at: the forces of both beds, split cutter by cutter", () => {
    const trace = traceEdges(profiledBit());
    const engagement = engage(trace, 1 * mm);
    const beds = [
      { top: 0, response: soft },
      { top: 0, response: sandstoneLike },
    ];
    const [inSoft, inHard] = beds.map(({ response }) => edgeLoads(trace, engagement, response));
    // Worked anew, pass by pass: a cutter all of whose layers lie below or above the boundary answers with one rock alone.
    for (const depth of [-0.004, 0, 0.006]) {
      const loads = bedLoads(bitInBeds({ trace, beds }), engagement, at(depth));
      let [whollyAbove, whollyBelow] = [0, 0];
      trace.layout.cutters.forEach((_, k) => {
        let [lowest, highest] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
        trace.cutter.forEach((by, pass) => {
          if (by !== k || !(engagement.depth[pass] > 0)) return;
          lowest = Math.max(lowest, depth + trace.height[pass]);
          highest = Math.min(highest, depth + trace.height[pass] - engagement.depth[pass]);
        });
        if (lowest < 0) {
          whollyAbove++;
          expectClose(loads.torque[k], inSoft.torque[k], 1e-12);
          expectClose(loads.contactNormal[k], inSoft.contactNormal[k], 1e-12);
        } else if (highest > 0) {
          whollyBelow++;
          expectClose(loads.torque[k], inHard.torque[k], 1e-12);
          expectClose(loads.contactNormal[k], inHard.contactNormal[k], 1e-12);
        } else {
          expect(loads.torque[k]).toBeGreaterThan(inSoft.torque[k]);
          expect(loads.torque[k]).toBeLessThan(inHard.torque[k]);
        }
      });
      expect(whollyAbove + whollyBelow).toBeGreaterThan(3);
    }
  });

  it("changes without a jump as the bit goes down through a boundary", () => {
    const trace = traceEdges(profiledBit(), { cells });
    const engagement = engage(trace, 1 * mm);
    const bit = bitInBeds({
      trace,
      beds: [
        { top: 0, response: soft },
        { top: 0, response: sandstoneLike },
      ],
    });
    const weights = Array.from({ length: 2001 }, (_, k) => {
      return bitLoads(bedLoads(bit, engagement, at(-0.005 + k * 5e-6))).weight;
    });
    const whole = weights[2000] - weights[0];
    for (let k = 1; k < weights.length; k++) {
      expect(weights[k]).toBeGreaterThanOrEqual(weights[k - 1] - 1e-9);
      expect(weights[k] - weights[k - 1]).toBeLessThan(0.01 * whole);
    }
  });

  it("splits the side force into drag and radial part, the torque into cutting and contact", () => {
    const trace = traceEdges(profiledBit(), { cells });
    const engagement = engage(trace, 1 * mm);
    const bit = (response: typeof sandstoneLike) => bitInBeds({ trace, beds: [{ top: 0, response }] });
    const whole = bedLoads(bit(sandstoneLike), engagement, at(0));
    trace.layout.cutters.forEach((_, k) => {
      // The rest is drag: no longer than the drag summed along travel, and across the radius of where it acts.
      const dragX = whole.lateralX[k] - whole.radialX[k];
      const dragY = whole.lateralY[k] - whole.radialY[k];
      const drag = Math.hypot(dragX, dragY);
      expect(drag).toBeLessThanOrEqual(whole.tangential[k] * (1 + 1e-12));
      const { azimuth, radius } = trace.layout.cutters[k];
      // The inmost cutter reaches across the axis, where travel turns about.
      if (radius > 0.02) {
        expect(drag).toBeGreaterThan(0.97 * whole.tangential[k]);
        expect((dragX * Math.sin(azimuth) - dragY * Math.cos(azimuth)) / drag).toBeGreaterThan(0.98);
      }
    });
    // Without friction of flats and without bevels no torque is contact.
    const bare = { ...trace.layout, cutters: trace.layout.cutters.map((c) => ({ ...c, chamferWidth: 0 })) };
    const bareTrace = traceEdges(bare, { cells });
    const slick = bitInBeds({
      trace: bareTrace,
      beds: [{ top: 0, response: { ...sandstoneLike, flatFriction: 0 } }],
    });
    const loads = bedLoads(slick, engage(bareTrace, 1 * mm), at(0));
    expect(loads.contactTorque.every((torque) => torque === 0)).toBe(true);
    expect(loads.contactNormal.some((normal) => normal > 0)).toBe(true);
  });

  it("knows no direction in a dipping bed but that of the dip: turning bit and dip together changes nothing", () => {
    const layout = profiledBit();
    const beds = [
      { top: 0, response: soft },
      { top: 0, response: sandstoneLike },
    ];
    const weightAt = (turn: number, azimuth: number) => {
      const trace = traceEdges(turned(layout, turn), { cells });
      const bit = bitInBeds({ trace, beds, dipAngle: 20 * degree });
      return bitLoads(bedLoads(bit, engage(trace, 1 * mm), at(-0.002, azimuth)));
    };
    const straight = weightAt(0, 0.7);
    const turnedBack = weightAt(0.5, 0.2);
    expectClose(turnedBack.weight, straight.weight, 1e-9);
    expectClose(turnedBack.lateralForce, straight.lateralForce, 1e-9);
    expect(Math.abs(weightAt(0, 2.5).lateralForce / straight.lateralForce - 1)).toBeGreaterThan(1e-3);
  });

  it("fills the arrays it is given and no others", () => {
    const trace = traceEdges(profiledBit(), { cells });
    const bit = bitInBeds({ trace, beds: [{ top: 0, response: soft }] });
    const into = emptyBedLoads(trace);
    const engagement = engage(trace, 1 * mm);
    expect(bedLoads(bit, engagement, at(0), into)).toBe(into);
    const once = into.torque.slice();
    bedLoads(bit, engagement, at(0), into);
    expect(into.torque).toEqual(once);
  });

  it("refuses beds that are none or out of order, and dips past 80°", () => {
    const trace = traceEdges(profiledBit(), { cells: 60 });
    expect(() => bitInBeds({ trace, beds: [] })).toThrow("beds must name one bed at least");
    const bed = (top: number) => ({ top, response: soft });
    expect(() => bitInBeds({ trace, beds: [bed(0), bed(1), bed(0.5)] })).toThrow("tops of beds must ascend, got 0.5");
    expect(() => bitInBeds({ trace, beds: [bed(0)], dipAngle: 1.5 })).toThrow("dipAngle must lie in");
    expect(() => thinBeds({ from: 1, to: 1, thickness: 0.1, responseAt: () => soft })).toThrow(
      "length must be positive",
    );
  });
});
