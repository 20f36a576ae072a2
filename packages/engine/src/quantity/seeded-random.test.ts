import { describe, expect, it } from "vitest";
import { randomShares } from "./random-shares.ts";
import { nextRandom, type RandomState, randomShare, seededRandom } from "./seeded-random.ts";

function words(count: number, from: RandomState): number[] {
  const drawn: number[] = [];
  let state = from;
  for (let k = 0; k < count; k++) {
    const next = nextRandom(state);
    drawn.push(next.word);
    state = next.state;
  }
  return drawn;
}

const shares = (count: number, seed: number, row = 0) => words(count, seededRandom({ seed, row })).map(randomShare);
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe("nextRandom", () => {
  // Recalled: outputs that implementations of xoshiro128** are commonly held to, from the state 1, 2, 3, 4. The fifth was
  // not recalled for certain and is left to the twin below.
  it("gives the known outputs of xoshiro128**", () => {
    const [first, , ...rest] = words(10, [1, 2, 3, 4]);
    expect(first).toBe(11520);
    expect(rest.filter((_, k) => k !== 2)).toEqual([
      5927040, 70819200, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });

  it("agrees with the published recurrence worked in whole numbers of any length", () => {
    const keep = (n: bigint) => BigInt.asUintN(32, n);
    const turn = (n: bigint, by: bigint) => keep((n << by) | (n >> (32n - by)));
    const s = seededRandom({ seed: 99 }).map(BigInt);
    const expected = Array.from({ length: 2000 }, () => {
      const word = keep(turn(keep(s[1] * 5n), 7n) * 9n);
      const t = keep(s[1] << 9n);
      s[2] ^= s[0];
      s[3] ^= s[1];
      s[1] ^= s[2];
      s[0] ^= s[3];
      s[2] ^= t;
      s[3] = turn(s[3], 11n);
      return Number(word);
    });
    expect(words(2000, seededRandom({ seed: 99 }))).toEqual(expected);
  });

  it("leaves the state it was given alone", () => {
    const state: RandomState = [1, 2, 3, 4];
    nextRandom(state);
    expect(state).toEqual([1, 2, 3, 4]);
  });
});

describe("seededRandom", () => {
  // Recalled: outputs of SplitMix64, 0 from its first step on a state of 0; 1234567 as widely printed.
  it("spreads a seed by the known outputs of SplitMix64", () => {
    expect(seededRandom({ seed: 0 }).slice(0, 2)).toEqual([0x7b1dcdaf, 0xe220a839]);
    const [a, b, c, d] = seededRandom({ seed: 1234567 }).map(BigInt);
    expect((b << 32n) | a).toBe(6457827717110365317n);
    expect((d << 32n) | c).toBe(3203168211198807973n);
    const [e, f] = seededRandom({ seed: 1234567, row: 1 }).map(BigInt);
    expect((f << 32n) | e).toBe(9817491932198370423n);
  });

  it("gives one row for one seed, and unlike rows for unlike seeds and numbers", () => {
    expect(shares(50, 7)).toEqual(shares(50, 7));
    expect(shares(5, 7)).not.toEqual(shares(5, 8));
    expect(shares(5, 7)).not.toEqual(shares(5, 7, 1));
  });

  it("refuses what is no seed", () => {
    for (const seed of [-1, 0.5, Number.NaN, 2 ** 60]) expect(() => seededRandom({ seed })).toThrow(/seed must be/);
    expect(() => seededRandom({ seed: 1, row: -2 })).toThrow(/row must be/);
  });
});

describe("the shares of a seed", () => {
  const count = 100_000;
  const drawn = shares(count, 20261125);

  it("stay inside 0 to 1", () => {
    const ends = [...drawn, randomShare(0), randomShare(2 ** 32 - 1)];
    expect(ends.every((share) => share > 0 && share < 1)).toBe(true);
  });

  it("have the mean and the variance of even chances, within four standard errors", () => {
    const sigma = Math.sqrt(1 / 12 / count);
    expect(Math.abs(mean(drawn) - 0.5)).toBeLessThan(4 * sigma);
    const variance = mean(drawn.map((share) => (share - 0.5) ** 2));
    // Variance of (u - 1/2)² is 1/180.
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / count));
  });

  it("fill a hundred boxes evenly, by chi square", () => {
    const boxes = new Array<number>(100).fill(0);
    for (const share of drawn) boxes[Math.floor(share * 100)]++;
    const chiSquare = boxes.reduce((sum, seen) => sum + (seen - count / 100) ** 2 / (count / 100), 0);
    // 99 degrees of freedom: mean 99, standard deviation √198; four of them either way.
    expect(Math.abs(chiSquare - 99)).toBeLessThan(4 * Math.sqrt(198));
  });

  it("follow each other, and go with the next row, without correlation", () => {
    const other = shares(count, 20261125, 1);
    const together = (a: readonly number[], b: readonly number[]) =>
      12 * mean(a.slice(0, b.length).map((share, k) => (share - 0.5) * (b[k] - 0.5)));
    for (const lag of [1, 2, 7]) expect(Math.abs(together(drawn, drawn.slice(lag)))).toBeLessThan(4 / Math.sqrt(count));
    expect(Math.abs(together(drawn, other))).toBeLessThan(4 / Math.sqrt(count));
  });
});

describe("randomShares", () => {
  it("gives the shares of its row one by one", () => {
    const next = randomShares({ seed: 7, row: 2 });
    expect(Array.from({ length: 20 }, next)).toEqual(shares(20, 7, 2));
  });
});
