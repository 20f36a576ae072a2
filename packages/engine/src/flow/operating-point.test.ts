import { describe, expect, it } from "vitest";
import { operatingPoint } from "./operating-point.ts";

/** A circuit that loses 10 GPa for each (m³/s)²: 1 MPa at 10 L/s. */
const circuitPressure = (flow: number) => 1e10 * flow ** 2;

describe("where pump and circuit meet", () => {
  it("is the flow asked of a piston pump under its rating", () => {
    const point = operatingPoint({ pump: { flow: 0.008, pressureRating: 8e5 }, circuitPressure });
    expect(point).toEqual({ flow: 0.008, pressure: circuitPressure(0.008), heldBy: "flow asked" });
    expect(operatingPoint({ pump: { flow: 0.5 }, circuitPressure }).heldBy).toBe("flow asked");
  });

  it("is the flow at the rating where the flow asked would take more", () => {
    const { flow, pressure, heldBy } = operatingPoint({ pump: { flow: 0.02, pressureRating: 9e5 }, circuitPressure });
    // √(9e5/1e10) = √9e-5.
    expect(flow).toBeCloseTo(Math.sqrt(9e-5), 8);
    expect(pressure).toBeCloseTo(9e5, 0);
    expect(heldBy).toBe("pressure rating");
  });

  it("is the crossing with the curve of a centrifugal pump, more or less than was asked", () => {
    // 1e10 Q² = 5e5 - 4e7 Q, by the formula of the square: Q = (-4e7 + √(1.6e15 + 2e16))/2e10 = 5.3485e-3.
    const curve = [
      { flow: 0, pressure: 5e5 },
      { flow: 0.0125, pressure: 0 },
    ];
    for (const asked of [0.001, 0.012]) {
      const { flow, heldBy } = operatingPoint({ pump: { flow: asked, curve }, circuitPressure });
      expect(flow).toBeCloseTo((-4e7 + Math.sqrt(4e7 ** 2 + 4 * 1e10 * 5e5)) / 2e10, 8);
      expect(heldBy).toBe("pump curve");
    }
  });

  it("is the end of the curve where the circuit asks for next to nothing", () => {
    const curve = [
      { flow: 0, pressure: 5e5 },
      { flow: 0.004, pressure: 4e5 },
    ];
    const { flow, heldBy } = operatingPoint({ pump: { flow: 0.001, curve }, circuitPressure });
    expect([flow, heldBy]).toEqual([0.004, "end of the pump curve"]);
  });

  it("is no flow where a thick fluid does not move under what the pump has", () => {
    const stiff = (flow: number) => 6e5 + circuitPressure(flow);
    const held = operatingPoint({ pump: { flow: 0.01, pressureRating: 5e5 }, circuitPressure: stiff });
    expect(held).toEqual({ flow: 0, pressure: 5e5, heldBy: "nothing moves" });
  });

  it("is the flow before the jump where the circuit's pressure jumps over what the pump has", () => {
    const jumping = (flow: number) => (flow < 0.004 ? 1e5 : 9e5);
    const { flow, pressure } = operatingPoint({ pump: { flow: 0.01, pressureRating: 5e5 }, circuitPressure: jumping });
    expect(flow).toBeCloseTo(0.004, 9);
    expect(pressure).toBe(1e5);
  });
});
