import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { degree, mm } from "../../../../tests/support/field-units.ts";
import {
  anyAdvance,
  anyCoveredLayout,
  anyCutter,
  coveringCutters,
  turned,
} from "../../../../tests/support/random-layout.ts";
import { uncutRings } from "../bit/index.ts";
import { emptyEngagement, engage } from "./engage.ts";
import { traceEdges } from "./trace-edges.ts";

const total = (row: Float64Array) => row.reduce((sum, value) => sum + value, 0);
const cells = 300;

describe("engage", () => {
  it("takes nothing at no advance", () => {
    const trace = traceEdges({ holeDiameter: 0.12, cutters: coveringCutters(0.06) });
    const { area, volume, depth } = engage(trace, 0);
    for (const row of [area, volume, depth]) expect(total(row)).toBe(0);
  });

  it("shares out exactly the hole, for any layout that covers it and any advance", () => {
    fc.assert(
      fc.property(anyCoveredLayout, anyAdvance, (layout, advance) => {
        const { volume } = engage(traceEdges(layout, { cells }), advance);
        expectClose(total(volume), (Math.PI / 4) * layout.holeDiameter ** 2 * advance, 1e-9);
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it("takes the swept part of the hole and no more where rings are left uncut", () => {
    fc.assert(
      fc.property(fc.array(anyCutter(0.07), { minLength: 1, maxLength: 6 }), anyAdvance, (cutters, advance) => {
        const layout = { holeDiameter: 0.14, cutters };
        const uncut = uncutRings(layout).reduce((sum, [from, to]) => sum + to ** 2 - from ** 2, 0);
        const swept = Math.PI * (0.07 ** 2 - uncut) * advance;
        // The grid counts a ring by whole cells of 0.02 mm.
        expectClose(total(engage(traceEdges(layout, { cells: 3500 }), advance).volume), swept, 5e-3);
      }),
      { seed: 9, numRuns: 60 },
    );
  });

  it("does not care how the bit is turned", () => {
    fc.assert(
      fc.property(anyCoveredLayout, anyAdvance, fc.double({ min: -7, max: 7, noNaN: true }), (layout, advance, by) => {
        const straight = engage(traceEdges(layout, { cells }), advance).volume;
        const round = engage(traceEdges(turned(layout, by), { cells }), advance).volume;
        const whole = total(straight);
        straight.forEach((volume, i) => {
          expect(Math.abs(volume - round[i])).toBeLessThan(1e-9 * whole);
        });
      }),
      { seed: 2, numRuns: 60 },
    );
  });

  it("gives nothing to a cutter that stands two advances behind another on the same track", () => {
    fc.assert(
      fc.property(
        anyCoveredLayout,
        anyAdvance,
        fc.double({ min: 0, max: 6, noNaN: true }),
        (layout, advance, azimuth) => {
          const [first] = layout.cutters;
          const shadowed = { ...first, azimuth, height: first.height - 2 * advance };
          const all = { ...layout, cutters: [...layout.cutters, shadowed] };
          expect(engage(traceEdges(all, { cells }), advance).volume.at(-1)).toBe(0);
        },
      ),
      { seed: 3, numRuns: 60 },
    );
  });

  it("shares equally among equal cutters evenly spaced, raked or not", () => {
    fc.assert(
      fc.property(anyCutter(0.07), fc.integer({ min: 2, max: 9 }), anyAdvance, (cutter, count, advance) => {
        const cutters = Array.from({ length: count }, (_, i) => ({
          ...cutter,
          azimuth: cutter.azimuth + (2 * Math.PI * i) / count,
        }));
        const { volume } = engage(traceEdges({ holeDiameter: 0.14, cutters }, { cells }), advance);
        for (const share of volume) expectClose(share, total(volume) / count, 1e-9);
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  it("gives each of two equal cutters the share of the turn that lies ahead of it", () => {
    const [base] = coveringCutters(0.06);
    const ahead = 70 * degree;
    const cutters = [base, { ...base, azimuth: base.azimuth + ahead }].map((c) => ({ ...c, radius: 0.04 }));
    const { volume } = engage(traceEdges({ holeDiameter: 0.12, cutters }), 1 * mm);
    expectClose(volume[0] / total(volume), 70 / 360, 1e-9);
  });

  it("lets the deeper of two cutters at one place take all", () => {
    const cutters = coveringCutters(0.06);
    const twin = { ...cutters[3], height: cutters[3].height - 0.1 * mm };
    const { volume } = engage(traceEdges({ holeDiameter: 0.12, cutters: [...cutters, twin] }), 0.05 * mm);
    expect(volume.at(-1)).toBe(0);
    expect(volume[3]).toBeGreaterThan(0);
  });

  it("uses the room it is given and refuses a backward advance", () => {
    const trace = traceEdges({ holeDiameter: 0.12, cutters: coveringCutters(0.06) });
    const room = emptyEngagement(trace);
    expect(engage(trace, 1 * mm, room)).toBe(room);
    expect(room.advance).toBe(1 * mm);
    expect(() => engage(trace, -1e-6)).toThrow("advance must not be negative, got -0.000001");
  });
});
