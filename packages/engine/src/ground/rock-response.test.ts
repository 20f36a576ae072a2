import { expect, it } from "vitest";
import { band, exactBand } from "../quantity/index.ts";
import { rockResponse } from "./rock-response.ts";
import { rockById } from "./rock-table.ts";
import { shopRock } from "./shop-rock.ts";

it("puts specific energy and contact strength at their ratios to the confined strength", () => {
  const rock = shopRock({
    like: rockById("sandstone"),
    properties: { specificEnergyRatio: exactBand(1.1), contactStressRatio: exactBand(0.9) },
    from: "test",
  });
  const { mid, bands } = rockResponse({ rock, confinedStrength: band(4e7, 5e7, 6e7) });
  expect(mid.specificEnergy).toBeCloseTo(5.5e7, 3);
  expect(mid.contactStress).toBeCloseTo(4.5e7, 3);
  expect(bands.specificEnergy.low).toBeCloseTo(4.4e7, 3);
  expect(bands.flatFriction).toEqual(rock.flatFriction);
  expect(mid.kappa).toBe(rock.kappa.mid);
});

it("lets a set constant stand alone, without a band", () => {
  const { mid, bands } = rockResponse({
    rock: rockById("shale"),
    confinedStrength: exactBand(3e7),
    override: { flatFriction: 0.12, specificEnergy: 2.5e7 },
  });
  expect(mid.flatFriction).toBe(0.12);
  expect(bands.specificEnergy).toEqual({ low: 2.5e7, mid: 2.5e7, high: 2.5e7 });
});
