import { describe, expect, it } from "vitest";
import { bitwright, projectFile } from "../support/command.ts";

const houseWell = projectFile("examples/house-well.traveler.json");

interface PrintedSet {
  readonly count: number;
  readonly diameter: number;
  readonly speed: number;
  readonly pressureDrop: number;
  readonly pressureLeft: number;
  readonly impact: number;
}
const printed = (goal: string) => {
  const { out } = bitwright("ports", houseWell, "--goal", goal, "--sets", "3", "--json");
  return JSON.parse(out) as { sets: PrintedSet[]; slots: { area: number }[]; pressureForBit: number };
};

describe("bitwright ports", () => {
  it("prints as many sets as asked for, each with its cost, and the slots of the five wings", () => {
    const { status, out } = bitwright("ports", houseWell, "--goal", "plug-resistance", "--sets", "2");
    expect(status).toBe(0);
    expect(out).toMatch(/^Ports for plug resistance/);
    expect(out.match(/^\d of .* in +[\d.]+ psi/gm)).toHaveLength(2);
    expect(out.match(/^slot \d/gm)).toHaveLength(5);
  });

  it("gives JSON in SI whose figures hang together, and the hardest jets for impact", () => {
    const { sets, slots, pressureForBit } = printed("impact");
    expect(sets).toHaveLength(3);
    expect(slots).toHaveLength(5);
    for (const { count, diameter, speed, impact, pressureDrop, pressureLeft } of sets) {
      // Momentum of the jets ρ Q v, with ρ from the drop itself: Δp = ρ v²/(2 · 0.95²).
      const density = (2 * 0.95 ** 2 * pressureDrop) / speed ** 2;
      const flow = (speed * count * Math.PI * diameter ** 2) / 4;
      expect(impact / (density * flow * speed)).toBeCloseTo(1, 9);
      expect(pressureDrop + pressureLeft).toBeCloseTo(pressureForBit, 3);
    }
    expect(sets[0].impact).toBeGreaterThan(sets[1].impact);
    expect(printed("plug-resistance").sets[0].diameter).toBeGreaterThan(sets[0].diameter);
  });

  it("says which goals there are when asked for another", () => {
    const unknown = bitwright("ports", houseWell, "--goal", "speed");
    expect(unknown.status).toBe(2);
    expect(unknown.err.trim()).toBe('--goal: got "speed"; give one of cooling, cleaning, plug-resistance, impact');
  });
});
