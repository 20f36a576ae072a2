import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { band } from "./band.ts";
import { percentile } from "./percentile.ts";
import { type BandLaw, bandPercentile, FARTHEST_SHARE } from "./percentile-of-band.ts";
import { normalPercentile } from "./percentile-of-normal.ts";
import { nextRandom, randomShare, seededRandom } from "./seeded-random.ts";

const sample = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 60 });

describe("percentile", () => {
  it("takes ends, middle and what lies between, without touching the sample", () => {
    const values = [40, 15, 50, 20, 35];
    expect([0, 0.4, 0.5, 0.75, 1].map((share) => percentile(values, share))).toEqual([15, 29, 35, 40, 50]);
    expect(values).toEqual([40, 15, 50, 20, 35]);
    expect(percentile([3], 0.9)).toBe(3);
  });

  it("rises with the share and keeps within the sample", () => {
    fc.assert(
      fc.property(sample, fc.double({ min: 0, max: 1, noNaN: true }), (values, share) => {
        const at = percentile(values, share);
        expect(at).toBeGreaterThanOrEqual(Math.min(...values));
        expect(at).toBeLessThanOrEqual(Math.max(...values));
        expect(percentile(values, Math.min(1, share + 0.1))).toBeGreaterThanOrEqual(at - 1e-9 * Math.abs(at));
      }),
    );
  });

  it("refuses an empty sample, gaps in it, and a share that is none", () => {
    expect(() => percentile([], 0.5)).toThrow(/number of values/);
    expect(() => percentile([1, Number.NaN, 2], 0.5)).toThrow(/finite/);
    expect(() => percentile([1], 1.1)).toThrow(/share/);
  });
});

describe("normalPercentile", () => {
  // Published tables of the normal law, to as many figures as are usually printed.
  it.each([
    [0.5, 0],
    [0.9, 1.2815515655],
    [0.975, 1.9599639845],
    [0.99, 2.3263478741],
    [0.001, -3.0902323062],
    [1e-6, -4.7534243088],
  ])("gives the tabled deviate of %f", (share, deviate) => {
    expect(Math.abs(normalPercentile(share) - deviate)).toBeLessThan(1e-10);
  });

  it("undoes the area under the bell, summed apart", () => {
    for (const z of [-2.5, -1.1, -0.3, 0.05, 0.8, 1.7, 3]) {
      const steps = 2000;
      const width = z / steps;
      let area = 0;
      for (let k = 0; k <= steps; k++) {
        const weight = k === 0 || k === steps ? 1 : k % 2 === 0 ? 2 : 4;
        area += (weight * Math.exp(-((k * width) ** 2) / 2) * width) / 3;
      }
      expect(Math.abs(normalPercentile(0.5 + area / Math.sqrt(2 * Math.PI)) - z)).toBeLessThan(1e-9);
    }
  });

  it("refuses what has no deviate", () => {
    for (const share of [0, 1, -0.1, Number.NaN]) expect(() => normalPercentile(share)).toThrow(/share/);
  });
});

const laws: readonly BandLaw[] = ["log-normal", "normal"];
const positiveBand = fc
  .tuple(
    fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
    fc.double({ min: 1.01, max: 20, noNaN: true }),
    fc.double({ min: 1.01, max: 20, noNaN: true }),
  )
  .map(([low, up, further]) => band(low, low * up, low * up * further));

describe("bandPercentile", () => {
  it("meets the three figures of the band", () => {
    fc.assert(
      fc.property(positiveBand, fc.constantFrom(...laws), (of, law) => {
        for (const [share, value] of [
          [0.1, of.low],
          [0.5, of.mid],
          [0.9, of.high],
        ]) {
          expectClose(bandPercentile({ band: of, law, share }), value, 1e-9);
        }
      }),
    );
  });

  it("rises with the share, and a log-normal one stays positive", () => {
    fc.assert(
      fc.property(positiveBand, fc.constantFrom(...laws), (of, law) => {
        const row = [0, 0.01, 0.05, 0.3, 0.5, 0.7, 0.95, 0.99, 1].map((share) =>
          bandPercentile({ band: of, law, share }),
        );
        for (let k = 1; k < row.length; k++) expect(row[k]).toBeGreaterThanOrEqual(row[k - 1]);
        if (law === "log-normal") expect(row[0]).toBeGreaterThan(0);
        expect(row[0]).toBe(row[1]);
        expect(row.at(-1)).toBe(row.at(-2));
      }),
    );
  });

  it("gives samples whose 10th, 50th and 90th percentile are those of the band", () => {
    const strength = band(5e6, 30e6, 100e6);
    const angle = band(13, 18, 23);
    let state = seededRandom({ seed: 4 });
    const shares = Array.from({ length: 40_000 }, () => {
      const next = nextRandom(state);
      state = next.state;
      return randomShare(next.word);
    });
    for (const [of, law] of [
      [strength, "log-normal"],
      [angle, "normal"],
    ] as const) {
      const values = shares.map((share) => bandPercentile({ band: of, law, share }));
      expectClose(percentile(values, 0.1), of.low, 0.04);
      expectClose(percentile(values, 0.5), of.mid, 0.04);
      expectClose(percentile(values, 0.9), of.high, 0.04);
    }
  });

  it("is the log-normal law itself where the band is even in logarithms", () => {
    const sigma = 0.4;
    const of = mapped(2, sigma);
    // P25 of a log-normal law of median 2: 2 exp(-0.6744897502 σ).
    expectClose(
      bandPercentile({ band: of, law: "log-normal", share: 0.25 }),
      2 * Math.exp(-0.6744897502 * sigma),
      1e-9,
    );
  });

  it("keeps a quantity taken as known, and refuses a log-normal band that reaches nothing", () => {
    expect(bandPercentile({ band: band(3, 3, 3), law: "log-normal", share: 0.97 })).toBe(3);
    expect(() => bandPercentile({ band: band(0, 1, 2), law: "log-normal", share: 0.5 })).toThrow(/positive/);
    expect(FARTHEST_SHARE).toBeLessThan(0.1);
  });
});

function mapped(median: number, sigma: number) {
  const off = Math.exp(1.2815515655446004 * sigma);
  return band(median / off, median, median * off);
}
