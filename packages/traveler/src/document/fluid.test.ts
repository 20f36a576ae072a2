import { describe, expect, it } from "vitest";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { parseTraveler } from "./parse-traveler.ts";

function fluidOf(fluid: object | undefined) {
  const { fluid: _, ...inquiry } = soundTraveler().inquiry;
  const read = parseTraveler({ ...soundTraveler(), inquiry: fluid ? { ...inquiry, fluid } : inquiry });
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  return {
    ...read.resolved.inquiry.fluid,
    assumed: read.assumed.map(({ field }) => field.replace("inquiry.fluid.", "")),
  };
}

describe("the fluid", () => {
  it("is a light bentonite mud where nobody said", () => {
    const { kind, density, assumed } = fluidOf(undefined);
    expect(kind).toBe("bentonite");
    // 8.6 ppg, the usual water-well mud.
    expect(density).toBeCloseTo(8.6 * 119.826427, 0);
    expect(assumed).toEqual(["kind", "temperature", "density", "plasticViscosity", "yieldPoint"]);
  });

  it("is Newtonian where it is water, with the viscosity of its temperature", () => {
    const cold = fluidOf({ kind: "water", temperature: "5 °C" });
    const warm = fluidOf({ kind: "water", temperature: "25 °C" });
    expect(cold.yieldPoint).toBe(0);
    // Viscosity of water at 5 and 25 °C: 1.519 and 0.890 mPa s, tables of IAPWS, recalled.
    expect(cold.plasticViscosity).toBeCloseTo(1.519e-3, 5);
    expect(warm.plasticViscosity).toBeCloseTo(0.89e-3, 5);
    expect(cold.assumed).toEqual(["density", "plasticViscosity"]);
  });

  it("takes plastic viscosity and yield point from dial readings", () => {
    // 24 and 16: 8 cP, and 8 of the dial's degrees, each 1.066 lbf/100 ft² (API RP 13D, recalled).
    const { plasticViscosity, yieldPoint, dialReadings } = fluidOf({
      kind: "polymer",
      dialReadings: { at600: 24, at300: 16 },
    });
    expect(plasticViscosity).toBeCloseTo(8e-3, 4);
    expect(yieldPoint).toBeCloseTo(8 * 1.066 * 0.4788, 2);
    expect(dialReadings).toEqual({ at600: 24, at300: 16 });
  });
});
