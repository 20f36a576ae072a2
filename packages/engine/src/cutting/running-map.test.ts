import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { mm, rpm } from "../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../tests/support/profiled-bit.ts";
import { sandstoneLike } from "../../../../tests/support/rock-responses.ts";
import type { HeatConditions } from "./cutter-heat.ts";
import { drillAtAdvance, drillAtTorque, drillAtWeight } from "./drilled-state.ts";
import { largestRate, type RateLimitName, type RateLimits } from "./largest-rate.ts";
import { type RunningMapInput, runningMap, runningTable } from "./running-map.ts";
import { bestRun } from "./running-map-best.ts";
import { advanceLadder, ladderWeight } from "./running-map-ladder.ts";
import { limitsPassed } from "./running-map-limits.ts";
import { type LimitedBit, limitLines, rateLine } from "./running-map-lines.ts";
import { traceEdges } from "./trace-edges.ts";

const bit = { trace: traceEdges(profiledBit()), response: sandstoneLike };
const heat: HeatConditions = {
  rock: { conductivity: 3, diffusivity: 1.3e-6 },
  fluidTemperature: 293.15,
  film: { coefficient: 5000, area: 2e-4 },
};
const speeds = Array.from({ length: 15 }, (_, k) => (20 + 10 * k) * rpm);
const rotary = { slowest: 30 * rpm, fastest: 140 * rpm };
const turn = 2 * Math.PI;

describe("advanceLadder", () => {
  const ladder = advanceLadder(bit, 40e3);

  it("climbs from nothing to the weight asked for", () => {
    expect(ladder[0]).toEqual({ advance: 0, weight: 0, torque: 0 });
    expectClose(ladder.at(-1)?.weight ?? 0, 40e3, 1e-8);
    for (let k = 1; k < ladder.length; k++) {
      expect(ladder[k].weight).toBeGreaterThan(ladder[k - 1].weight);
      expect(ladder[k].torque).toBeGreaterThan(ladder[k - 1].torque);
    }
  });

  it("is fine enough that the lines drawn from it are the law's to half a per cent", () => {
    for (const weight of [1.5e3, 4e3, 11e3, 23e3, 37e3]) {
      const { advance } = drillAtWeight(bit, weight);
      expectClose(ladderWeight(ladder, advance) ?? Number.NaN, weight, 5e-3);
    }
    expect(ladderWeight(ladder, 1)).toBeUndefined();
    expect(() => ladderWeight(ladder, -1e-3)).toThrow(/advance/);
  });
});

describe("limitLines", () => {
  const limits: RateLimits = {
    weight: 30e3,
    torque: 900,
    power: 6e3,
    exposure: 3 * mm,
    rate: 0.008,
    contactTemperature: 340,
  };
  const limited: LimitedBit = { ...bit, limits, heat };
  const lines = limitLines(limited, speeds);
  const line = (name: RateLimitName) => {
    const found = lines.find(({ limit }) => limit === name);
    if (!found) throw new Error(`no line of ${name}`);
    return found;
  };

  it("draws what knows no speed level, and the rest not", () => {
    for (const name of ["weight", "torque", "exposure"] as const) {
      const { level, points } = line(name);
      expect(level).toBe(true);
      expect(new Set(points.map(({ weight }) => weight)).size).toBe(1);
    }
    for (const name of ["power", "rate", "contactTemperature"] as const) {
      const { level, points } = line(name);
      expect(level).toBe(false);
      for (let k = 1; k < points.length; k++) expect(points[k].weight).toBeLessThan(points[k - 1].weight);
    }
  });

  it("meets each limit on its line", () => {
    expectClose(line("weight").points[3].weight, 30e3, 1e-8);
    expectClose(line("torque").points[0].weight, drillAtTorque(bit, 900).bit.weight, 1e-8);
    for (const { rotarySpeed, advance, rate } of line("power").points) {
      expectClose(drillAtAdvance(bit, advance).bit.torque * rotarySpeed, 6e3, 1e-7);
      expectClose(rate, (advance * rotarySpeed) / turn, 1e-12);
    }
    for (const { rate } of line("rate").points) expectClose(rate, 0.008, 1e-12);
  });

  it("gives at every speed the bounds of the largest rate", () => {
    for (const rotarySpeed of speeds) {
      const { bounds } = largestRate({ ...limited, rotarySpeed, limits });
      for (const { limit, rate } of bounds) {
        const point = line(limit).points.find((one) => one.rotarySpeed === rotarySpeed);
        expectClose(point?.rate ?? Number.NaN, rate, 1e-9);
      }
    }
  });

  it("leaves a limit out that no rate meets", () => {
    const cold = { ...bit, limits: { contactTemperature: 5000, weight: 20e3 }, heat };
    expect(limitLines(cold, speeds).map(({ limit }) => limit)).toEqual(["weight"]);
  });
});

