import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { GAIN_ALLOWANCE, LEAST_GAIN, type StagedChoice, stagedChoice } from "./staged-choice.ts";

type Cost = (point: readonly number[]) => number | undefined;

function searched(counts: readonly number[], start: readonly number[], cost: Cost) {
  const looked: string[] = [];
  const search = stagedChoice({ counts, start });
  let step = search.next();
  while (!step.done) {
    looked.push(String(step.value));
    step = search.next(cost(step.value));
  }
  const costs = looked.map((point) => cost(point.split(",").map(Number)) ?? Number.POSITIVE_INFINITY);
  return { looked, best: Math.min(...costs), result: step.value as StagedChoice };
}

/** The least cost of all combinations. */
function leastOfAll(counts: readonly number[], cost: Cost): number {
  const all = counts.reduce<number[][]>(
    (points, count) => points.flatMap((point) => Array.from({ length: count }, (_, k) => [...point, k])),
    [[]],
  );
  return Math.min(...all.map((point) => cost(point) ?? Number.POSITIVE_INFINITY));
}

const COUNTS = [6, 3, 4, 2];
const START = [2, 1, 2, 0];

describe("stagedChoice", () => {
  it("finds the cheapest of all where each option changes the cost by its own share, whatever the rest", () => {
    const share = fc.double({ min: 0.85, max: 1.2, noNaN: true });
    const shares = fc.tuple(...COUNTS.map((count) => fc.array(share, { minLength: count, maxLength: count })));
    fc.assert(
      fc.property(shares, (factors) => {
        const cost: Cost = (point) => point.reduce((product, option, at) => product * factors[at][option], 10);
        const { best, result } = searched(COUNTS, START, cost);
        expect(best).toBeCloseTo(leastOfAll(COUNTS, cost), 12);
        expect(result.of).toBe(6 * 3 * 4 * 2);
        expect(result.looked).toBeLessThanOrEqual(result.of);
      }),
      { numRuns: 200 },
    );
  });

  it("finds it too where a choice does up to the allowance more on one bit than on the one it was measured on", () => {
    // The bevel takes 10 % off the first bit and 14 % off the second, which stands 3 % behind: 1.03 x 0.86 < 0.9.
    const first = [1, 1.03];
    const taken = [0.1, 0.14];
    const cost: Cost = ([bit, bevel]) => first[bit] * (bevel === 1 ? 1 - taken[bit] : 1);
    expect(0.14).toBeLessThan(GAIN_ALLOWANCE * 0.1);
    expect(searched([2, 2], [0, 0], cost).best).toBeCloseTo(1.03 * 0.86, 12);
  });

  it("leaves out what the open choices cannot bring under the best, and says what it allowed them", () => {
    const cost: Cost = ([bit, bevel]) => (1 + bit) * (bevel === 1 ? 0.98 : 1);
    const { looked, result } = searched([3, 2], [0, 0], cost);
    // The second and third bit cost two and three times the first: their bevels are not looked at.
    expect(looked.sort()).toEqual(["0,0", "0,1", "1,0", "2,0"]);
    expect(result.gains[0]).toBeCloseTo(0.02, 12);
    expect(result.allowances[0]).toBeCloseTo(GAIN_ALLOWANCE * 0.02, 12);
  });

  it("goes on from the first that will do where the first stage alone gives none", () => {
    const cost: Cost = ([bit, rake, bevel]) => (rake === 1 ? (2 + bit) * (bevel === 1 ? 0.95 : 1) : undefined);
    expect(searched([3, 2, 2], [0, 0, 0], cost).best).toBeCloseTo(2 * 0.95, 12);
  });

  it("allows a choice something even where it took nothing off", () => {
    const { result } = searched([2, 2], [0, 0], ([bit]) => 1 + bit);
    expect(result.allowances[0]).toBeCloseTo(GAIN_ALLOWANCE * LEAST_GAIN, 12);
  });

  it("asks for each combination once and ends where none will do", () => {
    const { looked, result } = searched(COUNTS, START, () => undefined);
    expect(new Set(looked).size).toBe(looked.length);
    // Another rake or body of the same bit might do: all are looked at before none is said to.
    expect(result.looked).toBe(result.of);
    expect(searched([1, 1], [0, 0], () => 5).looked).toEqual(["0,0"]);
  });
});
