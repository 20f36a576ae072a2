import {
  advanceLadder,
  bestRun,
  cuttingRatio,
  type LimitedBit,
  limitLines,
  practiceWeightAndSpeed,
  type RateLimitName,
  type RateLimits,
  type RockResponse,
  rateLine,
} from "@bitwright/engine";
import { mapStudy, ruleBox } from "@bitwright/traveler";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { DEMOS, demoWorkup } from "../support/demo-workup.ts";
import { degree, footPerHour, footPound, horsepower, inch, MPa, poundForce, rpm } from "../support/field-units.ts";
import { straightBlades } from "../support/straight-blades.ts";

// One sharp blade: W = ζ ε a d and T = ε a² d / 2 (Detournay & Defourny 1992, recalled; algebra derived). With it every line
// of the map and its best point are known on paper.
const holeRadius = (6.125 / 2) * inch;
const backRake = 15 * degree;
const rock: RockResponse = {
  specificEnergy: 60 * MPa,
  contactStress: 60 * MPa,
  faceFriction: 18 * degree,
  flatFriction: 0.3,
  kappa: 5,
};
const trace = straightBlades({ holeRadius, backRake });
const zeta = cuttingRatio({ backRake, faceFriction: rock.faceFriction });
const weightPerAdvance = zeta * rock.specificEnergy * holeRadius;
const torquePerAdvance = (rock.specificEnergy * holeRadius ** 2) / 2;
const speeds = Array.from({ length: 14 }, (_, k) => (20 + 10 * k) * rpm);
const turn = 2 * Math.PI;

const bitWith = (limits: RateLimits): LimitedBit => ({ trace, response: rock, limits });
const lineOf = (limits: RateLimits, name: RateLimitName) => {
  const found = limitLines(bitWith(limits), speeds).find(({ limit }) => limit === name);
  if (!found) throw new Error(`no line of ${name}`);
  return found.points;
};

describe("lines of a sharp blade in closed form", () => {
  const tolerance = 1e-7;

  it("weight: d = W/(ζ ε a), level", () => {
    for (const { advance, weight } of lineOf({ weight: 20e3 }, "weight")) {
      expectClose(advance, 20e3 / weightPerAdvance, tolerance);
      expectClose(weight, 20e3, tolerance);
    }
  });

  it("torque: W = 2 ζ T/a, level", () => {
    for (const { weight } of lineOf({ torque: 1500 }, "torque")) {
      expectClose(weight, (2 * zeta * 1500) / holeRadius, tolerance);
    }
  });

  it("exposure: the blade cuts as deep as it advances", () => {
    for (const { advance } of lineOf({ exposure: 4e-3 }, "exposure")) expectClose(advance, 4e-3, tolerance);
  });

  it("power: v = P/(ε π a²), the same at every speed", () => {
    for (const { rate, weight, rotarySpeed } of lineOf({ power: 15e3 }, "power")) {
      expectClose(rate, 15e3 / (rock.specificEnergy * Math.PI * holeRadius ** 2), tolerance);
      expectClose(weight, (weightPerAdvance * 15e3) / torquePerAdvance / rotarySpeed, tolerance);
    }
  });

  it("cleaning: W = ζ ε a 2π v/ω", () => {
    for (const { weight, rotarySpeed } of lineOf({ rate: 0.01 }, "rate")) {
      expectClose(weight, (weightPerAdvance * turn * 0.01) / rotarySpeed, tolerance);
    }
  });

  it("equal rate: weight goes as one over speed", () => {
    const ladder = advanceLadder(bitWith({}), 40e3);
    for (const { weight, rotarySpeed } of rateLine({ ladder, rate: 0.008, rotarySpeeds: speeds })) {
      expectClose(weight, (weightPerAdvance * turn * 0.008) / rotarySpeed, 1e-6);
    }
  });
});