describe("rateLine", () => {
  it("asks less weight of a faster turning bit, and holds its rate", () => {
    const ladder = advanceLadder(bit, 40e3);
    const points = rateLine({ ladder, rate: 0.006, rotarySpeeds: speeds });
    for (let k = 1; k < points.length; k++) expect(points[k].weight).toBeLessThan(points[k - 1].weight);
    for (const { weight, rotarySpeed } of points) {
      expectClose((drillAtWeight(bit, weight).advance * rotarySpeed) / turn, 0.006, 0.01);
    }
    expect(rateLine({ ladder, rate: 1, rotarySpeeds: speeds })).toEqual([]);
  });
});

describe("bestRun", () => {
  it("turns as fast as the rotary can where nothing that knows speed binds", () => {
    const best = bestRun({ ...bit, limits: { weight: 20e3 } }, rotary);
    expect(best?.binds).toBe("weight");
    expectClose(best?.rotarySpeed ?? 0, rotary.fastest, 1e-12);
    expect(best?.fasterEndsAt).toBe("rotary");
    expectClose(best?.weight ?? 0, 20e3, 1e-7);
  });

  it("stops where power takes over from the weight: P / T", () => {
    const { torque } = drillAtWeight(bit, 20e3).bit;
    const power = torque * 90 * rpm;
    const best = bestRun({ ...bit, limits: { weight: 20e3, power } }, rotary);
    expectClose((best?.rotarySpeed ?? 0) / rpm, 90, 1e-4);
    expect(best?.fasterEndsAt).toBe("rate");
  });

  it("turns no faster than cleaning asks: 2π v / d", () => {
    const { advance } = drillAtWeight(bit, 20e3);
    const rate = (advance * 75 * rpm) / turn;
    const best = bestRun({ ...bit, limits: { weight: 20e3, rate } }, rotary);
    expectClose((best?.rotarySpeed ?? 0) / rpm, 75, 1e-6);
    expectClose(best?.rate ?? 0, rate, 1e-9);
  });

  it("keeps out of windows and takes their better edge", () => {
    const avoid = [{ from: 95 * rpm, to: 200 * rpm, why: "the string swings" }];
    const best = bestRun({ ...bit, limits: { weight: 20e3 } }, rotary, avoid);
    expectClose((best?.rotarySpeed ?? 0) / rpm, 95, 1e-12);
    expect(best?.fasterEndsAt).toBe("avoided");
    expect(bestRun({ ...bit, limits: { weight: 20e3 } }, rotary, [{ from: 1, to: 99, why: "all" }])).toBeUndefined();
  });

  it("takes one of the gears where the rotary has no speeds between", () => {
    const geared = { ...rotary, fixed: [40 * rpm, 65 * rpm, 110 * rpm] };
    const { advance } = drillAtWeight(bit, 20e3);
    const rate = (advance * 75 * rpm) / turn;
    expect(bestRun({ ...bit, limits: { weight: 20e3 } }, geared)?.rotarySpeed).toBe(110 * rpm);
    expect(bestRun({ ...bit, limits: { weight: 20e3, rate } }, geared)?.rotarySpeed).toBe(110 * rpm);
    expect(
      bestRun({ ...bit, limits: { weight: 20e3 } }, geared, [{ from: 100 * rpm, to: 120 * rpm, why: "swing" }])
        ?.rotarySpeed,
    ).toBe(65 * rpm);
  });

  it("is beaten at no speed by the largest rate there, and keeps every limit", () => {
    const between = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    const any = fc.record(
      {
        torque: between(200, 2e3),
        power: between(1e3, 2e4),
        exposure: between(0.5 * mm, 6 * mm),
        rate: between(2e-3, 0.03),
        contactTemperature: between(310, 500),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(any, between(8e3, 40e3), (more, weight) => {
        const limits = { ...more, weight };
        const best = bestRun({ ...bit, limits, heat }, rotary);
        if (!best) throw new Error("no best point");
        for (let turns = 30; turns <= 140; turns += 5.5) {
          const other = largestRate({ ...bit, heat, limits, rotarySpeed: turns * rpm });
          expect(other.rate).toBeLessThanOrEqual(best.rate * (1 + 1e-5));
        }
        const state = drillAtAdvance(bit, best.advance * (1 - 1e-6));
        const passed = limitsPassed({ ...bit, state, rotarySpeed: best.rotarySpeed, limits, heat });
        // Heat may rise by a hair where the cut gets shallower; every other figure falls.
        expect(passed.filter((name) => name !== "contactTemperature")).toEqual([]);
        const eased = { ...limits, contactTemperature: (limits.contactTemperature ?? 5000) + 0.1 };
        expect(limitsPassed({ ...bit, state, rotarySpeed: best.rotarySpeed, limits: eased, heat })).toEqual([]);
        expect(best.bounds[0].limit).toBe(best.binds);
      }),
      { seed: 3, numRuns: 12 },
    );
  });

  it("refuses speeds that are none", () => {
    const limits = { weight: 20e3 };
    expect(() => bestRun({ ...bit, limits }, { slowest: 0, fastest: 10 })).toThrow(/slowest/);
    expect(() => bestRun({ ...bit, limits }, { slowest: 10, fastest: 5 })).toThrow(/fastest/);
  });
});

describe("runningMap", () => {
  const input: RunningMapInput = {
    ...bit,
    heat,
    rotary,
    rotarySpeeds: speeds,
    mostWeight: 40e3,
    limits: { weight: 30e3, torque: 1500, rate: 0.02, contactTemperature: 340 },
    heatMarks: [350],
  };

  it("holds the lines, the marks, the ladder and the best point together", () => {
    const map = runningMap(input);
    expect(map.lines.map(({ limit }) => limit).sort()).toEqual(["contactTemperature", "rate", "torque", "weight"]);
    expect(map.heatLines.map(({ contactTemperature }) => contactTemperature)).toEqual([350]);
    const limit = map.lines.find((one) => one.limit === "contactTemperature");
    for (const { rotarySpeed, weight } of map.heatLines[0].points) {
      const cooler = limit?.points.find((point) => point.rotarySpeed === rotarySpeed);
      if (cooler) expect(weight).toBeGreaterThan(cooler.weight);
    }
    expectClose(map.ladder.at(-1)?.weight ?? 0, 40e3, 1e-8);
    expect(map.best).toEqual(bestRun(input, rotary));
  });

  it("draws no heat where no heat conditions are given", () => {
    const { heat: _, ...cold } = input;
    const { contactTemperature: __, ...limits } = input.limits;
    expect(runningMap({ ...cold, limits }).heatLines).toEqual([]);
  });
});

describe("runningTable", () => {
  it("has the rate of every point and the limits it passes", () => {
    const limits = { weight: 20e3, torque: 700, rate: 0.01 };
    const cells = runningTable({ ...bit, limits }, { weights: [6e3, 18e3, 30e3], rotarySpeeds: [60 * rpm, 120 * rpm] });
    expect(cells).toHaveLength(6);
    for (const { weight, rotarySpeed, rate, torque, passes } of cells) {
      const state = drillAtWeight(bit, weight);
      expectClose(rate, (state.advance * rotarySpeed) / turn, 1e-9);
      expect(passes).toEqual([
        ...(weight > 20e3 ? ["weight"] : []),
        ...(torque > 700 ? ["torque"] : []),
        ...(rate > 0.01 ? ["rate"] : []),
      ]);
    }
    expect(() => runningTable({ ...bit, limits }, { weights: [0], rotarySpeeds: [1] })).toThrow(/weight/);
  });
});
