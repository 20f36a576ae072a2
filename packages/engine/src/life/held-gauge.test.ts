import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { inch, mm } from "../../../../tests/support/field-units.ts";
import { usualBed, usualBit, usualLife, usualPads } from "../../../../tests/support/usual-bit.ts";
import { levelEdgeWear } from "./edge-wear.ts";
import { gaugeAfter, type HeldGauge, withGauge } from "./held-gauge.ts";
import { life } from "./life.ts";
import type { LifeInput } from "./life-input.ts";
import { type OnWall, padWear, sideLossAtWall } from "./wall-wear.ts";
import { wearStateOf } from "./wear-state.ts";

const fresh: HeldGauge = { ownLoss: 0, sideLoss: 0, ring: 0 };
const pads = { area: 8e-4, wearMultiple: 20 };
const wall: OnWall = {
  wearCoefficient: 3e-16,
  sideForce: 20,
  advance: 4 * mm,
  holeRadius: 77.8 * mm,
  contactStress: 60e6,
  kappa: 5,
  pads,
};
const landArea = 2e-5;

describe("gaugeAfter", () => {
  it("comes to a ring at which the pads lose as fast as the cutters", () => {
    const a = 1e-6;
    const { bySideForce, byRing } = padWear(wall, pads);
    const far = gaugeAfter(fresh, { ownLoss: a * 1e5, length: 1e5, wall, landArea });
    expectClose(far.ring, (a - bySideForce) / byRing, 1e-9);
    expectClose(bySideForce + byRing * far.ring, a, 1e-9);
    expect(far.sideLoss).toBe(0);
  });

  // The same balance marched in small steps: what pads and cutters lose, each added up by itself.
  it("is what small steps of the balance add up to, also where the ring is ground away on the way", () => {
    for (const sideForce of [0, 20, 400]) {
      const on = { ...wall, sideForce };
      const a = 3e-7;
      const length = 800;
      const from: HeldGauge = { ownLoss: 0.1 * mm, sideLoss: 0, ring: 0.05 * mm };
      const { bySideForce, byRing } = padWear(on, pads);
      const shared = sideLossAtWall({ ...on, ownLoss: a, landArea });
      let cutters = from.ownLoss;
      let padsLost = from.ownLoss - from.ring;
      const steps = 200_000;
      for (let k = 0; k < steps; k++) {
        const proud = cutters - padsLost;
        const step = length / steps;
        if (proud > 0 || a > bySideForce) {
          cutters += a * step;
          padsLost = Math.min(cutters, padsLost + (bySideForce + byRing * proud) * step);
        } else {
          cutters += (a + shared) * step;
          padsLost = cutters;
        }
      }
      const { ownLoss, sideLoss, ring } = gaugeAfter(from, {
        ownLoss: from.ownLoss + a * length,
        length,
        wall: on,
        landArea,
      });
      expectClose(ownLoss + sideLoss, cutters, 1e-4);
      expectClose(ownLoss + sideLoss - ring, padsLost, 1e-4);
    }
  });

  it("does not care where a length is cut in two", () => {
    const some = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(some(0, 2000), some(0, 3e-6), some(0, 1e-3), some(0.05, 0.95), (sideForce, a, ring, share) => {
        const on = { ...wall, sideForce };
        const go = (from: HeldGauge, length: number) =>
          gaugeAfter(from, { ownLoss: from.ownLoss + a * length, length, wall: on, landArea });
        const whole = go({ ...fresh, ring }, 300);
        const halves = go(go({ ...fresh, ring }, 300 * share), 300 * (1 - share));
        expect(Math.abs(halves.ring - whole.ring)).toBeLessThan(1e-10);
        expect(Math.abs(halves.sideLoss - whole.sideLoss)).toBeLessThan(1e-10);
      }),
    );
  });

  it("keeps a ring in ground that does not grind", () => {
    const held = gaugeAfter(
      { ...fresh, ring: 1 * mm },
      { ownLoss: 0, length: 100, wall: { ...wall, wearCoefficient: 0 }, landArea },
    );
    expect(held).toEqual({ ownLoss: 0, sideLoss: 0, ring: 1 * mm });
  });

  it("is shown on the bit: the ring takes off the loss, side force adds to it", () => {
    const edges = wearStateOf(usualBit)(usualBit.cutters.map(levelEdgeWear));
    const { undergauge, cutterUndergauge } = withGauge(edges, { ownLoss: 1 * mm, sideLoss: 0.5 * mm, ring: 0.2 * mm });
    expectClose(cutterUndergauge, 3 * mm, 1e-12);
    expectClose(undergauge, 2.6 * mm, 1e-12);
  });
});

describe("gauge pads over a life", () => {
  const feet = (id: string, more: Partial<LifeInput>) => life(usualLife([usualBed(id)], { cells: 260, ...more }));
  const { gaugePads: _, ...bare } = usualLife([]);

  it("longer pads last longer, and better protected ones, and any more than none", () => {
    for (const id of ["sandstone", "granite"]) {
      const by = (gaugePads: LifeInput["gaugePads"]) => feet(id, { gaugePads }).footage;
      const none = life({ ...bare, beds: [usualBed(id)], cells: 260 }).footage;
      const lengths = [0.5, 1, 2].map((inches) => by({ ...usualPads, length: inches * inch }));
      const faces = (["hardfacing", "carbide", "diamond"] as const).map((protection) =>
        by({ ...usualPads, protection }),
      );
      for (const row of [
        [none, ...lengths],
        [none, ...faces],
      ]) {
        row.slice(1).forEach((footage, k) => {
          expect(footage).toBeGreaterThan(1.02 * row[k]);
        });
      }
    }
  });

  it("says when pads hold the gauge, when side force wears it, and that nothing is known of pads", () => {
    const codes = (more: Partial<LifeInput>) => feet("sandstone", more).findings.map(({ code }) => code);
    expect(codes({ gaugePads: { ...usualPads, protection: "diamond" } })).toContain("pads-hold-gauge");
    // All wings drawn to one side: the cutters push the bit against the wall.
    const cutters = usualBit.cutters.map((cutter) => ({ ...cutter, azimuth: 0.3 * (cutter.azimuth % (2 * Math.PI)) }));
    const leaning = {
      layout: { ...usualBit, cutters },
      gaugePads: { ...usualPads, protection: "hardfacing" },
    } as const;
    expect(codes(leaning)).toContain("side-force-wears-gauge");
    expect(codes({})).not.toContain("side-force-wears-gauge");
    const none = life({ ...bare, beds: [usualBed("sandstone")], cells: 260 }).findings.map(({ code }) => code);
    expect(none).toContain("gauge-pads-left-out");
  });

  it("shows in its workings what the gauge came to", () => {
    const { working, worn } = feet("sandstone", { gaugePads: { ...usualPads, protection: "diamond" } });
    const of = (name: string) => working.find((one) => one.name === name) ?? expect.fail(name);
    const [lost, ring] = of("diameter lost at the gauge").inputs.map(({ value }) => value);
    expectClose(lost - 2 * ring, worn.undergauge, 1e-12);
    expectClose(of("diameter lost at the gauge cutters").value, worn.cutterUndergauge, 1e-12);
    const { inputs, value } = of("wear of the gauge pads for each metre of ring, sandstone");
    const [M, k, kappa, stress, radius, area] = inputs.map((input) => input.value);
    expectClose((M * k * kappa * stress * 2 * Math.PI * radius) / area, value, 1e-12);
  });

  it("refuses pads that wear less than nothing", () => {
    expect(() => feet("sandstone", { padWearMultiple: -1 })).toThrow("padWearMultiple must not be negative, got -1");
  });
});
