import { expect, it } from "vitest";
import { editDistance, nearestWords } from "./edit-distance.ts";

it("counts letters put in, left out, changed, swapped", () => {
  expect(editDistance("shale", "shale")).toBe(0);
  expect(editDistance("bassalt", "basalt")).toBe(1);
  expect(editDistance("silstone", "siltstone")).toBe(1);
  expect(editDistance("porphery", "porphyry")).toBe(1);
  expect(editDistance("sitlstone", "siltstone")).toBe(1);
  expect(editDistance("clay", "shale")).toBe(4);
  expect(editDistance("", "clay")).toBe(4);
});

it("puts entries that hold the word first, then those of like spelling", () => {
  expect(nearestWords("sandstone", ["clay", "sandstones", "hard-sandstone"], 2).sort()).toEqual([
    "hard-sandstone",
    "sandstones",
  ]);
  expect(nearestWords("granit", ["gravel", "marble", "granite"], 1)).toEqual(["granite"]);
});
