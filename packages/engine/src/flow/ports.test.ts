import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hydraulicPower, hydraulicPowerPerHoleArea } from "./hydraulic-power.ts";
import { impactForce } from "./impact-force.ts";
import { jetSizing, optimumPortShare } from "./jet-sizing.ts";
import { portArea } from "./port-area.ts";
import { portPressureDrop } from "./port-pressure-drop.ts";
import { portSpeed } from "./port-speed.ts";

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ports = fc.record({
  density: positive(900, 2000),
  flow: positive(1e-4, 0.1),
  area: positive(1e-5, 1e-2),
  dischargeCoefficient: positive(0.5, 1.05),
});

describe("ports", () => {
  it("lose four times as much at double the flow", () => {
    fc.assert(
      fc.property(ports, (input) => {
        const ratio = portPressureDrop({ ...input, flow: 2 * input.flow }) / portPressureDrop(input);
        expect(ratio).toBeCloseTo(4, 9);
      }),
    );
  });

  it("carry the momentum ρ Q v in their own drop", () => {
    fc.assert(
      fc.property(ports, (input) => {
        const force = impactForce({ ...input, pressureDrop: portPressureDrop(input) });
        expect(force / (input.density * input.flow * portSpeed(input))).toBeCloseTo(1, 9);
      }),
    );
  });

  it("add their areas", () => {
    expect(portArea([0.01, 0.02])).toBeCloseTo(Math.PI * (0.005 ** 2 + 0.01 ** 2), 15);
    expect(() => portArea([])).toThrow(/number of ports/);
    expect(() => portArea([0.01, 0])).toThrow(/portDiameter must be positive, got 0/);
  });

  it("refuse an input that is not positive, by name", () => {
    const input = { density: 1000, flow: 0.01, area: 1e-3, dischargeCoefficient: 0.95 };
    expect(() => portPressureDrop({ ...input, area: -1 })).toThrow("area must be positive, got -1");
    expect(() => portSpeed({ flow: 0, area: 1 })).toThrow(/flow/);
  });

  it("spread their power over the hole bottom", () => {
    const power = hydraulicPower({ pressureDrop: 4e5, flow: 0.01 });
    expect(power).toBe(4000);
    expect(hydraulicPowerPerHoleArea({ power, holeDiameter: 2 / Math.sqrt(Math.PI) })).toBeCloseTo(4000, 9);
  });
});

describe("jet sizing", () => {
  const base = {
    fast: { flow: 0.02, pumpPressure: 2e6 },
    slow: { flow: 0.012, pumpPressure: 8e5 },
    density: 1100,
    portArea: 6e-4,
    dischargeCoefficient: 0.95,
    pressureLimit: 2e6,
  } as const;

  it("keeps to the pressure limit at its own flow", () => {
    for (const aim of ["power", "impact"] as const) {
      const sized = jetSizing({ ...base, aim });
      const parasitic = sized.fastParasiticLoss * (sized.flow / base.fast.flow) ** sized.exponent;
      const atPorts = portPressureDrop({ ...base, flow: sized.flow, area: sized.portArea });
      expect(parasitic + atPorts).toBeCloseTo(base.pressureLimit, 3);
    }
  });

  it("cannot be bettered by a little more or less flow", () => {
    const gain = (aim: "power" | "impact", factor: number) => {
      const sized = jetSizing({ ...base, aim });
      const flow = sized.flow * factor;
      const left = base.pressureLimit - sized.parasiticLoss * factor ** sized.exponent;
      return aim === "power" ? left * flow : flow * Math.sqrt(left);
    };
    for (const aim of ["power", "impact"] as const) {
      expect(gain(aim, 1)).toBeGreaterThan(gain(aim, 1.02));
      expect(gain(aim, 1)).toBeGreaterThan(gain(aim, 0.98));
    }
    expect(optimumPortShare({ exponent: 2, aim: "impact" })).toBe(0.5);
  });

  it("refuses readings that contradict the ports", () => {
    expect(() => jetSizing({ ...base, aim: "power", portArea: 1e-4 })).toThrow(/slowParasiticLoss must be positive/);
    expect(() => jetSizing({ ...base, aim: "power", fast: base.slow })).toThrow(/fast flow above slow flow/);
  });
});
