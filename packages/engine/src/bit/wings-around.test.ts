import { describe, expect, it } from "vitest";
import { gapsBetweenWings, wingsAround } from "./wings-around.ts";

// The same three wings at 0.5, 2.5 and 2π - 1, whatever turn their azimuths are counted in.
const countedAnyhow = [
  [0.5, 2.5 + 2 * Math.PI, -1],
  [0.5 - 4 * Math.PI, 2.5, 2 * Math.PI - 1],
];

describe("wings around the bit", () => {
  it("stand in the sense of rotation", () => {
    for (const angles of countedAnyhow) expect(wingsAround(angles)).toEqual([0, 1, 2]);
    expect(wingsAround([2.5 + 2 * Math.PI, -1, 0.5])).toEqual([2, 0, 1]);
  });

  it("leave gaps that add up to a turn", () => {
    for (const angles of countedAnyhow) {
      const [first, second, third] = gapsBetweenWings(angles);
      expect(first).toBeCloseTo(2, 12);
      expect(second).toBeCloseTo(2 * Math.PI - 3.5, 12);
      expect(third).toBeCloseTo(1.5, 12);
    }
    expect(gapsBetweenWings([1])).toEqual([2 * Math.PI]);
  });
});
