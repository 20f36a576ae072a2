import { expect, it } from "vitest";
import { runToEnd } from "./run-to-end.ts";

function* counting(to: number): Generator<number, string, void> {
  for (let k = 1; k <= to; k++) yield k;
  return "done";
}

it("runs steps to their end, tells each and gives what they come to", () => {
  const told: number[] = [];
  expect(runToEnd(counting(3), (step) => told.push(step))).toBe("done");
  expect(told).toEqual([1, 2, 3]);
  expect(runToEnd(counting(0))).toBe("done");
});
