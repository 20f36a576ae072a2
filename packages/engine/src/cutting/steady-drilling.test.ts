import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { inch, mm, poundForce, rpm } from "../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../tests/support/profiled-bit.ts";
import { coveringCutters } from "../../../../tests/support/random-layout.ts";
import { sandstoneLike } from "../../../../tests/support/rock-responses.ts";
import { steadyDrilling } from "./steady-drilling.ts";

const layout = profiledBit();
const weight = 2500 * poundForce;
const rotarySpeed = 90 * rpm;
const heat = { rock: { conductivity: 3, diffusivity: 1.3e-6 }, fluidTemperature: 288 };
const input = { layout, response: sandstoneLike, weight, rotarySpeed };
const codes = (result: { readonly findings: readonly { readonly code: string }[] }) =>
  result.findings.map(({ code }) => code);

describe("steadyDrilling", () => {
  const result = steadyDrilling({ ...input, exposure: 6 * mm, heat, responseFrom: "test rock" });

  it("hangs together: weights, torque, energies and shares are those of the cutters", () => {
    const sum = (of: (cutter: (typeof result.cutters)[number]) => number) =>
      result.cutters.reduce((total, cutter) => total + of(cutter), 0);
    expectClose(result.bit.weight, weight, 1e-8);
    expectClose(
      sum((c) => c.axial),
      weight,
      1e-8,
    );
    expectClose(result.bit.cuttingWeight + result.bit.contactWeight, weight, 1e-8);
    expectClose(
      sum((c) => c.torque),
      result.bit.torque,
      1e-12,
    );
    expectClose(
      sum((c) => c.power),
      result.power,
      1e-12,
    );
    expectClose(
      sum((c) => c.volumeShare),
      1,
      1e-12,
    );
    const area = Math.PI * result.holeRadius ** 2;
    expectClose(result.mechanicalEnergy, result.drillingEnergy + weight / area, 1e-8);
    expectClose(result.efficiency * result.drillingEnergy, sandstoneLike.specificEnergy, 1e-12);
    expect(result.efficiency).toBeLessThan(1);
  });

  it("opens every figure to a working with inputs and a source", () => {
    const names = result.working.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(["weight on bit", "rate of penetration", "torque at the bit"]));
    for (const { inputs, value, source } of result.working) {
      expect(inputs.length).toBeGreaterThan(0);
      expect(Number.isFinite(value)).toBe(true);
      expect(source.cite).not.toBe("");
    }
    expect(result.working[0].inputs.some(({ from }) => from === "test rock")).toBe(true);
  });

  it("tells deep cuts from the exposure, heat from the marks, side force from custom", () => {
    expect(codes(result)).not.toContain("exposure-used-up");
    expect(codes(steadyDrilling({ ...input, exposure: 0.1 * mm }))).toContain("exposure-used-up");
    const worn = layout.cutters.map((cutter) => ({ ...cutter, wornHeight: 3 * mm }));
    const fast = { ...input, layout: { ...layout, cutters: worn }, weight: 10 * weight, rotarySpeed: 600 * rpm, heat };
    const hot = codes(steadyDrilling({ ...fast, response: { ...sandstoneLike, contactStress: 300e6 } }));
    expect(hot.some((code) => code === "diamond-too-hot" || code === "wear-quickens")).toBe(true);
    const oneSided = layout.cutters.map((cutter) => ({ ...cutter, azimuth: cutter.radius }));
    const pushed = steadyDrilling({ ...input, layout: { ...layout, cutters: oneSided } });
    expect(pushed.bit.lateralShare).toBeGreaterThan(0.1);
    expect(pushed.findings.find(({ code }) => code === "side-force")?.severity).toBe("caution");
  });

  it("stops at a ring that no cutter sweeps", () => {
    const holed = coveringCutters(0.06).filter((_, i) => i !== 4 && i !== 5);
    const found = steadyDrilling({ ...input, layout: { holeDiameter: 0.12, cutters: holed } }).findings;
    expect(found[0].code).toBe("uncut-ring");
    expect(found[0].severity).toBe("stop");
  });

  it("remarks on discs past gauge, worn cutters without rake, idle and overloaded cutters", () => {
    const cutters = coveringCutters(3 * inch);
    const [one, two, three] = cutters;
    const odd = [
      ...cutters,
      { ...three, azimuth: 1, height: three.height - 9 * mm },
      { ...two, azimuth: 2, backRake: 0, wornHeight: 0.2 * mm },
      { ...one, radius: 3 * inch - 3 * mm },
      { ...one, radius: 0.05, height: 3 * mm, faceDiameter: 48 * mm },
    ];
    const all = codes(steadyDrilling({ ...input, layout: { holeDiameter: 6 * inch, cutters: odd } }));
    for (const code of ["ground-far-to-gauge", "worn-without-back-rake", "idle-cutter", "uneven-share"]) {
      expect(all).toContain(code);
    }
  });

  it("refuses to drill without weight or speed", () => {
    expect(() => steadyDrilling({ ...input, weight: 0 })).toThrow("weight must be positive, got 0");
    expect(() => steadyDrilling({ ...input, rotarySpeed: -1 })).toThrow("rotarySpeed must be positive, got -1");
  });
});
