import { describe, expect, it } from "vitest";
import { type PickPortsInput, pickPorts } from "./pick-ports.ts";

const inch = 0.0254;
const foot = 0.3048;
const gpm = (231 * inch ** 3) / 60;
const psi = 6894.757;
const poundForce = 4.4482216;

const base: PickPortsInput = {
  goal: "cleaning",
  holeDiameter: 6.125 * inch,
  wings: 5,
  density: 8.6 * 119.8264273,
  flow: 150 * gpm,
  pressureForBit: 200 * psi,
  lumpSize: 0.18 * inch,
};

describe("pickPorts", () => {
  it("gives the trade's water-well figures for three of half an inch at 150 gpm: 51 psi, 82 ft/s, HSI .15, 55 lbf", () => {
    // Handbook, flow page: table of port sets for 6-1/8 in, 8.6 ppg, Cd .95.
    const set = pickPorts(base).find(({ count, diameter }) => count === 3 && Math.abs(diameter / inch - 0.5) < 1e-9);
    expect((set?.pressureDrop ?? 0) / psi).toBeCloseTo(51, 0);
    expect((set?.speed ?? 0) / foot).toBeCloseTo(82, 0);
    expect(((set?.powerPerHoleArea ?? 0) / 745.7) * inch ** 2).toBeCloseTo(0.15, 2);
    expect((set?.impact ?? 0) / poundForce).toBeCloseTo(55, 0);
    expect((set?.pressureLeft ?? 0) / psi).toBeCloseTo(149, 0);
  });

  it("puts a set first that no other sound set beats at the goal", () => {
    const sound = (goal: PickPortsInput["goal"]) =>
      pickPorts({ ...base, goal }).filter(
        ({ pressureLeft, plug, speedInWindow }) => pressureLeft >= 0 && plug.level === "rarely" && speedInWindow,
      );
    const [impact] = sound("impact");
    expect(impact.impact).toBe(Math.max(...sound("impact").map((each) => each.impact)));
    const [roomy] = sound("plug resistance");
    expect(roomy.diameter).toBe(Math.max(...sound("plug resistance").map(({ diameter }) => diameter)));
    const [cool] = sound("cooling");
    const [clean] = sound("cleaning");
    expect(cool.washedSlots).toBe(5);
    expect(clean.washedSlots).toBe(5);
    expect(cool.pressureDrop).toBeLessThan(clean.pressureDrop);
    expect(clean.powerPerHoleArea).toBeGreaterThan(cool.powerPerHoleArea);
  });

  it("puts what the pump can pay for first, and of the rest the least drop", () => {
    const picked = pickPorts({ ...base, goal: "impact", pressureForBit: 20 * psi });
    const firstUnpaid = picked.findIndex(({ pressureLeft }) => pressureLeft < 0);
    expect(firstUnpaid).toBeGreaterThan(0);
    const unpaid = picked.slice(firstUnpaid).map(({ pressureDrop }) => pressureDrop);
    expect(unpaid).toEqual([...unpaid].sort((a, b) => a - b));
    expect(picked.slice(0, firstUnpaid).every(({ pressureLeft }) => pressureLeft >= 0)).toBe(true);
  });

  it("offers no port that the body has no room for, and lets a narrow slot decide what plugs", () => {
    const picked = pickPorts({
      ...base,
      largestPort: 0.45 * inch,
      slots: [{ where: "slot 3", width: 0.1 * inch }],
    });
    expect(picked.length).toBeGreaterThan(0);
    expect(picked.every(({ diameter }) => diameter <= 0.45 * inch)).toBe(true);
    expect(picked.every(({ plug }) => plug.level === "will plug" && plug.narrowest.where === "slot 3")).toBe(true);
    expect(pickPorts({ ...base, largestPort: 0.2 * inch })).toEqual([]);
  });
});
