import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type PortsForPumpInput, portsForPump } from "./ports-for-pump.ts";

const inch = 0.0254;
const foot = 0.3048;
const gpm = (231 * inch ** 3) / 60;
const MPa = 1e6;

const base: PortsForPumpInput = {
  holeDiameter: 6.125 * inch,
  wings: 5,
  fluid: "water",
  density: 1000,
  flow: 150 * gpm,
  pressureForBit: 1.5 * MPa,
  sticky: false,
};
const codes = (input: PortsForPumpInput) => portsForPump(input).findings.map(({ code }) => code);

describe("portsForPump", () => {
  it("gives three of half an inch at 150 gpm: 82 ft/s, the figures of the trade's water-well table", () => {
    const ports = portsForPump({ ...base, density: 8.6 * 119.8264273 });
    expect(ports.value.count).toBe(3);
    expect(ports.value.diameter).toBeCloseTo(inch / 2, 12);
    expect((ports.speed ?? 0) / foot).toBeCloseTo(82, 0);
    expect((ports.pressureDrop ?? 0) / 6894.757).toBeCloseTo(51, 0);
  });

  it("goes to 3/8 in behind a fine screen where the flow is small, and never below", () => {
    const ports = portsForPump({ ...base, flow: 70 * gpm, lumpSize: 0.003 });
    expect(ports.value.diameter).toBeCloseTo(0.375 * inch, 12);
    expect(codes({ ...base, flow: 70 * gpm })).toContain("port-speed-low");
    expect(codes({ ...base, flow: 70 * gpm, lumpSize: 0.003 })).not.toContain("port-speed-low");
  });

  it("lets the largest lump through, and says when two would bridge", () => {
    const ports = portsForPump({ ...base, lumpSize: 0.014 });
    expect(ports.value.diameter).toBeGreaterThanOrEqual(0.014);
    expect(ports.findings.map(({ code }) => code)).toContain("screen-coarse-for-ports");
  });

  it("runs faster where the face may ball", () => {
    const plain = portsForPump({ ...base, flow: 300 * gpm });
    const sticky = portsForPump({ ...base, flow: 300 * gpm, sticky: true });
    expect(sticky.speed ?? 0).toBeGreaterThan(plain.speed ?? 0);
  });

  it("says when the pump has too little pressure for any of them, and takes the largest area then", () => {
    const ports = portsForPump({ ...base, flow: 600 * gpm, pressureForBit: 1000 });
    expect(ports.findings.map(({ code }) => code)).toContain("port-drop-over-pump");
    expect(ports.value.count).toBe(5);
  });

  it("leaves speed and drop out on air", () => {
    const ports = portsForPump({ ...base, fluid: "air", density: 5 });
    expect(ports.speed).toBeUndefined();
    expect(ports.value.count).toBe(3);
  });

  it("takes no more pressure than the pump has whenever some set of ports does not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 12, noNaN: true }),
        fc.integer({ min: 3, max: 6 }),
        fc.double({ min: 20, max: 700, noNaN: true }),
        fc.double({ min: 0.02, max: 3, noNaN: true }),
        (hole, wings, flow, pressure) => {
          const input = { ...base, holeDiameter: hole * inch, wings, flow: flow * gpm, pressureForBit: pressure * MPa };
          const ports = portsForPump(input);
          expect(ports.value.count).toBeGreaterThanOrEqual(Math.ceil(wings / 2));
          expect(ports.value.count).toBeLessThanOrEqual(wings);
          const over = ports.findings.some(({ code }) => code === "port-drop-over-pump");
          expect((ports.pressureDrop ?? 0) > input.pressureForBit).toBe(over);
          // Where even these are too tight, no larger area can have been at hand.
          if (over) expect(ports.value.count).toBe(wings);
        },
      ),
    );
  });

  it("refuses a pump without flow", () => {
    expect(() => portsForPump({ ...base, flow: 0 })).toThrow("flow must be positive, got 0");
  });
});
