import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../../tests/support/close-to.ts";
import { resonanceWindows } from "./resonance.ts";
import { STEEL_SHEAR_MODULUS, STEEL_YOUNGS_MODULUS, stringMode } from "./string-mode.ts";

const density = 7850;
/** A plain pipe of 3 1/2 in by its own steel. */
const pipe = (length: number, outerDiameter = 0.0889, bore = 0.0702) => ({
  outerDiameter,
  bore,
  length,
  linearWeight: density * 9.80665 * (Math.PI / 4) * (outerDiameter ** 2 - bore ** 2),
});

describe("stringMode", () => {
  it("of one plain pipe is C = G J/L, I = ρ J L/3, M = ρ A L, E A/L, and quarter waves of the bar", () => {
    const [length, outer, bore] = [120, 0.0889, 0.0702];
    const found = stringMode([pipe(length, outer, bore)]);
    const polar = (Math.PI / 32) * (outer ** 4 - bore ** 4);
    const area = (Math.PI / 4) * (outer ** 2 - bore ** 2);
    expectClose(found.torsionalStiffness, (STEEL_SHEAR_MODULUS * polar) / length, 1e-12);
    expectClose(found.inertia, (density * polar * length) / 3, 1e-12);
    expectClose(found.mass, density * area * length, 1e-12);
    expectClose(found.axialStiffness, (STEEL_YOUNGS_MODULUS * area) / length, 1e-12);
    expectClose(found.torsionalSpeed, ((Math.PI / 2) * Math.sqrt(STEEL_SHEAR_MODULUS / density)) / length, 1e-9);
    expectClose(found.axialSpeed, ((Math.PI / 2) * Math.sqrt(STEEL_YOUNGS_MODULUS / density)) / length, 1e-9);
    // Rayleigh's rule reads √3 over π/2 of it: a tenth high.
    const oneMode = Math.sqrt(found.torsionalStiffness / found.inertia);
    expectClose(oneMode / found.torsionalSpeed, Math.sqrt(3) / (Math.PI / 2), 1e-9);
  });

  it("does not mind into how many pieces the pipe is told", () => {
    const whole = stringMode([pipe(90)]);
    const parts = stringMode([pipe(20), pipe(30), pipe(40)]);
    for (const name of ["inertia", "torsionalStiffness", "mass", "axialStiffness", "torsionalSpeed"] as const) {
      expectClose(parts[name], whole[name], 1e-9);
    }
  });

  it("with a heavy stiff collar on a thin long pipe is near a mass on a spring", () => {
    const found = stringMode([pipe(12, 0.2, 0.05), pipe(300, 0.06, 0.05)]);
    const simple = Math.sqrt(found.torsionalStiffness / found.inertia);
    expectClose(simple, found.torsionalSpeed, 0.02);
  });

  it("refuses pipe without wall, length or weight", () => {
    expect(() => stringMode([])).toThrow("number of sections must be positive, got 0");
    expect(() => stringMode([pipe(10, 0.05, 0.06)])).toThrow(/must be positive/);
    expect(() => stringMode([pipe(0)])).toThrow("length must be positive, got 0");
  });
});

describe("resonanceWindows", () => {
  it("stand about the natural speeds and their parts by the number of wings", () => {
    const windows = resonanceWindows({ string: { torsionalSpeed: 60, axialSpeed: 100 }, wings: 5 });
    expect(windows.map(({ from, to }) => [from, to].map((one) => Number(one.toFixed(6))))).toEqual([
      [10.2, 13.8],
      [51, 69],
      [17, 23],
      [85, 115],
    ]);
    expect(windows[0].why).toBe("5 wings a turn in step with the string's twist");
  });
});
