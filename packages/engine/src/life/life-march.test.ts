import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { foot, mm } from "../../../../tests/support/field-units.ts";
import { usualBed, usualBit, usualLife } from "../../../../tests/support/usual-bit.ts";
import { levelEdgeWear } from "./edge-wear.ts";
import { life } from "./life.ts";
import type { LifeInput } from "./life-input.ts";
import { lifeMarch, type MarchedLife } from "./life-march.ts";
import type { LifeStep } from "./life-step.ts";

const coarse = { cells: 260 } as const;
const shale = usualBed("shale");
const sandstone = { ...usualBed("sandstone"), top: 100 * foot, bottom: 160 * foot };

function marched(input: LifeInput, tell: (step: LifeStep) => boolean = () => false): MarchedLife {
  const march = lifeMarch(input);
  let step = march.next();
  while (!step.done) step = march.next(tell(step.value));
  return step.value;
}

describe("lifeMarch", () => {
  it("goes down bed after bed and hole after hole, and keeps count of hole and time", () => {
    const { steps, end } = marched(usualLife([shale, sandstone], { holes: 3, ...coarse }));
    expect(end.by).toBe("holes drilled");
    const last = steps[steps.length - 1];
    expectClose(last.footage, 3 * 160 * foot, 1e-9);
    expect([...new Set(steps.map(({ holeNumber, bedIndex }) => `${holeNumber}.${bedIndex}`))]).toEqual([
      "1.0",
      "1.1",
      "2.0",
      "2.1",
      "3.0",
      "3.1",
    ]);
    let before = { footage: 0, timeOnBottom: 0 };
    for (const step of steps) {
      expectClose(step.timeOnBottom - before.timeOnBottom, (step.footage - before.footage) / step.rate, 1e-6);
      before = step;
    }
  });

  it("wears every cutter ever further, and loses rate where the weight holds it", () => {
    const { steps } = marched(usualLife([usualBed("limestone")], { holes: 20, ...coarse }));
    for (let k = 1; k < steps.length; k++) {
      steps[k].wornHeights.forEach((height, i) => {
        expect(height).toBeGreaterThanOrEqual(steps[k - 1].wornHeights[i]);
      });
    }
    const held = steps.filter(({ binds }) => binds === "weight");
    expect(held[held.length - 1].rate).toBeLessThan(0.7 * held[0].rate);
    for (const { weight } of held) expectClose(weight, shale.weight, 1e-6);
  });

  it("stops where it is told to, with what it has", () => {
    const { end, steps } = marched(usualLife([shale], coarse), ({ holeNumber }) => holeNumber >= 4);
    expect(end).toEqual({ by: "stopped" });
    expect(steps[steps.length - 1].holeNumber).toBeGreaterThanOrEqual(4);
    expect(steps.length).toBeLessThan(300);
  });

  it("leaves the wear it was given alone, and goes on from it", () => {
    const wear = usualBit.cutters.map(({ faceDiameter }) => levelEdgeWear({ faceDiameter, wornHeight: 1 * mm }));
    const kept = wear.map((row) => [...row]);
    const { steps } = marched(usualLife([sandstone], { holes: 1, wear, ...coarse }));
    expect(wear.map((row) => [...row])).toEqual(kept);
    const worn = { ...usualBit, cutters: usualBit.cutters.map((cutter) => ({ ...cutter, wornHeight: 1 * mm })) };
    const byHeight = marched(usualLife([sandstone], { holes: 1, layout: worn, ...coarse }));
    expectClose(steps[0].rate, byHeight.steps[0].rate, 1e-9);
    expect(steps[0].wornHeights.every((height) => height >= 1 * mm - 1e-12)).toBe(true);
  });

  it("does not wear in ground that does not grind", () => {
    const { end, steps, wornVolumes } = marched(usualLife([{ ...shale, cerchar: 0 }], { holes: 300, ...coarse }));
    expect(end.by).toBe("holes drilled");
    expect(Math.max(...steps[steps.length - 1].wornHeights, ...wornVolumes)).toBe(0);
  });

  it("refuses beds upside down, half holes and wear of another make", () => {
    expect(() => marched(usualLife([{ ...shale, bottom: -1 }]))).toThrow(/thickness of .* must be positive/);
    expect(() => marched(usualLife([shale], { holes: 1.5 }))).toThrow("holes must be a whole number, got 1.5");
    const wear = usualBit.cutters.map(() => new Float64Array(7));
    expect(() => marched(usualLife([shale], { wear }))).toThrow("wear of cutter 1 must have 181 points, got 7");
    expect(() => marched(usualLife([]))).toThrow("number of beds must be positive, got 0");
  });
});

