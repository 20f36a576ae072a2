import { expect, it } from "vitest";
import { textTable, wrapped } from "./text-table.ts";

it("cuts at spaces and keeps every word", () => {
  const text = "Slow the rotation as the bit goes in and comes out of it";
  const lines = wrapped(text, 20, 2);
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(20);
  expect(lines.map((line) => line.trim()).join(" ")).toBe(text);
  expect(lines[1].startsWith("  ")).toBe(true);
});

it("sets words to the left and figures to the right", () => {
  expect(textTable(["bed", "weight"], [["shale", "6,125 lbf"]])).toEqual([
    "bed       weight",
    "-----  ---------",
    "shale  6,125 lbf",
  ]);
});
