import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chienSlipSpeed, chienViscousSlipSpeed } from "./chien-slip-speed.ts";
import { conduitSpeed } from "./conduit.ts";
import { COOLING_FLOW_FLOOR, COOLING_FLOW_PER_DIAMETER, coolingFlow } from "./cooling-flow.ts";
import { cuttingsShare, rateCeilingByCleaning, transportRatio, upholeSpeedForRate } from "./cuttings-load.ts";
import { mooreSlipSpeed } from "./moore-slip-speed.ts";
import { SLIP_FORMS, type SlipForm, slipBand } from "./slip-band.ts";
import { sphericityDrag, sphericitySlipSpeed } from "./sphericity-slip-speed.ts";
import { stokesSlipSpeed } from "./stokes-slip-speed.ts";
import { LEAST_UPHOLE_SPEED, PREFERRED_UPHOLE_SPEED, UPHOLE_NEEDS } from "./uphole-need.ts";

const chip = { chipSize: 0.006, chipDensity: 2600, fluidDensity: 1050, viscosity: 0.01 };
const gpm = (231 * 0.0254 ** 3) / 60;
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("slip", () => {
  it.each([
    ["Moore", mooreSlipSpeed],
    ["Chien", chienSlipSpeed],
    ["Stokes", stokesSlipSpeed],
  ])("%s: larger chips fall faster, thicker fluid holds them", (_, slip) => {
    fc.assert(
      fc.property(double(1e-4, 0.02), double(5e-4, 0.5), (chipSize, viscosity) => {
        const speed = slip({ ...chip, chipSize, viscosity });
        expect(slip({ ...chip, chipSize: 1.3 * chipSize, viscosity })).toBeGreaterThan(speed);
        expect(slip({ ...chip, chipSize, viscosity: 1.3 * viscosity })).toBeLessThanOrEqual(speed * (1 + 1e-9));
      }),
    );
  });

  it("balances weight and drag in each law", () => {
    const drag = (speed: number) => {
      const { chipSize, chipDensity, fluidDensity } = chip;
      return ((4 / 3) * 9.80665 * chipSize * (chipDensity / fluidDensity - 1)) / speed ** 2;
    };
    const reynolds = (speed: number) => (chip.fluidDensity * speed * chip.chipSize) / chip.viscosity;
    const viscous = chienViscousSlipSpeed(chip);
    expect(drag(viscous)).toBeCloseTo(24 / reynolds(viscous) + 1.727, 9);
    const moore = mooreSlipSpeed(chip);
    expect(drag(moore)).toBeCloseTo(22 / Math.sqrt(reynolds(moore)), 9);
    const shaped = sphericitySlipSpeed({ ...chip, sphericity: 0.7 });
    expect(drag(shaped)).toBeCloseTo(sphericityDrag({ reynolds: reynolds(shaped), sphericity: 0.7 }), 6);
  });

  it("by Moore in very thick fluid is 24/40 of Stokes", () => {
    const slow = { ...chip, viscosity: 50 };
    expect(mooreSlipSpeed(slow) / stokesSlipSpeed(slow)).toBeCloseTo(0.6, 9);
  });

  it("by sphericity goes over to Stokes where the fluid is so thick that its drag is of no use", () => {
    const stiff = { ...chip, viscosity: 1e4, sphericity: 0.8 };
    expect(sphericitySlipSpeed(stiff)).toBe(stokesSlipSpeed(stiff));
  });

  it("refuses a chip that floats", () => {
    expect(() => mooreSlipSpeed({ ...chip, chipDensity: 1000 })).toThrow(/chipDensity above fluidDensity/);
  });

  it("as a band spans both methods", () => {
    const annulus = { shape: "annulus", holeDiameter: 0.155, pipeDiameter: 0.089 } as const;
    const fluid = { model: "newtonian", density: 1000, viscosity: 1e-3 } as const;
    const slip = slipBand({ chip: { size: 0.006, density: 2600 }, fluid, annulus, flow: 0.01 });
    const falling = { chipSize: 0.006, chipDensity: 2600, fluidDensity: 1000, viscosity: 1e-3 };
    expect(slip.moore).toBeCloseTo(mooreSlipSpeed(falling), 12);
    expect(slip.chien).toBeCloseTo(chienSlipSpeed(falling), 12);
    expect(slip.speed.low).toBe(Math.min(slip.moore, slip.chien));
    expect(slip.speed.high).toBe(Math.max(slip.moore, slip.chien));
  });

  it("goes by the form that is named, and still shows how far the others lie", () => {
    const annulus = { shape: "annulus", holeDiameter: 0.155, pipeDiameter: 0.089 } as const;
    const fluid = { model: "newtonian", density: 1000, viscosity: 1e-3 } as const;
    const of = (form?: SlipForm) =>
      slipBand({ chip: { size: 0.006, density: 2600 }, fluid, annulus, flow: 0.01, ...(form ? { form } : {}) });
    const mean = of();
    const falling = { chipSize: 0.006, chipDensity: 2600, fluidDensity: 1000, viscosity: 1e-3 };
    expect(of("Moore").speed.mid).toBe(mean.moore);
    expect(of("Chien").speed.mid).toBe(mean.chien);
    expect(of("sphericity").speed.mid).toBeCloseTo(sphericitySlipSpeed({ ...falling, sphericity: 0.8 }), 12);
    for (const form of SLIP_FORMS) {
      const { speed } = of(form);
      expect(speed.low).toBeLessThanOrEqual(Math.min(mean.speed.low, speed.mid));
      expect(speed.high).toBeGreaterThanOrEqual(Math.max(mean.speed.high, speed.mid));
    }
  });
});