describe("misuse of the march", () => {
  const { length } = usualBit.cutters;
  const refused = (more: Partial<LifeInput>) => expect(() => marched(usualLife([shale], { ...coarse, ...more })));

  it("rows that are too few, each named with what was wanted", () => {
    const wear = [levelEdgeWear({ faceDiameter: 0.013, wornHeight: 0 })];
    refused({ wear }).toThrow(`wear must have a row for each of ${length} cutters, got 1`);
    refused({ exposure: [1 * mm, 2 * mm] }).toThrow(`exposure must have a row for each of ${length} cutters, got 2`);
    refused({ films: [] }).toThrow(`films must have a row for each of ${length} cutters, got 0`);
  });

  it("limits of nothing", () => {
    refused({ ends: { undergauge: 0 } }).toThrow("undergauge must be positive, got 0");
    refused({ ends: { grade: -1 } }).toThrow("grade must be positive, got -1");
  });

  it("a bit that comes in past a limit drills nothing, also where nothing wears it", () => {
    const wear = usualBit.cutters.map(({ faceDiameter }) => levelEdgeWear({ faceDiameter, wornHeight: 3 * mm }));
    const bed = { ...shale, cerchar: 0 };
    const { worn } = life(usualLife([bed], { holes: 1, wear, ends: { grade: 8 }, ...coarse }));
    const { end, footage } = life(usualLife([bed], { wear, ends: { grade: worn.outerGrade }, ...coarse }));
    expect([end.by, footage]).toEqual(["outer grade", 0]);
  });
});

describe("what ends a life", () => {
  const hard = usualBed("granite", { turns: 60 });
  const open = { grade: 8, undergauge: 1, rate: 1e-9, temperature: 5000 };
  const ended = (ends: LifeInput["ends"], more: Partial<LifeInput> = {}) =>
    life(usualLife([hard], { ends: { ...open, ...ends }, ...coarse, ...more }));

  it("the gauge, a grade, the rate: each at its limit, whichever comes first", () => {
    const gauge = ended({ undergauge: 1 * mm });
    expect(gauge.end.by).toBe("gauge");
    expectClose(gauge.worn.undergauge, 1 * mm, 5e-3);
    const outer = ended({ grade: 0.5 });
    expect(outer.end.by).toBe("outer grade");
    expectClose(outer.worn.outerGrade, 0.5, 5e-3);
    const rate = ended({ rate: 0.003 });
    expect(rate.end.by).toBe("rate");
    expect(rate.end.binds).toBe("weight");
    const first = ended({ undergauge: 1 * mm, grade: 0.5, rate: 0.003 });
    expectClose(first.footage, Math.min(gauge.footage, outer.footage, rate.footage), 1e-9);
  });

  it("the inner cutters where they are the worse", () => {
    const wear = usualBit.cutters.map(({ faceDiameter, radius }) =>
      levelEdgeWear({ faceDiameter, wornHeight: radius < 0.03 ? 0.45 * faceDiameter : 0 }),
    );
    expect(ended({ grade: 2.2 }, { wear }).end.by).toBe("inner grade");
  });

  it("heat, with the cutter named, and a finding that says stop", () => {
    const { end, findings } = ended({ temperature: 420 });
    expect(end.by).toBe("heat");
    expect(end.cutter).toBeGreaterThan(0);
    expect(findings[0]).toMatchObject({ code: "life-ends-heat", severity: "stop", unit: "K" });
  });

  it("names the bed it ended in, also where that is the first one of another hole", () => {
    const thin = { ...hard, name: "granite on top", bottom: 0.1 };
    const below = { ...sandstone, top: 0.1, bottom: 30 };
    const ofRate = (rate: number) => life(usualLife([thin, below], { holes: 3, ends: { ...open, rate }, ...coarse }));
    const [first] = ofRate(open.rate).steps;
    const { end, findings, bedIndex, holes } = ofRate(0.999 * first.rate);
    expect(end.by).toBe("rate");
    expect([bedIndex, holes]).toEqual([0, 1]);
    expect(findings.find(({ code }) => code === "life-ends-rate")?.where).toBe("granite on top");
  });

  it("the wings rubbing shows as the rate, with the exposure named", () => {
    const exposure = usualBit.cutters.map(() => 0.9 * mm);
    const { end } = life(usualLife([usualBed("shale")], { exposure, ends: { undergauge: 1, grade: 8 }, ...coarse }));
    expect(end).toMatchObject({ by: "rate", binds: "exposure" });
  });
});
