import { describe, expect, it } from "vitest";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { drillingFluidOf } from "../stations/drilling-fluid-of.ts";
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

  it("takes a poor viscosity from the time of a funnel, half to double", () => {
    // (ρ/ρw)(t - 25) mPa s (Pitt 2000, recalled): 1030.5/999 times 13.
    const { plasticViscosity, yieldPoint, funnelViscosity, assumed } = fluidOf({
      kind: "bentonite",
      density: "1030.5 kg/m3",
      funnelTime: "38 s",
    });
    expect(plasticViscosity).toBeCloseTo((1.0305 / 0.999) * 13e-3, 4);
    expect(yieldPoint).toBe(0);
    expect((funnelViscosity?.low ?? 0) / plasticViscosity).toBeCloseTo(0.5, 9);
    expect((funnelViscosity?.high ?? 0) / plasticViscosity).toBeCloseTo(2, 9);
    expect(assumed).toEqual(["temperature"]);
  });

  it("is read by the law that is named, where the readings allow it", () => {
    const dialReadings = { at600: 24, at300: 16, at6: 5, at3: 4 };
    const modelOf = (law?: string) => {
      const { assumed: _, ...fluid } = fluidOf({ kind: "bentonite", dialReadings, ...(law ? { law } : {}) });
      return drillingFluidOf(fluid);
    };
    expect(modelOf().model).toBe("herschel-bulkley");
    expect(modelOf("Bingham").model).toBe("bingham");
    // n = 3.32 log(24/16), K = 510 × 16/511ⁿ equivalent cp (Guo & Liu 2011), here in Pa sⁿ.
    const power = modelOf("power law");
    if (power.model !== "power-law") throw new Error(power.model);
    expect(power.flowIndex).toBeCloseTo(3.32 * Math.log10(24 / 16), 3);
    expect(power.consistency).toBeCloseTo((1.066 * 16 * 0.4788) / 511 ** power.flowIndex, 3);
  });

  it("is told once only", () => {
    const refused = (fluid: object) => {
      const read = parseTraveler({ ...soundTraveler(), inquiry: { ...soundTraveler().inquiry, fluid } });
      return read.ok ? [] : read.problems.map(({ message }) => message);
    };
    const once = "give plastic viscosity and yield point, or dial readings, or a funnel time, no two of them";
    expect(refused({ kind: "bentonite", funnelTime: "38 s", yieldPoint: "8 lbf/100ft2" })).toEqual([
      `inquiry.fluid.yieldPoint: got "8 lbf/100ft2" beside a funnel time; ${once}`,
    ]);
    expect(refused({ kind: "bentonite", funnelTime: "38 s", dialReadings: { at600: 24, at300: 16 } })).toEqual([
      `inquiry.fluid.dialReadings: got readings beside a funnel time; ${once}`,
    ]);
    expect(refused({ kind: "air", funnelTime: "38 s" })).toEqual([
      'inquiry.fluid.funnelTime: got "38 s" of air; leave it out: a funnel times a liquid',
    ]);
    expect(refused({ kind: "bentonite", law: "power law" })).toEqual([
      'inquiry.fluid.law: got "power law" without dial readings; give dial readings, or leave it out: plastic viscosity and yield point are of the Bingham law',
    ]);
    expect(refused({ kind: "bentonite", law: "Herschel-Bulkley", dialReadings: { at600: 24, at300: 16 } })).toEqual([
      'inquiry.fluid.law: got "Herschel-Bulkley" by two readings; give the readings at 6 and at 3 as well, or another law',
    ]);
    expect(refused({ kind: "bentonite", funnelTime: "20 s" })).toEqual([
      expect.stringContaining("inquiry.fluid.funnelTime"),
    ]);
  });
});
