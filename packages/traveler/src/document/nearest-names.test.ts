import { describe, expect, it } from "vitest";
import { nearestNames, oneOf } from "./nearest-names.ts";

const rocks = ["sand", "sandstone", "hard-sandstone", "limestone", "shale", "clay", "claystone"];

describe("nearestNames", () => {
  it.each([
    ["limstone", "limestone"],
    ["Lime Stone", "limestone"],
    ["sandston", "sandstone"],
    ["shael", "shale"],
    ["hard sandstone", "hard-sandstone"],
  ])("finds what %s was meant to be", (typed, meant) => {
    expect(nearestNames(typed, rocks)[0]).toBe(meant);
  });

  it("finds a code with two figures swapped", () => {
    expect(nearestNames("1380", ["0808", "1308", "1608"])).toEqual(["1308"]);
  });

  it("finds nothing where nothing is near", () => {
    expect(nearestNames("granite", rocks)).toEqual([]);
    expect(nearestNames("", rocks)).toEqual([]);
  });
});

describe("oneOf", () => {
  it("lists what there is, cut short where it is long", () => {
    expect(oneOf("steal", ["matrix", "steel"])).toBe("give one of matrix, steel (did you mean steel?)");
    const many = Array.from({ length: 15 }, (_, at) => `item-${at}`);
    expect(oneOf("zzz", many)).toMatch(/item-11 and 3 more$/);
  });
});
