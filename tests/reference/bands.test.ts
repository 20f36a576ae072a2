import {
  type Band,
  band,
  bandsOf,
  cuttingRatio,
  drillAtWeight,
  type RockResponse,
  rateOfPenetration,
} from "@bitwright/engine";
import { type BandsStudy, type BedFigure, bandsStudy, type Workup } from "@bitwright/traveler";
import { beforeAll, describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { DEMOS, demoWorkup } from "../support/demo-workup.ts";
import { degree, inch, MPa, rpm } from "../support/field-units.ts";
import { straightBlades } from "../support/straight-blades.ts";

const bandIn = (found: { readonly band?: Band }): Band => {
  if (!found.band) throw new Error("no band");
  return found.band;
};

describe("bands of a sharp blade in closed form", () => {
  // W = ζ ε a d (Detournay & Defourny 1992, recalled), so v = W ω/(2π ζ ε a): where only ε is uncertain the percentiles of the
  // rate are those of 1/ε, and where only ψ is, those of 1/tan(β + ψ).
  const holeRadius = (6.125 / 2) * inch;
  const backRake = 15 * degree;
  const trace = straightBlades({ holeRadius, backRake });
  const known: RockResponse = {
    specificEnergy: 30 * MPa,
    contactStress: 30 * MPa,
    faceFriction: 18 * degree,
    flatFriction: 0.3,
    kappa: 5,
  };
  const weight = 20e3;
  const rotarySpeed = 90 * rpm;
  const rateOf = (response: RockResponse) =>
    rateOfPenetration({ advance: drillAtWeight({ trace, response }, weight).advance, rotarySpeed });
  const onPaper = (specificEnergy: number, faceFriction: number) =>
    (weight * rotarySpeed) / (2 * Math.PI * cuttingRatio({ backRake, faceFriction }) * specificEnergy * holeRadius);

  it("maps the band of the strength, a factor of twenty, onto the rate", () => {
    const energy = band(5 * MPa, 30 * MPa, 100 * MPa);
    const { figures } = bandsOf({
      inputs: { energy: { band: energy, law: "log-normal" } },
      seed: 3,
      samples: 501,
      evaluate: (values) => ({ figures: { rate: rateOf({ ...known, specificEnergy: values.energy }) } }),
    });
    const rate = bandIn(figures.rate);
    // Even draws of 501 leave an error of about 1/501 of chance, a per cent of a band so wide.
    expectClose(rate.low, onPaper(energy.high, known.faceFriction), 0.015);
    expectClose(rate.mid, onPaper(energy.mid, known.faceFriction), 0.015);
    expectClose(rate.high, onPaper(energy.low, known.faceFriction), 0.015);
    expect(figures.rate.drivers).toEqual([
      { input: "energy", effect: expect.closeTo(-1, 9), share: expect.closeTo(1, 9) },
    ]);
  });

  it("maps the band of the friction angle onto the rate", () => {
    const angle = band(13 * degree, 18 * degree, 23 * degree);
    const { figures } = bandsOf({
      inputs: { angle: { band: angle, law: "normal" } },
      seed: 3,
      samples: 501,
      evaluate: (values) => ({ figures: { rate: rateOf({ ...known, faceFriction: values.angle }) } }),
    });
    const rate = bandIn(figures.rate);
    expectClose(rate.low, onPaper(known.specificEnergy, angle.high), 3e-3);
    expectClose(rate.mid, onPaper(known.specificEnergy, angle.mid), 3e-3);
    expectClose(rate.high, onPaper(known.specificEnergy, angle.low), 3e-3);
  });

  it("spreads a product of two as the logarithms add", () => {
    // Both even in logarithms, of P90 over P50 of 3 and 2: that of the product is exp √(ln² 3 + ln² 2).
    const { figures } = bandsOf({
      inputs: {
        strength: { band: band(10 * MPa, 30 * MPa, 90 * MPa), law: "log-normal" },
        ratio: { band: band(0.5, 1, 2), law: "log-normal" },
      },
      seed: 5,
      samples: 4000,
      evaluate: (values) => ({ figures: { energy: values.strength * values.ratio } }),
    });
    const energy = bandIn(figures.energy);
    const off = Math.exp(Math.hypot(Math.log(3), Math.log(2)));
    expectClose(energy.low, (30 * MPa) / off, 0.04);
    expectClose(energy.mid, 30 * MPa, 0.04);
    expectClose(energy.high, 30 * MPa * off, 0.04);
    const [first, second] = figures.energy.drivers;
    expect([first.input, second.input]).toEqual(["strength", "ratio"]);
    // Parts of the variance of the logarithm: ln²3 to ln²2.
    const variance = Math.log(3) ** 2 + Math.log(2) ** 2;
    expect(Math.abs(first.share - Math.log(3) ** 2 / variance)).toBeLessThan(0.03);
  });
});

describe("no number of the demo outruns its band", () => {
  const SAMPLES = 120;
  for (const name of DEMOS) {
    describe(name, () => {
      let workup: Workup;
      let study: BandsStudy;
      beforeAll(() => {
        workup = demoWorkup(name);
        study = bandsStudy(workup, { samples: SAMPLES });
      });

      it("every figure worked with lies between its P10 and P90", () => {
        expect(study.beds).toHaveLength(workup.cut.beds.length);
        for (const { worked, bands } of study.beds) {
          for (const figure of Object.keys(worked) as BedFigure[]) {
            const { low, high } = bandIn(bands.figures[figure]);
            expect(worked[figure]).toBeGreaterThanOrEqual(low * (1 - 1e-6));
            expect(worked[figure]).toBeLessThanOrEqual(high * (1 + 1e-6));
          }
        }
      });

      it("the range of the rate on the card stays near P10 and P90", () => {
        for (const [k, { bands }] of study.beds.entries()) {
          const { low, high } = bandIn(bands.figures.rate);
          const { rate } = workup.cut.beds[k];
          // The card takes both strengths at their hard side and nothing else; the sampling takes all, each by itself.
          expect(rate.low).toBeGreaterThan(0.7 * low);
          expect(rate.high).toBeLessThan(1.05 * high);
        }
      });

      it("the strength of the rock drives the rate of every bed", () => {
        for (const { bands } of study.beds) expect(bands.figures.rate.drivers[0].input).toBe("strength");
      });
    });
  }
});
