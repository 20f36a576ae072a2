/**
 * Cost of hole against the cost cases of the shop's handbook: one worked example of a teaching page, the rest derived from
 * planning values by algebra worked apart. Prices in US dollars.
 */
import { cheapestPull, costPerLength, handlingPerLength, timePrice } from "@bitwright/engine";
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
