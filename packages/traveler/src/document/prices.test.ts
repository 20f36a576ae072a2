import { cutterPriceOf } from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { foot, gallon } from "../../../../tests/support/field-units.ts";
import { spoilt } from "../../../../tests/support/spoilt.ts";
import { parseTraveler } from "./parse-traveler.ts";

const read = (document: unknown) => {
  const parsed = parseTraveler(document);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join("\n"));
  return parsed;
};
const problemsIn = (document: unknown) => {
  const parsed = parseTraveler(document);
  return parsed.ok ? [] : parsed.problems.map(({ message }) => message);
};

describe("the price sheet", () => {
  it("is read as entered, in SI", () => {
    const { resolved, assumed } = read(spoilt(["job", "name"], "as it is"));
    const { prices } = resolved;
    expectClose(prices.rigPrice, 320 / 3600, 1e-12);
    expectClose(prices.fuelPrice, 3.8 / gallon, 1e-12);
    expectClose(prices.fuelFlow, (6 * gallon) / 3600, 1e-12);
    expect(prices.tripTime).toBe(75 * 60);
    expect(prices.connectionTime).toBe(180);
    expectClose(prices.otherPrice, 0.2 / foot, 1e-12);
    expect(prices.bodyPrices).toEqual({ steel: 650, matrix: 1050 });
    expect(prices.cutterPrices.map(({ cutterPrice }) => cutterPrice)).toEqual([22, 22, 24, 38, 80]);
    expect(assumed.filter(({ field }) => field.startsWith("prices"))).toEqual([]);
  });

  it("is filled with usual prices, each named; a body by the size of the bit", () => {
    const { resolved, assumed } = read(spoilt(["prices"], { cutters: { "1613": "40" } }));
    const { bodyPrices, cutterPrices } = resolved.prices;
    // 600 for 6 in, with the cross-section.
    expectClose(bodyPrices.steel, 600 * (6.125 / 6) ** 2, 1e-12);
    expect(cutterPriceOf(cutterPrices, 15.88e-3)).toBe(40);
    const named = new Map(assumed.map(({ field, text }) => [field, text]));
    expect(named.get("prices.rig")).toBe("350 /h");
    expect(named.get("prices.fuel")).toBe("4 /gal");
    expect(named.get("prices.fuelFlow")).toBe("7 gal/h");
    expect(named.get("prices.cutters.1308")).toBe("25");
    expect(named.has("prices.cutters.1608")).toBe(false);
    for (const { field, source } of assumed) {
      if (field.startsWith("prices")) expect(source.kind).toBe("practice");
    }
  });

  it("takes cutters of the shop's own", () => {
    const own = spoilt(["lists"], { cutters: [{ code: "1410", faceDiameter: "14 mm", length: "10 mm" }] });
    const { prices } = read({ ...(own as object), prices: { cutters: { "1410": 31 } } }).resolved;
    expect(cutterPriceOf(prices.cutterPrices, 14e-3)).toBe(31);
  });

  it("names the field where a price is none", () => {
    expect(problemsIn(spoilt(["prices", "rig"], "350"))).toEqual([
      'prices.rig: got "350" without a unit; give a price for each time in the currency of the job of 0 /h or more, for example "350 /h" or "2800 /d"',
    ]);
    expect(problemsIn(spoilt(["prices", "pocket"], "-3"))[0]).toMatch(/^prices\.pocket: got "-3", which is below zero/);
    expect(problemsIn(spoilt(["prices", "cutters"], { "1380": "30" }))[0]).toMatch(
      /^prices\.cutters: got "1380", which is no cutter of the list/,
    );
  });

  it("warns where usual prices are filled in among those of another currency", () => {
    const codes = (document: unknown) => read(document).resolved.findings.map(({ code }) => code);
    const job = { name: "A well", currency: "EUR" };
    expect(codes({ ...(spoilt(["prices"], { rig: "300 /h" }) as object), job })).toContain("prices-of-two-currencies");
    expect(codes(spoilt(["prices"], { rig: "300 /h" }))).not.toContain("prices-of-two-currencies");
  });
});
