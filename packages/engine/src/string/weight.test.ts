import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { balanceDepth } from "./balance-depth.ts";
import { buoyancyFactor } from "./buoyancy-factor.ts";
import { collarLengthNeeded } from "./collar-length.ts";
import { jointedPipeWeight, plainEndWeight, STEEL_DENSITY } from "./plain-end-weight.ts";
import { rotaryPower } from "./rotary-power.ts";
import { hangingWeight, lengthThatWeighs, type StringMakeUp } from "./string-make-up.ts";
import { feedForce, feedGaugeReading, weightOnBit } from "./weight-balance.ts";
import { type WeightByDepthInput, weightByDepth } from "./weight-by-depth.ts";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pipe = { jointLength: 6, linearWeight: 200 };
const collars = { length: 18, linearWeight: 700 };
const makeUps = fc.constantFrom<StringMakeUp>({ pipe }, { collars, pipe });
const density = 1030;

describe("weights", () => {
  it("of a metre of solid bar is its volume in steel", () => {
    expect(plainEndWeight({ outerDiameter: 0.1, bore: 0 })).toBeCloseTo(
      STEEL_DENSITY * 9.80665 * Math.PI * 0.05 ** 2,
      9,
    );
  });

  it("of drill pipe with joints lies 5 to 12 % above plain pipe", () => {
    const size = { outerDiameter: 0.0889, bore: 0.0702 };
    expect(jointedPipeWeight(size).low / plainEndWeight(size)).toBeCloseTo(1.05, 12);
    expect(jointedPipeWeight(size).high / plainEndWeight(size)).toBeCloseTo(1.12, 12);
  });

  it("vanish in a fluid as heavy as steel and stay whole in air", () => {
    expect(buoyancyFactor(0)).toBe(1);
    expect(buoyancyFactor(STEEL_DENSITY / 2)).toBeCloseTo(0.5, 12);
    expect(() => buoyancyFactor(-1)).toThrow(/fluidDensity must lie in/);
  });

  it("count collars before pipe", () => {
    const makeUp = { collars, pipe };
    expect(hangingWeight({ makeUp, fluidDensity: 0, length: 10 })).toBeCloseTo(7000, 9);
    expect(hangingWeight({ makeUp, fluidDensity: 0, length: 28 })).toBeCloseTo(18 * 700 + 10 * 200, 9);
  });

  it("and lengths are two readings of one thing", () => {
    fc.assert(
      fc.property(makeUps, positive(0, 2000), positive(0, 500), (makeUp, fluidDensity, length) => {
        const weight = hangingWeight({ makeUp, fluidDensity, length });
        expect(lengthThatWeighs({ makeUp, fluidDensity, weight })).toBeCloseTo(length, 6);
      }),
    );
  });

  it("refuse pipe or collars without weight", () => {
    const weightless = { pipe: { jointLength: 6, linearWeight: 0 } };
    expect(() => hangingWeight({ makeUp: weightless, fluidDensity: 0, length: 1 })).toThrow(/pipeLinearWeight/);
    expect(() => plainEndWeight({ outerDiameter: 0.1, bore: 0.1 })).toThrow(/wall must be positive/);
  });
});

describe("collars", () => {
  it("of the length needed carry the weight in their usable share", () => {
    const length = collarLengthNeeded({ weight: 20000, linearWeight: 700, fluidDensity: density, usableShare: 0.8 });
    const makeUp = { collars: { length, linearWeight: 700 }, pipe };
    expect(0.8 * hangingWeight({ makeUp, fluidDensity: density, length })).toBeCloseTo(20000, 6);
    expect(() => collarLengthNeeded({ weight: 1, linearWeight: 1, fluidDensity: density, usableShare: 1.2 })).toThrow(
      /usableShare must lie in/,
    );
  });
});