describe("cuttings", () => {
  it("reach the limit at the ceiling, and the speed for that rate is the speed there is", () => {
    fc.assert(
      fc.property(double(0.003, 0.03), double(0.01, 0.2), (flow, slipSpeed) => {
        const annulus = { shape: "annulus", holeDiameter: 0.155, pipeDiameter: 0.089 } as const;
        const upholeSpeed = conduitSpeed({ flow, conduit: annulus });
        fc.pre(upholeSpeed > 1.1 * slipSpeed);
        const stream = { holeDiameter: 0.155, flow, transportRatio: transportRatio({ slipSpeed, upholeSpeed }) };
        const rate = rateCeilingByCleaning({ ...stream, shareLimit: 0.05 });
        expect(cuttingsShare({ ...stream, rate })).toBeCloseTo(0.05, 12);
        const needed = upholeSpeedForRate({ rate, slipSpeed, ...annulus, shareLimit: 0.05 });
        expect(needed).toBeCloseTo(upholeSpeed, 9);
      }),
    );
  });

  it("that do not rise leave no rate", () => {
    expect(transportRatio({ slipSpeed: 1, upholeSpeed: 0.5 })).toBe(-1);
    const none = { shareLimit: 0.05, holeDiameter: 0.155, transportRatio: -1, flow: 0.01 };
    expect(rateCeilingByCleaning(none)).toBe(0);
    expect(() => cuttingsShare({ ...none, rate: 0.01 })).toThrow(/transportRatio must be positive/);
  });
});

describe("customs of the trade", () => {
  it("cool a bit with 12 to 15 gpm for each inch, and never below 10 gpm", () => {
    expect(COOLING_FLOW_FLOOR / gpm).toBeCloseTo(10, 3);
    expect((COOLING_FLOW_PER_DIAMETER.low * 0.0254) / gpm).toBeCloseTo(12, 2);
    expect((COOLING_FLOW_PER_DIAMETER.high * 0.0254) / gpm).toBeCloseTo(15, 2);
    expect(coolingFlow(6.125 * 0.0254).low / gpm).toBeCloseTo(73.5, 1);
  });

  it("never let a bare cooling floor pass for enough to clean the demo's 6 1/8 in hole", () => {
    const annulus = { shape: "annulus", holeDiameter: 6.125 * 0.0254, pipeDiameter: 3.5 * 0.0254 } as const;
    expect(conduitSpeed({ flow: COOLING_FLOW_FLOOR, conduit: annulus })).toBeLessThan(LEAST_UPHOLE_SPEED / 4);
  });

  it("count uphole speed in feet a minute", () => {
    const footPerMinute = 0.3048 / 60;
    expect(LEAST_UPHOLE_SPEED / footPerMinute).toBeCloseTo(50, 9);
    expect(PREFERRED_UPHOLE_SPEED / footPerMinute).toBeCloseTo(100, 9);
    expect(UPHOLE_NEEDS.water.low / footPerMinute).toBeCloseTo(150, 9);
    for (const need of Object.values(UPHOLE_NEEDS)) {
      expect(need.least).toBeLessThanOrEqual(need.low);
      expect(need.low).toBeLessThan(need.high);
    }
  });
});
