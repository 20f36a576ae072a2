import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { mm, rpm } from "../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../tests/support/profiled-bit.ts";
import { sandstoneLike } from "../../../../tests/support/rock-responses.ts";
import { band, exactBand } from "../quantity/index.ts";
import { type BandsInput, bandsInSteps, bandsOf } from "./bands.ts";
import { bandsDraws } from "./bands-draws.ts";
import { bandDrivers, rankCorrelation } from "./bands-drivers.ts";
import { heldRate } from "./bands-held-rate.ts";
import type { HeatConditions } from "./cutter-heat.ts";
import { drillAtWeight } from "./drilled-state.ts";
import { largestRate, type RateLimits } from "./largest-rate.ts";
import { traceEdges } from "./trace-edges.ts";

describe("bandsDraws", () => {
  it("takes one draw from every step, in an order of the seed's own", () => {
    const draws = bandsDraws({ seed: 11, row: 2, samples: 250 });
    const steps = [...draws].map((share) => Math.floor(share * 250)).sort((a, b) => a - b);
    expect(steps).toEqual(Array.from({ length: 250 }, (_, k) => k));
    expect([...draws]).toEqual([...bandsDraws({ seed: 11, row: 2, samples: 250 })]);
    expect([...draws]).not.toEqual([...bandsDraws({ seed: 12, row: 2, samples: 250 })]);
    const ascending = [...draws].sort((a, b) => a - b);
    expect([...draws]).not.toEqual(ascending);
  });

  it("mixes so that the first half is no other than the second", () => {
    const draws = [...bandsDraws({ seed: 3, row: 0, samples: 1000 })];
    const half = draws.slice(0, 500).reduce((sum, share) => sum + share, 0) / 500;
    // 500 of 1000 without putting back: variance of the mean is half that of 500 free draws.
    expect(Math.abs(half - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / 500 / 2));
    const along = rankCorrelation(
      draws,
      draws.map((_, k) => k),
    );
    expect(Math.abs(along)).toBeLessThan(4 / Math.sqrt(1000));
  });

  it("refuses half a sample", () => {
    expect(() => bandsDraws({ seed: 1, row: 0, samples: 0 })).toThrow(/samples/);
    expect(() => bandsDraws({ seed: 1, row: 0, samples: 2.5 })).toThrow(/samples/);
  });
});

