import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { DrillingFluid, HerschelBulkleyFluid } from "../fluid/index.ts";
import type { Conduit } from "./conduit.ts";
import { conduitArea, conduitSpeed, flowForUpholeSpeed } from "./conduit.ts";
import { conduitLoss } from "./conduit-loss.ts";
import { exactLaminarPressureDrop } from "./exact-laminar-pressure-drop.ts";
import { colebrookFriction } from "./friction-factor.ts";
import { roughAnnulusPressureDrop } from "./rough-annulus-pressure-drop.ts";
import { equivalentDiameter, smoothPressureDrop } from "./smooth-pressure-drop.ts";

const pipe: Conduit = { shape: "pipe", bore: 0.07 };
const ring = { shape: "annulus", holeDiameter: 0.155, pipeDiameter: 0.089 } as const;
const water: DrillingFluid = { model: "newtonian", density: 1000, viscosity: 1e-3 };
const thick = (yieldStress: number, consistency: number, flowIndex: number): HerschelBulkleyFluid => {
  return { model: "herschel-bulkley", density: 1050, yieldStress, consistency, flowIndex };
};
const fluids: readonly DrillingFluid[] = [
  water,
  { model: "bingham", density: 1050, plasticViscosity: 0.008, yieldPoint: 4 },
  { model: "power-law", density: 1050, consistency: 0.2, flowIndex: 0.6 },
  thick(1.5, 0.1, 0.7),
];
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("laminar limits", () => {
  const oil: DrillingFluid = { model: "newtonian", density: 1000, viscosity: 0.2 };
  const flow = 0.002;
  const length = 100;

  it("Newtonian pipe flow is Hagen and Poiseuille's: 128 μ L Q/(π d⁴)", () => {
    const loss = conduitLoss({ fluid: oil, conduit: pipe, flow, length });
    expect(loss.regime).toBe("laminar");
    expect(loss.pressureDrop / ((128 * 0.2 * length * flow) / (Math.PI * 0.07 ** 4))).toBeCloseTo(1, 9);
  });

  it("a yield-stress fluid with n = 1 and no yield, and a Bingham fluid with no yield, lose the same", () => {
    for (const conduit of [pipe, ring]) {
      const newtonian = conduitLoss({ fluid: oil, conduit, flow, length }).pressureDrop;
      const general = { ...thick(0, 0.2, 1), density: 1000 };
      const bingham: DrillingFluid = { model: "bingham", density: 1000, plasticViscosity: 0.2, yieldPoint: 0 };
      expect(conduitLoss({ fluid: general, conduit, flow, length }).pressureDrop / newtonian).toBeCloseTo(1, 6);
      expect(conduitLoss({ fluid: bingham, conduit, flow, length }).pressureDrop / newtonian).toBeCloseTo(1, 9);
      expect(exactLaminarPressureDrop({ fluid: oil, conduit, flow, length }) / newtonian).toBeCloseTo(1, 8);
    }
  });

  it("a slot is a wide plate gap: 12 μ v L/h²", () => {
    const gap = (0.155 - 0.089) / 2;
    const speed = conduitSpeed({ flow, conduit: ring });
    const loss = conduitLoss({ fluid: oil, conduit: ring, flow, length });
    expect(loss.pressureDrop / ((12 * 0.2 * speed * length) / gap ** 2)).toBeCloseTo(1, 9);
  });

  it("the exact loss agrees with summing the speed profile numerically", () => {
    const fluid = thick(2, 0.3, 0.6);
    for (const conduit of [pipe, ring]) {
      const drop = exactLaminarPressureDrop({ fluid, conduit, flow, length });
      expect(sumProfile(fluid, conduit, drop / length) / conduitSpeed({ flow, conduit })).toBeCloseTo(1, 4);
    }
  });

  it("the engineering form stays within 5 % of exact for muds that flow freely", () => {
    fc.assert(
      fc.property(double(0, 2), double(0.05, 0.5), double(0.5, 1), (yieldStress, consistency, n) => {
        const input = { fluid: thick(yieldStress, consistency, n), conduit: ring, flow: 0.004, length };
        const loss = conduitLoss(input);
        fc.pre(loss.regime === "laminar");
        expect(Math.abs(loss.pressureDrop / exactLaminarPressureDrop(input) - 1)).toBeLessThan(0.05);
      }),
    );
  });
});

