import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { degree, mm } from "../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../tests/support/profiled-bit.ts";
import { coveringCutters } from "../../../../tests/support/random-layout.ts";
import { traceEdges } from "./trace-edges.ts";

const holeDiameter = 0.12;
const [, , cutter] = coveringCutters(0.06);

describe("traceEdges", () => {
  it("lays cells of about 0.1 mm from the axis to the hole radius", () => {
    const { cellRadius, cellWidth, firstPass } = traceEdges({ holeDiameter, cutters: [cutter] });
    expect(cellRadius.length).toBe(600);
    expectClose(cellWidth, 0.1 * mm, 1e-12);
    expectClose(cellRadius[599] + cellWidth / 2, 0.06, 1e-12);
    expect(firstPass.length).toBe(601);
  });

  it("reads an upright face as the circle it is", () => {
    const upright = { ...cutter, radius: 0.03, backRake: 0, sideRake: 0 };
    const trace = traceEdges({ holeDiameter, cutters: [upright] });
    const faceRadius = upright.faceDiameter / 2;
    trace.firstPass.slice(0, -1).forEach((k, cell) => {
      if (trace.firstPass[cell + 1] === k) return;
      const across = trace.cellRadius[cell] - 0.03;
      // Chords between samples at the cell width stand off the circle by less than a micrometre but for the steep ends.
      if (Math.abs(across) > 0.8 * faceRadius) return;
      expect(Math.abs(trace.height[k] - Math.sqrt(faceRadius ** 2 - across ** 2))).toBeLessThan(1e-6);
      expect(Math.abs(trace.slope[k] + across / Math.sqrt(faceRadius ** 2 - across ** 2))).toBeLessThan(0.01);
      expectClose(trace.azimuth[k], upright.azimuth, 1e-9);
    });
  });

  it("lets the edge trail behind a face that leans back", () => {
    const leaning = { ...cutter, radius: 0.03, azimuth: 1, backRake: 20 * degree, sideRake: 0 };
    const trace = traceEdges({ holeDiameter, cutters: [leaning] });
    const lowest = trace.height.indexOf(Math.max(...trace.height));
    const behind = (leaning.faceDiameter / 2) * Math.sin(20 * degree);
    expectClose(trace.azimuth[lowest] - 1, -Math.atan(behind / 0.03), 2e-3);
  });

  it("puts the passes of each cell in the order in which they go by", () => {
    const { firstPass, azimuth } = traceEdges(profiledBit());
    for (let cell = 0; cell + 1 < firstPass.length; cell++) {
      for (let k = firstPass[cell] + 1; k < firstPass[cell + 1]; k++)
        expect(azimuth[k]).toBeLessThanOrEqual(azimuth[k - 1]);
    }
    for (const angle of azimuth) {
      expect(angle).toBeGreaterThanOrEqual(0);
      expect(angle).toBeLessThan(2 * Math.PI);
    }
  });

  it("counts a cutter that reaches across the axis on both sides of it", () => {
    const central = { ...cutter, radius: 1 * mm, azimuth: 2, backRake: 0, sideRake: 0 };
    const { firstPass, azimuth } = traceEdges({ holeDiameter, cutters: [central] });
    expect(firstPass[31] - firstPass[30]).toBe(2);
    expectClose(azimuth[firstPass[30]], 2 + Math.PI, 1e-9);
    expectClose(azimuth[firstPass[30] + 1], 2, 1e-9);
  });

  it("cuts off at the hole radius what reaches past it, and says how far it reached", () => {
    const proud = { ...cutter, radius: 0.058, backRake: 0, sideRake: 0 };
    const trace = traceEdges({ holeDiameter, cutters: [proud, { ...proud, radius: 0.03 }] });
    expectClose(trace.overreach[0], 0.058 + proud.faceDiameter / 2 - 0.06, 1e-3);
    expect(trace.overreach[1]).toBe(0);
  });

  it("brings a worn edge back to its chord", () => {
    const worn = { ...cutter, radius: 0.03, wornHeight: 1 * mm };
    const { height } = traceEdges({ holeDiameter, cutters: [worn] });
    expectClose(Math.max(...height), (worn.faceDiameter / 2 - 1 * mm) * Math.cos(worn.backRake), 1e-9);
  });

  it("takes wear point by point, and a level chord written so as the worn height itself", () => {
    const worn = { ...cutter, radius: 0.03, wornHeight: 1 * mm };
    const faceRadius = worn.faceDiameter / 2;
    const chord = Float64Array.from({ length: 2001 }, (_, j) =>
      Math.max(0, faceRadius * Math.sin((Math.PI * j) / 2000) - (faceRadius - worn.wornHeight)),
    );
    const byHeight = traceEdges({ holeDiameter, cutters: [worn] });
    const byPoint = traceEdges({ holeDiameter, cutters: [{ ...worn, wornHeight: 0 }] }, { wear: [chord] });
    byHeight.height.forEach((height, k) => {
      expect(Math.abs(byPoint.height[k] - height)).toBeLessThan(1e-7);
    });
    expect([...byPoint.cutter]).toEqual([...byHeight.cutter]);
    expect(() => traceEdges({ holeDiameter, cutters: [worn] }, { wear: [] })).toThrow("each of 1 cutters, got 0");
    expect(() => traceEdges({ holeDiameter, cutters: [worn] }, { wear: [new Float64Array(1)] })).toThrow("got 1");
  });

  it("lowers only the points that wear has reached, and says where on the face each pass lies", () => {
    const fresh = { ...cutter, radius: 0.03, backRake: 0, sideRake: 0, wornHeight: 0 };
    // Only the outer half is worn: angles under π/2 are on the side that the face turns outward.
    const outer = Float64Array.from({ length: 181 }, (_, j) => (j < 90 ? 0.5 * mm : 0));
    const before = traceEdges({ holeDiameter, cutters: [fresh] });
    const after = traceEdges({ holeDiameter, cutters: [fresh] }, { wear: [outer] });
    after.edgeAngle.forEach((angle, k) => {
      const across = (fresh.faceDiameter / 2) * Math.cos(angle);
      const cell = Math.round((0.03 + across) / after.cellWidth - 0.5);
      if (Math.abs(Math.sin(angle)) < 0.3 || Math.abs(across) < 0.3 * mm) return;
      expect(after.cellRadius[cell] - 0.03).toBeCloseTo(across, 4);
      expectClose(before.height[k] - after.height[k], across > 0 ? 0.5 * mm : 0, 1e-6);
    });
  });

  it("refuses what cannot be a bit", () => {
    expect(() => traceEdges({ holeDiameter: 0, cutters: [] })).toThrow("holeDiameter must be positive, got 0");
    expect(() => traceEdges({ holeDiameter, cutters: [{ ...cutter, faceDiameter: -1 }] })).toThrow(/faceDiameter/);
    expect(() => traceEdges({ holeDiameter, cutters: [{ ...cutter, wornHeight: 0.02 }] })).toThrow(/wornHeight/);
    expect(() => traceEdges({ holeDiameter, cutters: [] }, { cells: 2.5 })).toThrow(
      "cells must be a whole number, got 2.5",
    );
  });
});
