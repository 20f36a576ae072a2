import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { degree, mm } from "../../../../tests/support/field-units.ts";
import { coveringCutters } from "../../../../tests/support/random-layout.ts";
import { edgeReach } from "./edge-reach.ts";
import { traceEdges } from "./trace-edges.ts";

const [, , cutter] = coveringCutters(0.06);
const gauge = { ...cutter, radius: 0.052, profileAngle: 90 * degree, backRake: 0, sideRake: 0 };

/** The edge worn level to a chord, point by point. */
const levelWear = (height: number) =>
  Float64Array.from({ length: 361 }, (_, j) =>
    Math.max(0, (gauge.faceDiameter / 2) * (Math.sin((Math.PI * j) / 360) - 1) + height),
  );

describe("edgeReach", () => {
  it("is how far the trace sees a disc pass the hole radius", () => {
    const proud = { ...cutter, radius: 0.058 };
    const { overreach } = traceEdges({ holeDiameter: 0.12, cutters: [proud] });
    expectClose(edgeReach(proud) - 0.06, overreach[0], 1e-3);
  });

  it("stands back to the flat of a worn cutter, whether it is told the worn height or the points of the edge", () => {
    const height = 0.3 * mm;
    const worn = { ...gauge, wornHeight: height };
    expectClose(edgeReach(worn), gauge.radius + gauge.faceDiameter / 2 - height, 1e-4);
    expectClose(edgeReach(worn), edgeReach(gauge, levelWear(height)), 1e-12);
    expect(edgeReach(gauge)).toBeGreaterThan(edgeReach(worn) + 0.29 * mm);
  });

  it("falls by what is worn off a face that looks at the wall", () => {
    const whole = edgeReach(gauge, levelWear(0));
    expectClose(whole, gauge.radius + gauge.faceDiameter / 2, 1e-6);
    expect((whole - edgeReach(gauge, levelWear(0.3 * mm))) / mm).toBeCloseTo(0.3, 3);
  });
});