describe("best point of a sharp blade in closed form", () => {
  it("is the least of weight at full speed, power and cleaning; the slowest that gives it", () => {
    const between = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(
        between(4e3, 40e3),
        between(3e3, 3e4),
        between(3e-3, 3e-2),
        between(60, 200),
        (weight, power, rate, top) => {
          const rotary = { slowest: 10 * rpm, fastest: top * rpm };
          const best = bestRun(bitWith({ weight, power, rate }), rotary);
          const advance = weight / weightPerAdvance;
          const byWeight = (advance * rotary.fastest) / turn;
          const byPower = power / (rock.specificEnergy * Math.PI * holeRadius ** 2);
          const most = Math.min(byWeight, byPower, rate);
          expectClose(best?.rate ?? 0, most, 1e-5);
          const slowest = Math.max(rotary.slowest, (turn * most) / advance);
          expectClose(best?.rotarySpeed ?? 0, slowest, 2e-3);
        },
      ),
      { seed: 8, numRuns: 40 },
    );
  });
});

describe("figures of the trade on a map", () => {
  // Derived: hp = T rpm/5252; 1,500 lbf-ft at 90 rpm are 25.7 hp, printed to three figures.
  it("25.7 hp and 1,500 ft-lbf take over from each other at 90 rpm", () => {
    const limits = { torque: 1500 * footPound, power: 25.7 * horsepower };
    const best = bestRun(bitWith(limits), { slowest: 20 * rpm, fastest: 200 * rpm });
    expectClose((best?.rotarySpeed ?? 0) / rpm, 90, 1e-3);
  });

  // Derived: in/rev = 0.2 ROP/rpm.
  it.each([
    [60, 80, 0.15],
    [100, 90, 0.222],
    [200, 90, 0.444],
  ])("%i ft/h at %i rpm are %f in a turn", (rate, turns, advance) => {
    const ladder = advanceLadder(bitWith({}), 200e3);
    const [point] = rateLine({ ladder, rate: rate * footPerHour, rotarySpeeds: [turns * rpm] });
    expectClose(point.advance / inch, advance, 3e-3);
  });

  // Common practice, no source: 1,000 lb per inch, pipe weight included, 80 to 100 rpm, slower in hard ground.
  it("draws the rule of thumb as a box about 1,000 lb per inch, at 80 to 100 rpm, slower where the ground is hard", () => {
    const workup = demoWorkup("house-well");
    const { cut } = workup;
    const [shale] = cut.beds;
    const soft = ruleBox(shale.run.practice, shale.bed.confinedStrength.mid);
    expectClose(soft.weight.mid / poundForce, 6125, 1e-6);
    expect(soft.rotarySpeed.low / rpm).toBeCloseTo(80, 9);
    expect(soft.rotarySpeed.high / rpm).toBeCloseTo(100, 9);
    const strength = { low: 120 * MPa, mid: 140 * MPa, high: 160 * MPa };
    const practice = practiceWeightAndSpeed({
      holeDiameter: 2 * holeRadius,
      bed: { ...shale.bed, confinedStrength: strength },
    });
    const hard = ruleBox(practice, strength.mid);
    expect(hard.rotarySpeed.high / rpm).toBeCloseTo(80, 9);
    expect(hard.rotarySpeed.low / rpm).toBeLessThan(70);
  });
});

describe("maps of the demo travelers say what the workup says", () => {
  for (const name of DEMOS) {
    it(`${name}: same limits, same rates, and nothing the card asks lies outside`, () => {
      const workup = demoWorkup(name);
      const study = mapStudy(workup);
      expect(study.beds.map(({ number }) => number)).toEqual(workup.cut.beds.map((_, k) => k + 1));
      for (const [k, bed] of study.beds.entries()) {
        const cut = workup.cut.beds[k];
        // The workup solved its limits at the computed speed; the map's level lines and best point must agree with them.
        for (const { limit, advance } of cut.bounds) {
          const line = bed.map.lines.find((one) => one.limit === limit);
          expect(line, limit).toBeDefined();
          if (line?.level) expectClose(line.points[0].advance, advance, 1e-6);
        }
        const { computed } = cut.run;
        expect(bed.map.best?.rate ?? 0).toBeGreaterThanOrEqual(computed.rate * (1 - 1e-6));
        const held = bed.atRun.map(({ points: [point] }) => point.advance);
        expect(bed.run.advance).toBeLessThanOrEqual(Math.min(...held) * (1 + 1e-6));
      }
    });
  }
});
