/**
 * Cost of hole against the cost cases of the shop's handbook: one worked example of a teaching page, the rest derived from
 * planning values by algebra worked apart. Prices in US dollars.
 */
import {
  breakEvenFootage,
  breakEvenRate,
  cheapestPull,
  costPerLength,
  handlingPerLength,
  reworkValue,
  timePrice,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { foot, gallon } from "../support/field-units.ts";

const hour = 3600;

describe("cost of a length (teaching page; relation standard, Bourgoyne et al. 1986, recalled)", () => {
  it("is 48.80 $/ft for a bit of 27,000 $ at 3,500 $/h, 50 h of drilling, 12 h of trips, 5,000 ft", () => {
    const cost = costPerLength({
      bitPrice: 27000,
      timePrice: 3500 / hour,
      timeOnBottom: 50 * hour,
      handlingTime: 12 * hour,
      length: 5000 * foot,
    });
    expectClose(cost * foot, 48.8, 5e-4);
  });
});

describe("a water well of 300 ft, 1.5 h of trips, 350 $/h (derived from planning values)", () => {
  const well = { timeOnBottom: (300 / 90) * hour, handlingTime: 1.5 * hour, length: 300 * foot };

  it("costs 5.87 $/ft with a bit of 1,400 $ that lasts 6,000 ft at 90 ft/h, fuel left out", () => {
    const cost = costPerLength({ ...well, bitPrice: (1400 * 300) / 6000, timePrice: 350 / hour });
    expectClose(cost * foot, 5.87, 1e-3);
  });

  it("burns 0.31 $/ft of fuel at 7 gal/h and 4 $/gal while it drills", () => {
    const fuel = timePrice({ rigPrice: 0, fuelPrice: 4 / gallon, fuelFlow: (7 * gallon) / hour });
    const cost = costPerLength({ ...well, handlingTime: 0, bitPrice: 0, timePrice: fuel });
    expectClose(cost * foot, 0.31, 1e-2);
  });

  it("costs 7.88 $/ft with a hammer at 80 ft/h, 0.55 $/ft of hammer bits, 24 gal/h", () => {
    const { length, handlingTime } = well;
    const cost = costPerLength({
      bitPrice: 0.55 * 300,
      timePrice: 350 / hour,
      timeOnBottom: (300 / 80) * hour,
      handlingTime,
      // The case counts fuel with the footage, as burnt on bottom alone.
      otherPrice: (24 * 4) / 80 / foot,
      length,
    });
    expectClose(cost * foot, 7.88, 1e-3);
  });

  it("spreads trips over the hole and connections over the joints", () => {
    const handling = handlingPerLength({
      tripTime: 1.5 * hour,
      holeLength: 300 * foot,
      connectionTime: 120,
      jointLength: 20 * foot,
    });
    // 1.5 h over 300 ft, and fifteen joints of two minutes.
    expectClose(handling * 300 * foot, 1.5 * hour + 15 * 120, 1e-12);
  });
});

describe("where a bit begins to pay beside a tool of 7.88 $/ft (algebra of the cost relation)", () => {
  const beside = { otherCost: 7.88 / foot, timePrice: 350 / hour, handlingTime: 1.5 * hour };
  const rateOf = (found: ReturnType<typeof breakEvenRate>) => (found.pays ? found.rate : Number.NaN);
  const footageOf = (found: ReturnType<typeof breakEvenFootage>) => (found.pays ? found.footage : Number.NaN);

  it("is 59.36 ft/h on a hole of 300 ft with 70 $ of the bit laid on it", () => {
    // break-even.rop
    const rate = rateOf(breakEvenRate({ ...beside, bitPrice: 70, length: 300 * foot }));
    expectClose((rate / foot) * hour, 59.35557, 1e-4);
  });

  it("is 482 ft at 90 ft/h with the whole 1,400 $ of the bit", () => {
    // break-even.footage
    const footage = footageOf(breakEvenFootage({ ...beside, bitPrice: 1400, rate: (90 * foot) / hour }));
    expectClose(footage / foot, 482.3218, 1e-4);
  });

  it("is nowhere at 40 ft/h, for the rig alone costs 8.75 $/ft there", () => {
    // break-even.never
    expect(breakEvenFootage({ ...beside, bitPrice: 1400, rate: (40 * foot) / hour })).toEqual({
      pays: false,
      because: "rate too slow",
    });
  });

  it("costs the same as the other tool just there", () => {
    const length = 300 * foot;
    const rate = rateOf(breakEvenRate({ ...beside, bitPrice: 70, length }));
    const cost = costPerLength({ ...beside, bitPrice: 70, timeOnBottom: length / rate, length });
    expectClose(cost, beside.otherCost, 1e-12);
    const footage = footageOf(breakEvenFootage({ ...beside, bitPrice: 1400, rate: (90 * foot) / hour }));
    const timeOnBottom = (footage / (90 * foot)) * hour;
    expectClose(costPerLength({ ...beside, bitPrice: 1400, timeOnBottom, length: footage }), beside.otherCost, 1e-12);
  });

  it("is nowhere where the bit alone costs more than the other tool", () => {
    // 2,400 $ on 300 ft are 8 $/ft.
    expect(breakEvenRate({ ...beside, bitPrice: 2400, length: 300 * foot })).toEqual({
      pays: false,
      because: "bit too dear",
    });
  });
});

describe("a rework beside a new bit (derived from planning values)", () => {
  const bit = { newPrice: 1400, newFootage: 6000 * foot, reworkPrice: 650, lifeShare: 0.85 };

  it("of 650 $ for 85 % of a life of 6,000 ft is worth up to 1,190 $", () => {
    // rework.value
    const { newCost, reworkCost, blendedCost, mostToPay, pays } = reworkValue(bit);
    expectClose(newCost * foot, 0.233, 5e-3);
    expectClose(reworkCost * foot, 0.127, 5e-3);
    expectClose(blendedCost * foot, 0.185, 5e-3);
    expectClose(mostToPay, 1190, 5e-3);
    expect(pays).toBe(true);
    expect(reworkValue({ ...bit, reworkPrice: 1200 }).pays).toBe(false);
  });
});

describe("fuel for each length (derived)", () => {
  it("is 0.30 gal/ft of a hammer at 24 gal/h and 80 ft/h, 0.078 gal/ft of a bit on mud at 7 gal/h and 90 ft/h", () => {
    // fuel.per-foot
    for (const [perHour, rate, perFoot] of [
      [24, 80, 0.3],
      [7, 90, 0.078],
    ]) {
      const price = timePrice({ rigPrice: 0, fuelPrice: 1 / gallon, fuelFlow: (perHour * gallon) / hour });
      const timeOnBottom = hour / rate;
      const cost = costPerLength({ bitPrice: 0, timePrice: price, timeOnBottom, handlingTime: 0, length: foot });
      expectClose(cost * foot, perFoot, 5e-3);
    }
  });
});

describe("best point to pull a bit that gets slower (derived optimum)", () => {
  const [bitPrice, price, trip, fresh, half] = [1400, 350, 1.5, 100, 2000];
  const k = Math.LN2 / half;
  /** Rate 100 ft/h, halved every 2,000 ft: t(F) = (exp(k F) - 1)/(k rate). */
  const life = {
    bitPrice: bitPrice + price * trip,
    timePrice: price / hour,
    handlingPerLength: 0,
    points: Array.from({ length: 40001 }, (_, n) => {
      const feet = n / 10;
      return { footage: feet * foot, timeOnBottom: ((Math.exp(k * feet) - 1) / (k * fresh)) * hour };
    }),
  };

  it("is at 1,494 ft and 5.87 $/ft for 1,400 $, 350 $/h, a trip of 1.5 h, 100 ft/h halved every 2,000 ft", () => {
    const best = cheapestPull(life);
    if (!best) throw new Error("no point");
    expectClose(best.footage / foot, 1493.746, 1e-3);
    expectClose(best.costPerLength * foot, 5.873529, 1e-3);
  });

  it("of a bit that wears twice as fast is that of one whose rate is halved every 1,000 ft", () => {
    const best = cheapestPull({ ...life, wearFactor: 2 });
    if (!best) throw new Error("no point");
    const cost = (feet: number) => (bitPrice + price * (trip + (Math.exp(2 * k * feet) - 1) / (2 * k * fresh))) / feet;
    const feet = best.footage / foot;
    expectClose(best.costPerLength * foot, cost(feet), 1e-12);
    expect(cost(feet)).toBeLessThan(Math.min(cost(feet - 1), cost(feet + 1)));
  });
});
