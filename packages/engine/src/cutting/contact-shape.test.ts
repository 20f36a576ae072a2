import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { degree, mm } from "../../../../tests/support/field-units.ts";
import { coveringCutters } from "../../../../tests/support/random-layout.ts";
import type { PlacedCutter } from "../bit/index.ts";
import { contactShapeOf } from "./contact-shape.ts";
import { traceEdges } from "./trace-edges.ts";

const base: PlacedCutter = { ...coveringCutters(0.06)[3], sideRake: 0, chamferWidth: 0, backRake: 20 * degree };

/** Flat area and width of one worn cutter, summed over its trace far from the axis. */
function flatOf(cutter: PlacedCutter) {
  const { flatLength, cosSlope, cellWidth } = traceEdges(
    { holeDiameter: 4.2, cutters: [{ ...cutter, radius: 2 }] },
    { cells: 42_000 },
  );
  let area = 0;
  flatLength.forEach((length, k) => {
    area += (length * cellWidth) / cosSlope[k];
  });
  return area;
}

describe("the flat", () => {
  // Exact geometry of a cylinder cut by a plane; closed form A_seg / sin β with A_seg = R² (φ - sin φ cos φ).
  it("has the area of the face's segment over the sine of the back rake", () => {
    expectClose(flatOf({ ...base, faceDiameter: 16 * mm, wornHeight: 1 * mm }), 15.2979e-6, 1e-3);
    expectClose(flatOf({ ...base, faceDiameter: 13.44 * mm, wornHeight: 1 * mm }), 13.96841e-6, 1e-3);
  });

  it("keeps that area under side rake, which shears it without changing it", () => {
    const straight = flatOf({ ...base, wornHeight: 1 * mm });
    expectClose(flatOf({ ...base, sideRake: 15 * degree, wornHeight: 1 * mm }), straight, 2e-3);
  });

  it("is none on a fresh cutter, and the whole cylinder on a worn one that does not lean back", () => {
    expect(contactShapeOf(base)(0)).toEqual({ flatLength: 0, chamferHeight: 0 });
    expect(contactShapeOf({ ...base, backRake: 0 })(0.1 * mm).flatLength).toBe(base.length);
  });
});

describe("the chamfer", () => {
  const chamfered: PlacedCutter = { ...base, chamferWidth: 0.4 * mm, chamferAngle: 45 * degree };

  it("stands over the hole bottom by c (cos β - sin β) at 45°, and is none without an angle", () => {
    expectClose(contactShapeOf(chamfered)(0).chamferHeight, 0.239069 * mm, 1e-5);
    expect(contactShapeOf({ ...chamfered, chamferAngle: 0 })(0).chamferHeight).toBe(0);
  });

  it("hands over to the flat without a jump, and is gone once its width is worn off", () => {
    const at = contactShapeOf(chamfered);
    let before = at(0);
    for (let removed = 0; removed <= 0.5 * mm; removed += 0.001 * mm) {
      const now = at(removed);
      expect(now.flatLength).toBeGreaterThanOrEqual(before.flatLength);
      expect(now.flatLength - before.flatLength).toBeLessThan(0.02 * mm);
      expect(now.chamferHeight).toBeLessThanOrEqual(before.chamferHeight);
      before = now;
    }
    expect(at(0.4 * mm).chamferHeight).toBe(0);
    expectClose(at(0.4 * mm).flatLength, (0.4 * mm) / Math.sin(20 * degree), 1e-12);
    // Until the wear reaches the foot of the chamfer, c tan χ tan β up the face, there is no flat.
    expectClose(at(0.4 * mm * Math.tan(20 * degree)).flatLength, 0, 1e-9);
  });
});
