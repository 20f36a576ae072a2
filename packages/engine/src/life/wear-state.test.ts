import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { inch, mm } from "../../../../tests/support/field-units.ts";
import { usualBit } from "../../../../tests/support/usual-bit.ts";
import { levelEdgeWear } from "./edge-wear.ts";
import { wearStateOf } from "./wear-state.ts";

const evenly = (height: number) =>
  usualBit.cutters.map(({ faceDiameter }) => levelEdgeWear({ faceDiameter, wornHeight: height }));

describe("wearStateOf", () => {
  it("gives a new bit no grade and its full gauge", () => {
    const { innerGrade, outerGrade, undergauge, wornHeights } = wearStateOf(usualBit)(evenly(0));
    expect([innerGrade, outerGrade, undergauge, Math.max(...wornHeights)]).toEqual([0, 0, 0, 0]);
  });

  it("reads the zones apart, the border at two thirds of the radius", () => {
    const border = (2 / 3) * (usualBit.holeDiameter / 2);
    const wear = evenly(0);
    usualBit.cutters.forEach(({ radius, faceDiameter }, i) => {
      if (radius > border) wear[i] = levelEdgeWear({ faceDiameter, wornHeight: faceDiameter / 4 });
    });
    const { innerGrade, outerGrade } = wearStateOf(usualBit)(wear);
    expect(innerGrade).toBe(0);
    expectClose(outerGrade, 2, 1e-9);
  });

  it("loses twice on the diameter what the edges lose at the wall", () => {
    const wear = usualBit.cutters.map(({ faceDiameter }) =>
      new Float64Array(levelEdgeWear({ faceDiameter, wornHeight: 0 }).length).fill(1 * mm),
    );
    const { undergauge } = wearStateOf(usualBit)(wear);
    // The gauge cutters look outward at 60°: of a millimetre along the face that much is toward the wall.
    expect(undergauge).toBeGreaterThan(1 * mm);
    expect(undergauge).toBeLessThan(2 * mm);
    expect(undergauge / inch).toBeLessThan(0.08);
  });
});