/** Mean speed by adding thin layers from the wall inwards, with no use of the closed form. */
function sumProfile(fluid: HerschelBulkleyFluid, conduit: Conduit, gradient: number): number {
  const layers = 4000;
  const half = conduit.shape === "pipe" ? conduit.bore / 2 : (conduit.holeDiameter - conduit.pipeDiameter) / 4;
  const wall = conduit.shape === "pipe" ? (gradient * half) / 2 : gradient * half;
  let speed = 0;
  let sum = 0;
  let weight = 0;
  for (let i = layers - 0.5; i > 0; i--) {
    const y = i / layers;
    const excess = Math.max(0, wall * y - fluid.yieldStress);
    const rise = ((excess / fluid.consistency) ** (1 / fluid.flowIndex) * half) / layers;
    const share = conduit.shape === "pipe" ? y : 1;
    sum += (speed + rise / 2) * share;
    weight += share;
    speed += rise;
  }
  return sum / weight;
}

describe("every law", () => {
  it.each(fluids)("adds over length and rises with flow: $model", (fluid) => {
    fc.assert(
      fc.property(double(2e-4, 0.03), fc.constantFrom(pipe, ring), (flow, conduit) => {
        const over = (length: number) => conduitLoss({ fluid, conduit, flow, length }).pressureDrop;
        expect(over(30) + over(70)).toBeCloseTo(over(100), 5);
        const more = conduitLoss({ fluid, conduit, flow: 1.05 * flow, length: 100 }).pressureDrop;
        expect(more).toBeGreaterThan(over(100));
      }),
    );
  });

  it.each(fluids)("calls slow flow laminar and fast flow turbulent: $model", (fluid) => {
    const at = (flow: number) => conduitLoss({ fluid, conduit: pipe, flow, length: 1 }).regime;
    expect(at(1e-5)).toBe("laminar");
    expect(at(0.05)).toBe("turbulent");
  });
});

describe("Newtonian turbulent flow", () => {
  it("joins its laminar and turbulent ends without a step", () => {
    const lossAt = (reynolds: number) => {
      const flow = (reynolds * 1e-6 * conduitArea(pipe)) / 0.07;
      return conduitLoss({ fluid: water, conduit: pipe, flow, length: 1 });
    };
    expect(lossAt(2100.01).friction / lossAt(2099.99).friction).toBeCloseTo(1, 3);
    expect(lossAt(4000.01).friction / lossAt(3999.99).friction).toBeCloseTo(1, 3);
    expect(lossAt(3000).regime).toBe("transitional");
  });

  it("meets the law of a fully rough wall, 1/√f = 2 log(3.7 D/e), at high Reynolds numbers", () => {
    const rough = colebrookFriction({ reynolds: 1e12, relativeRoughness: 0.01 });
    expect(1 / Math.sqrt(rough)).toBeCloseTo(2 * Math.log10(370), 6);
  });

  it("is smooth when the wall is, near the short form", () => {
    const input = { conduit: pipe, flow: 0.004, length: 100 };
    const smooth = smoothPressureDrop({ density: 1000, viscosity: 1e-3, ...input });
    const exact = conduitLoss({ fluid: water, roughness: 0, ...input }).pressureDrop;
    expect(Math.abs(smooth / exact - 1)).toBeLessThan(0.03);
  });

  it("stays below the quick annulus bound on ordinary walls", () => {
    const input = { flow: 0.01, length: 100 };
    const bound = roughAnnulusPressureDrop({ density: 1000, annulus: ring, ...input });
    expect(conduitLoss({ fluid: water, conduit: ring, ...input }).pressureDrop).toBeLessThan(bound);
  });
});

describe("conduits", () => {
  it("give back the flow for an uphole speed", () => {
    const flow = flowForUpholeSpeed({ upholeSpeed: 0.6, annulus: ring });
    expect(conduitSpeed({ flow, conduit: ring })).toBeCloseTo(0.6, 12);
    expect(equivalentDiameter(pipe)).toBe(0.07);
  });
  it("refuse a pipe that does not fit", () => {
    expect(() => conduitArea({ ...ring, pipeDiameter: 0.2 })).toThrow(/room between hole and pipe must be positive/);
  });
  it("refuse misuse by name", () => {
    expect(() => conduitLoss({ fluid: water, conduit: pipe, flow: 0, length: 1 })).toThrow(/flow must be positive/);
    expect(() => conduitLoss({ fluid: water, conduit: pipe, flow: 1, length: -1 })).toThrow(/length must not be/);
    expect(() => colebrookFriction({ reynolds: 500, relativeRoughness: 0 })).toThrow(/reynolds above 1000/);
  });
});