describe("the balance of weight", () => {
  it("closes: the feed force found gives the weight wanted", () => {
    const force = positive(0, 1e5);
    fc.assert(
      fc.property(force, force, force, force, (targetWeight, weight, topHeadWeight, drag) => {
        const resting = { hangingWeight: weight, topHeadWeight, drag };
        const feed = feedForce({ targetWeight, ...resting });
        const sides = { pullDown: Math.max(0, feed), holdBack: Math.max(0, -feed) };
        expect(weightOnBit({ ...sides, ...resting })).toBeCloseTo(targetWeight, 6);
      }),
    );
  });

  it("is even at the balance depth", () => {
    fc.assert(
      fc.property(makeUps, positive(5000, 60000), positive(0, 4000), (makeUp, targetWeight, drag) => {
        const loads = { topHeadWeight: 2000, drag };
        const length = balanceDepth({ makeUp, fluidDensity: density, targetWeight, ...loads });
        const weight = hangingWeight({ makeUp, fluidDensity: density, length });
        expect(feedForce({ targetWeight, hangingWeight: weight, ...loads })).toBeCloseTo(0, 5);
      }),
    );
  });

  it("needs no string at all under a heavy top head", () => {
    const input = { makeUp: { pipe }, fluidDensity: density, targetWeight: 1000, topHeadWeight: 2000 };
    expect(balanceDepth(input)).toBe(0);
  });

  it("shows on the gauge by the factor of the side in use", () => {
    const gauge = { gaugeForceFactor: 0.004, holdBackGaugeForceFactor: 0.002 };
    expect(feedGaugeReading({ feedForce: 4000, ...gauge })).toBeCloseTo(1e6, 6);
    expect(feedGaugeReading({ feedForce: -4000, ...gauge })).toBeCloseTo(2e6, 6);
    expect(feedGaugeReading({ feedForce: -4000, gaugeForceFactor: 0.004 })).toBeCloseTo(1e6, 6);
    expect(() => feedGaugeReading({ feedForce: 1, gaugeForceFactor: 0 })).toThrow(/gaugeForceFactor/);
  });

  it("takes torque times speed for power", () => {
    expect(rotaryPower({ torque: 1000, rotarySpeed: 10 })).toBe(10000);
  });
});

describe("weight by depth", () => {
  const base: WeightByDepthInput = {
    makeUp: { collars, pipe },
    fluidDensity: density,
    depth: 100,
    targetWeight: 20000,
  };

  it("steps by joints down to the depth, the last one cut short", () => {
    const rows = weightByDepth(base);
    expect(rows.length).toBe(17);
    expect(rows[0]).toMatchObject({ joint: 1, depth: 6 });
    expect(rows[16]).toMatchObject({ joint: 17, depth: 100 });
    expect(weightByDepth({ ...base, depth: 60 }).length).toBe(10);
  });

  it("goes from pushing to holding back across the balance depth", () => {
    const crossing = balanceDepth(base);
    for (const row of weightByDepth(base)) expect(row.feedForce > 0).toBe(row.depth < crossing);
  });

  it("names the rating that fails", () => {
    const weight = weightByDepth(base)[16].hangingWeight;
    const verdicts = (limits: WeightByDepthInput["limits"]) => weightByDepth({ ...base, limits }).map((r) => r.verdict);
    expect(new Set(verdicts({}))).toEqual(new Set(["within"]));
    const short = verdicts({ pullDownRating: 10000 });
    expect(short[0]).toBe("pull-down short");
    expect(short[16]).toBe("within");
    expect(verdicts({ hoistRating: weight - 1 })[16]).toBe("hoist short");
    expect(verdicts({ hoistRating: weight + 1 })[16]).toBe("within");
    expect(verdicts({ topJointRating: weight - 1 })[16]).toBe("top joint overloaded");
  });

  it("says the most weight the rig can give at each joint", () => {
    for (const row of weightByDepth({ ...base, limits: { pullDownRating: 10000 } })) {
      expect(row.mostWeight).toBeCloseTo(10000 + row.hangingWeight, 6);
    }
  });
});
