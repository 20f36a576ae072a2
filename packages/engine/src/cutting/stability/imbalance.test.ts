import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../../tests/support/close-to.ts";
import { degree, mm } from "../../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../../tests/support/profiled-bit.ts";
import { anyAdvance, anyCoveredLayout, turned } from "../../../../../tests/support/random-layout.ts";
import { sandstoneLike } from "../../../../../tests/support/rock-responses.ts";
import { drillAtAdvance } from "../drilled-state.ts";
import { engage } from "../engage.ts";
import { traceEdges } from "../trace-edges.ts";
import { bedLoads } from "./bed-loads.ts";
import { bitInBeds } from "./bit-in-beds.ts";
import { cuttersAlongProfile } from "./cutter-groups.ts";
import { imbalance, worstGroup } from "./imbalance.ts";
import { wingDirection } from "./side-force-direction.ts";

const cells = 300;
function balanceOf(layout: ReturnType<typeof profiledBit>, advance = 1 * mm) {
  const trace = traceEdges(layout, { cells });
  const bit = bitInBeds({ trace, beds: [{ top: 0, response: sandstoneLike }] });
  return imbalance(trace, bedLoads(bit, engage(trace, advance), { depth: 0, azimuth: 0 }));
}

describe("imbalance", () => {
  it("is the side force of the plain solver, made of its two parts by the law of cosines", () => {
    fc.assert(
      fc.property(anyCoveredLayout, anyAdvance, (layout, advance) => {
        const found = balanceOf(layout, advance);
        const trace = traceEdges(layout, { cells });
        const { bit } = drillAtAdvance({ trace, response: sandstoneLike }, advance);
        expectClose(found.whole.force, bit.lateralForce, 1e-9);
        const { drag, radial, betweenAngle } = found;
        const square = drag.force ** 2 + radial.force ** 2 + 2 * drag.force * radial.force * Math.cos(betweenAngle);
        expect(Math.abs(Math.sqrt(Math.max(0, square)) - bit.lateralForce)).toBeLessThan(
          1e-6 * (drag.force + radial.force),
        );
      }),
      { seed: 41, numRuns: 30 },
    );
  });

  it("names the same wing, as far ahead of it, however the bit is turned", () => {
    const straight = balanceOf(profiledBit());
    for (const by of [0.3, 2.1, -1.7]) {
      const round = balanceOf(turned(profiledBit(), by));
      expect(round.direction?.wing).toBe(straight.direction?.wing);
      expectClose(round.direction?.aheadAngle ?? 0, straight.direction?.aheadAngle ?? 1, 1e-6);
      expect(round.direction?.words).toBe(straight.direction?.words);
      expectClose(round.betweenAngle, straight.betweenAngle, 1e-6);
    }
  });

  it("points nowhere on a bit whose wings are alike", () => {
    const one = profiledBit().cutters[0];
    // Three straight wings of cutters at the same three radii.
    const cutters = [0, 1, 2].flatMap((wing) =>
      [0.01, 0.022, 0.034].map((radius) => ({
        ...one,
        radius,
        wing: wing + 1,
        azimuth: (wing * 2 * Math.PI) / 3,
        height: 0,
        profileAngle: 0,
        sideRake: 0,
      })),
    );
    const found = balanceOf({ holeDiameter: 0.08, cutters });
    expect(found.whole.share).toBeLessThan(1e-9);
    expect(found.direction).toBeUndefined();
  });
});

describe("wingDirection", () => {
  const layout = {
    holeDiameter: 0.15,
    cutters: [10, 130, 250].flatMap((azimuth, k) => [
      { ...profiledBit().cutters[3], wing: k + 1, radius: 0.02, azimuth: (azimuth + 40) * degree },
      { ...profiledBit().cutters[3], wing: k + 1, radius: 0.07, azimuth: azimuth * degree },
    ]),
  };

  it("goes by the outermost cutter of each wing, the short way round", () => {
    expect(wingDirection({ layout, azimuth: 130 * degree })?.words).toBe("toward wing 2");
    expect(wingDirection({ layout, azimuth: 142 * degree })?.words).toBe("toward wing 2, 12° ahead of it");
    expect(wingDirection({ layout, azimuth: -20 * degree })?.words).toBe("toward wing 1, 30° behind it");
    expect(wingDirection({ layout, azimuth: 355 * degree })?.aheadAngle).toBeCloseTo(-15 * degree, 12);
  });

  it("is silent where no wing is known", () => {
    const unknown = { ...layout, cutters: layout.cutters.map((cutter) => ({ ...cutter, wing: 0 })) };
    expect(wingDirection({ layout: unknown, azimuth: 1 })).toBeUndefined();
  });
});

describe("groups of neighbours", () => {
  it("sum as vectors: a group of all cutters is the whole bit, a group of one leans wholly", () => {
    const found = balanceOf(profiledBit());
    expect(found.pairs).toHaveLength(14);
    expect(found.triples).toHaveLength(13);
    for (const { leanShare } of [...found.pairs, ...found.triples]) {
      expect(leanShare).toBeGreaterThanOrEqual(0);
      expect(leanShare).toBeLessThanOrEqual(1 + 1e-12);
    }
    const worst = worstGroup(found.triples);
    expect(Math.max(...found.triples.map((group) => group.lateralShare))).toBe(worst?.lateralShare);
    expect(worstGroup([])).toBeUndefined();
  });

  it("follow the profile outward, whatever the order of the layout", () => {
    const layout = profiledBit();
    const order = cuttersAlongProfile(layout.cutters);
    expect([...order].sort((a, b) => a - b)).toEqual(layout.cutters.map((_, k) => k));
    const shuffled = [...layout.cutters].reverse();
    expect(cuttersAlongProfile(shuffled).map((k) => layout.cutters.length - 1 - k)).toEqual(order);
  });

  it("is not put out by rounding: cutters at one place keep the order of their numbers", () => {
    const [cutter] = profiledBit().cutters;
    const gauge = [0, 1e-16, -1e-16].map((off) => ({
      ...cutter,
      radius: cutter.radius + off,
      height: cutter.height - off,
    }));
    expect(cuttersAlongProfile(gauge)).toEqual([0, 1, 2]);
    expect(cuttersAlongProfile([gauge[1], gauge[2], gauge[0]])).toEqual([0, 1, 2]);
  });
});
