import { describe, expect, it } from "vitest";
import { portFlows } from "./port-flows.ts";
import { portPressureDrop } from "./port-pressure-drop.ts";

describe("portFlows", () => {
  it("splits by area where the coefficients are alike: areas of 1 to 4 take 1/5 and 4/5, at one speed", () => {
    const [small, large] = portFlows(
      [
        { diameter: 0.01, dischargeCoefficient: 0.95 },
        { diameter: 0.02, dischargeCoefficient: 0.95 },
      ],
      0.01,
    );
    expect(small.share).toBeCloseTo(1 / 5, 12);
    expect(large.flow).toBeCloseTo(0.008, 12);
    expect(small.speed).toBeCloseTo(large.speed, 9);
  });

  it("leaves every port at the same drop, and the sharp-edged one slower", () => {
    const ports = [
      { diameter: 0.0127, dischargeCoefficient: 0.7 },
      { diameter: 0.0127, dischargeCoefficient: 0.95 },
      { diameter: 0.0095, dischargeCoefficient: 0.95 },
    ];
    const flows = portFlows(ports, 0.0095);
    const drops = flows.map(({ flow }, k) =>
      portPressureDrop({
        density: 1000,
        flow,
        area: (Math.PI / 4) * ports[k].diameter ** 2,
        dischargeCoefficient: ports[k].dischargeCoefficient,
      }),
    );
    expect(drops[1] / drops[0]).toBeCloseTo(1, 9);
    expect(drops[2] / drops[0]).toBeCloseTo(1, 9);
    expect(flows[0].speed / flows[1].speed).toBeCloseTo(0.7 / 0.95, 9);
    expect(flows.reduce((sum, { flow }) => sum + flow, 0)).toBeCloseTo(0.0095, 12);
  });

  it("refuses a bit without ports", () => {
    expect(() => portFlows([], 0.01)).toThrow(RangeError);
  });
});