describe("rankCorrelation", () => {
  // Worked by hand: ranks 1 2 3 4 5 against 2 1 4 3 5, ρ = 1 - 6 Σd²/(n(n² - 1)) = 1 - 24/120.
  it("gives the hand-worked figure, and shares ties", () => {
    expectClose(rankCorrelation([1, 2, 3, 4, 5], [20, 10, 40, 30, 500]), 0.8, 1e-12);
    // Ranks 1, 2.5, 2.5, 4 against 1, 2, 3, 4: Pearson of the ranks is 4.5/√(4.5 · 5).
    expectClose(rankCorrelation([1, 7, 7, 9], [1, 2, 3, 4]), 4.5 / Math.sqrt(22.5), 1e-12);
    expect(rankCorrelation([5, 5, 5], [1, 2, 3])).toBe(0);
  });

  it("does not change under rising maps, and turns its sign under falling ones", () => {
    const row = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 3, maxLength: 30 });
    fc.assert(
      fc.property(row, (values) => {
        const other = values.map((_, k) => (k * 7919) % 31);
        const rho = rankCorrelation(values, other);
        expectClose(
          rankCorrelation(
            values.map((v) => v ** 3 + v),
            other,
          ),
          rho,
          1e-12,
        );
        expectClose(
          rankCorrelation(
            values.map((v) => -2 * v),
            other,
          ),
          -rho,
          1e-12,
        );
        expect(Math.abs(rho)).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });
});

describe("bandsOf", () => {
  // A model whose answer is known on paper: a sum of independent normal inputs, of spreads 3, 2, 1 and none.
  const tenth = 1.2815515655446004;
  const normal = (mean: number, sigma: number) => band(mean - tenth * sigma, mean, mean + tenth * sigma);
  const linear: BandsInput<"one" | "two" | "three" | "level", "sum" | "two"> = {
    inputs: {
      one: { band: normal(10, 1), law: "normal" },
      two: { band: normal(-4, 1), law: "normal" },
      three: { band: normal(0, 1), law: "normal" },
      level: { band: exactBand(7), law: "normal" },
    },
    seed: 2026,
    samples: 4000,
    evaluate: ({ one, two, three, level }) => ({
      figures: { sum: 3 * one - 2 * two + three + level, two: two },
      outcome: one > 10 ? "above" : "below",
    }),
  };

  it("gives the percentiles of a known linear model", () => {
    const { figures } = bandsOf(linear);
    const sigma = Math.sqrt(9 + 4 + 1);
    const middle = 30 + 8 + 7;
    // Held at P1 and P99, the tails give up a few thousandths of the spread.
    const off = (share: "low" | "mid" | "high") => (figures.sum.band?.[share] ?? Number.NaN) - middle;
    expect(Math.abs(off("mid"))).toBeLessThan(0.06 * sigma);
    expectClose(off("low"), -tenth * sigma, 0.03);
    expectClose(off("high"), tenth * sigma, 0.03);
  });

  it("ranks the inputs of the linear model by their parts of its variance", () => {
    const { figures } = bandsOf(linear);
    const { drivers } = figures.sum;
    expect(drivers.map(({ input }) => input)).toEqual(["one", "two", "three", "level"]);
    const variance = { one: 9 / 14, two: 4 / 14, three: 1 / 14, level: 0 };
    for (const { input, share, effect } of drivers) {
      expect(Math.abs(share - variance[input])).toBeLessThan(0.03);
      // For inputs drawn apart the effect is the rank correlation; of normal inputs that is (6/π) asin(r/2), r Pearson's.
      const r = (input === "two" ? -1 : 1) * Math.sqrt(variance[input]);
      expect(Math.abs(effect - (6 / Math.PI) * Math.asin(r / 2))).toBeLessThan(0.02);
    }
    expect(figures.two.drivers[0].input).toBe("two");
    expectClose(figures.two.drivers[0].effect, 1, 1e-12);
  });

  it("gives the same bands for a seed and hardly others for another", () => {
    expect(bandsOf(linear)).toEqual(bandsOf(linear));
    const other = bandsOf({ ...linear, seed: 1 });
    expect(other).not.toEqual(bandsOf(linear));
    expectClose(other.figures.sum.band?.high ?? 0, bandsOf(linear).figures.sum.band?.high ?? 1, 0.01);
  });

  it("leaves the draws of the inputs alone when one more is added after them", () => {
    const seen = (inputs: BandsInput<string, "x">["inputs"]) => {
      const drawn: number[] = [];
      const evaluate = (values: Readonly<Record<string, number>>) => {
        drawn.push(values.one);
        return { figures: { x: 0 } };
      };
      bandsOf({ inputs, seed: 5, samples: 20, evaluate });
      return drawn;
    };
    const { one, two, three } = linear.inputs;
    expect(seen({ one, two })).toEqual(seen({ one, two, three }));
  });

  it("tells its progress, stops with what it has, and says how much that is", () => {
    const told: number[] = [];
    let asked = 0;
    const stopped = bandsOf({
      ...linear,
      samples: 300,
      progress: (done, of) => {
        expect(of).toBe(300);
        told.push(done);
      },
      shouldStop: () => ++asked === 40,
    });
    expect(stopped.samples).toBe(40);
    expect(stopped.asked).toBe(300);
    expect(told).toEqual(Array.from({ length: 40 }, (_, k) => k + 1));
    const { band: part } = stopped.figures.sum;
    const whole = bandsOf({ ...linear, samples: 300 }).figures.sum.band;
    if (!part || !whole) throw new Error("no band");
    expect(Math.abs(part.mid - whole.mid)).toBeLessThan(whole.high - whole.low);
  });

  it("runs a sample at a time to the same result", () => {
    const steps = bandsInSteps({ ...linear, samples: 25 });
    let step = steps.next();
    let count = 0;
    while (!step.done) {
      count++;
      expect(step.value).toEqual({ done: count, of: 25 });
      step = steps.next();
    }
    expect(count).toBe(25);
    expect(step.value).toEqual(bandsOf({ ...linear, samples: 25 }));
  });

  it("counts outcomes, and samples without a figure", () => {
    const found = bandsOf({
      ...linear,
      samples: 200,
      evaluate: (values) => ({
        figures: { sum: values.one > 10 ? values.one : Number.NaN, two: Number.NaN },
        outcome: linear.evaluate(values).outcome ?? "",
      }),
    });
    expect(found.outcomes).toEqual([
      { outcome: "above", share: 0.5 },
      { outcome: "below", share: 0.5 },
    ]);
    expect(found.figures.sum.missing).toBe(100);
    expect(found.figures.sum.band?.low).toBeGreaterThan(10);
    expect(found.figures.two).toEqual({ missing: 200, drivers: [] });
  });

  it("widens with its inputs", () => {
    const widthOf = (factor: number) => {
      const { figures } = bandsOf({
        ...linear,
        samples: 200,
        inputs: { ...linear.inputs, one: { band: normal(10, factor), law: "normal" } },
      });
      return (figures.sum.band?.high ?? 0) - (figures.sum.band?.low ?? 0);
    };
    const widths = [0, 1, 2, 4].map(widthOf);
    for (let k = 1; k < widths.length; k++) expect(widths[k]).toBeGreaterThan(widths[k - 1]);
  });

  it("does not credit an input with its chance likeness to one that counts", () => {
    const first = bandsDraws({ seed: 1, row: 0, samples: 60 });
    // Half of the idle row is the first one itself: a rank correlation of about a half, and yet it does nothing.
    const other = bandsDraws({ seed: 1, row: 1, samples: 60 });
    const idle = first.map((share, k) => share + other[k]);
    expect(rankCorrelation(idle, first)).toBeGreaterThan(0.5);
    const [most, least] = bandDrivers({ idle, first }, first);
    expect(most.input).toBe("first");
    expectClose(most.effect, 1, 1e-9);
    expect(least.share).toBeLessThan(1e-12);
  });

  it("takes each input by itself where there are too few samples to tell them apart", () => {
    const drivers = bandDrivers({ a: [1, 2, 3], b: [2, 4, 6], c: [3, 1, 2] }, [1, 2, 3]);
    expect(drivers.map(({ input }) => input)).toEqual(["a", "b", "c"]);
    expectClose(drivers[0].share, drivers[1].share, 1e-12);
  });

  it("leaves every share at nothing for a figure that does not spread", () => {
    expect(bandDrivers({ a: [1, 2, 3], b: [3, 1, 2] }, [5, 5, 5])).toEqual([
      { input: "a", effect: 0, share: 0 },
      { input: "b", effect: 0, share: 0 },
    ]);
  });
});

describe("heldRate", () => {
  const bit = { trace: traceEdges(profiledBit()), response: sandstoneLike };
  const heat: HeatConditions = {
    rock: { conductivity: 3, diffusivity: 1.3e-6 },
    fluidTemperature: 293.15,
    film: { coefficient: 5000, area: 2e-4 },
  };

  it("is the largest rate inside the weight and all limits", () => {
    const between = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    const limits = fc.record(
      {
        weight: between(5e3, 60e3),
        torque: between(100, 4e3),
        power: between(1e3, 4e4),
        advance: between(0.1 * mm, 8 * mm),
        exposure: between(0.3 * mm, 8 * mm),
        rate: between(1e-3, 0.05),
        contactTemperature: between(310, 700),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(limits, between(4e3, 50e3), between(30, 160), (given, weight, turns) => {
        const rotarySpeed = turns * rpm;
        const held = heldRate({ ...bit, rotarySpeed, weight, limits: given, heat });
        const all: RateLimits = { ...given, weight: Math.min(weight, given.weight ?? weight) };
        const most = largestRate({ ...bit, rotarySpeed, limits: all, heat });
        expectClose(held.rate, most.rate, 1e-6);
        expectClose(held.held.bit.weight, most.state.bit.weight, 1e-6);
        expectClose(held.free.bit.weight, weight, 1e-6);
        expect([
          most.binds,
          ...most.bounds.filter((one) => one.rate < most.rate * (1 + 1e-6)).map((b) => b.limit),
        ]).toContain(held.heldBy);
      }),
      { seed: 12, numRuns: 40 },
    );
  });

  it("runs free where no limit is near, and wants heat where heat is limited", () => {
    const loose = heldRate({ ...bit, rotarySpeed: 90 * rpm, weight: 15e3, limits: { torque: 1e5 } });
    expect(loose.heldBy).toBe("weight");
    expect(loose.held).toBe(loose.free);
    expectClose(loose.free.advance, drillAtWeight(bit, 15e3).advance, 1e-12);
    expect(() => heldRate({ ...bit, rotarySpeed: 9, weight: 15e3, limits: { contactTemperature: 400 } })).toThrow(
      /heat conditions/,
    );
  });
});
