import { expect, it } from "vitest";
import { abrasivityClass, cercharClass, rockAbrasivityIndex } from "./rock-abrasivity.ts";

it("puts each class limit into the class above it", () => {
  expect([9.99, 10, 29.9, 30, 60, 119, 120].map(abrasivityClass)).toEqual([
    "not abrasive",
    "slightly abrasive",
    "slightly abrasive",
    "moderately abrasive",
    "very abrasive",
    "very abrasive",
    "extremely abrasive",
  ]);
  expect([0, 0.5, 1, 2, 3, 4, 5].map(cercharClass)).toEqual([
    "extremely low",
    "very low",
    "low",
    "medium",
    "high",
    "very high",
    "extreme",
  ]);
});

it("refuses a share past one and a negative index", () => {
  expect(() => rockAbrasivityIndex({ ucs: 1e8, equivalentQuartz: 1.2 })).toThrow("equivalentQuartz must lie in 0 to 1");
  expect(() => abrasivityClass(-1)).toThrow("index must not be negative");
});
