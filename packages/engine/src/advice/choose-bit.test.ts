import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { groundColumn, rockIds } from "../ground/index.ts";
import { exactBand } from "../quantity/index.ts";
import { type AdvisedBed, advisedBedOf } from "./advised-bed.ts";
import { type BitChoice, type ChooseBitInput, chooseBit } from "./choose-bit.ts";

const inch = 0.0254;
const degree = Math.PI / 180;
const MPa = 1e6;
const gpm = 231 * inch ** 3 * (1 / 60);

function bedsOf(...rocks: readonly (readonly [rockId: string, thickness: number])[]): AdvisedBed[] {
  let top = 0;
  const beds = rocks.map(([rockId, thickness], at) => {
    const bed = { name: `${rockId} ${at}`, rockId, top, bottom: top + thickness };
    top = bed.bottom;
    return bed;
  });
  return groundColumn({ beds, fluidDensity: 1000 }).beds.map(advisedBedOf);
}

function choose(beds: readonly AdvisedBed[], more: Partial<ChooseBitInput> = {}): BitChoice {
  return chooseBit({
    holeDiameter: 6.125 * inch,
    beds,
    from: 0,
    to: beds.at(-1)?.bottom ?? 0,
    fluid: "bentonite",
    density: 1030,
    pump: { flow: 150 * gpm, pressureForBit: 1.4 * MPa },
    ...more,
  });
}

const CHOICES = [
  "cutter",
  "chamfer",
  "backRake",
  "sideRake",
  "wings",
  "sweep",
  "profile",
  "body",
  "leached",
  "ports",
  "gauge",
] as const;

const mixed = bedsOf(["shale", 30], ["limestone", 30], ["sandstone", 20]);

describe("chooseBit", () => {
  it("gives the usual bit in the usual ground of a house well", () => {
    const bit = choose(mixed);
    expect(bit.cutter.value.code).toBe("1608");
    expect(bit.chamfer.value.angle).toBeCloseTo(16 * degree, 12);
    expect(bit.wings.value).toEqual({ wings: 5, cuttersPerWing: 3 });
    expect(bit.backRake.value.centre).toBeCloseTo(10 * degree, 12);
    expect(bit.body.value).toBe("steel");
    expect(bit.ports.value.diameter).toBeCloseTo(0.5 * inch, 9);
    expect(bit.findings).toEqual([]);
  });

  it("takes 13 mm cutters in a 4 3/4 in hole, because more do not fit", () => {
    const bit = choose(mixed, { holeDiameter: 4.75 * inch, pump: { flow: 90 * gpm, pressureForBit: MPa } });
    expect(bit.cutter.value.code).toBe("1308");
    expect(bit.cutter.reasons.map(({ rule }) => rule)).toContain("cutter size by hole");
  });

  it("leaves the edge sharp in clay alone, with three or four wings and a flat face", () => {
    const bit = choose(bedsOf(["clay", 20]));
    expect(bit.chamfer.value).toEqual({ angle: 0, width: 0 });
    expect(bit.wings.value.wings).toBe(4);
    expect(bit.profile.value).toBe("flat");
    expect(choose(bedsOf(["clay", 20]), { holeDiameter: 4 * inch }).wings.value.wings).toBe(3);
    expect(choose(bedsOf(["clay", 20]), { holeDiameter: 8.5 * inch }).cutter.value.code).toBe("1908");
  });

  it("turns to small cutters, a steep bevel, more rake and a rounder nose where stones strike", () => {
    const stony = mixed.map((bed, at) => (at === 1 ? { ...bed, hazards: ["impact" as const] } : bed));
    const bit = choose(stony);
    expect(bit.cutter.value.code).toBe("1308");
    expect(bit.chamfer.value.angle).toBeCloseTo(20 * degree, 12);
    expect(bit.backRake.value.centre).toBeCloseTo(15 * degree, 12);
    expect(bit.profile.value).toBe("short parabolic");
    expect(bit.body.value).toBe("steel");
  });

  it("turns to matrix, diamond gauge and leached cutters where most of the footage wears", () => {
    const bit = choose(bedsOf(["hard-sandstone", 40], ["shale", 10]));
    expect(bit.body.value).toBe("matrix");
    expect(bit.gauge.value.protection).toBe("diamond");
    expect(bit.leached.value).toBe(true);
  });

  it("leaches on air even in soft ground", () => {
    const bit = choose(bedsOf(["shale", 40]), { fluid: "air", density: 5 });
    expect(bit.leached.value).toBe(true);
    expect(bit.findings.map(({ code }) => code)).toContain("ports-not-sized-on-gas");
  });

  it("sees a thin hard bed between soft ones, and sizes the cutters for it", () => {
    const bit = choose(bedsOf(["shale", 30], ["limestone", 1], ["shale", 30]));
    expect(bit.mix.stringerBeds).toEqual(["limestone 1"]);
    expect(bit.cutter.value.code).toBe("1308");
    expect(bit.findings.map(({ code }) => code)).toContain("hard-stringer");
  });

  it("leaves unfit beds out of the mix, and says so when nothing is left", () => {
    expect(choose(bedsOf(["gravel", 10], ["shale", 30])).mix.footage).toBeCloseTo(30, 9);
    const bit = choose(bedsOf(["granite", 30]));
    expect(bit.findings).toContainEqual(expect.objectContaining({ code: "no-ground-for-this-bit", severity: "stop" }));
    expect(bit.cutter.value.code).toBe("0808");
  });

  it("weighs only the stretch the bit drills", () => {
    const bit = choose(bedsOf(["clay", 20], ["shale", 30]), { from: 25 });
    expect(bit.mix.footage).toBeCloseTo(25, 9);
    expect(bit.mix.soilShare).toBe(0);
  });

  it("doubts itself outside the holes its rules come from", () => {
    expect(choose(mixed, { holeDiameter: 2.5 * inch }).findings.map(({ code }) => code)).toContain(
      "hole-outside-advice",
    );
  });

  it("refuses a stretch without ground", () => {
    expect(() => choose(mixed, { from: 500, to: 510 })).toThrow("number of beds in the hole must be positive, got 0");
  });
});

describe("laws of the choice", () => {
  const anyHole = fc.double({ min: 3, max: 12.25, noNaN: true }).map((size) => size * inch);
  const anyColumn = fc
    .array(fc.tuple(fc.constantFrom(...rockIds), fc.double({ min: 2, max: 60, noNaN: true })), {
      minLength: 1,
      maxLength: 6,
    })
    .map((rocks) => bedsOf(...rocks));
  const anyFlow = fc.double({ min: 30, max: 600, noNaN: true }).map((flow) => flow * gpm);

  it("explains every choice, for any hole, ground and pump, and always the same way", () => {
    fc.assert(
      fc.property(anyHole, anyColumn, anyFlow, (holeDiameter, beds, flow) => {
        const pump = { flow, pressureForBit: MPa };
        const bit = choose(beds, { holeDiameter, pump });
        for (const name of CHOICES) {
          expect(bit[name].reasons.length, name).toBeGreaterThanOrEqual(1);
          expect(bit[name].alternatives.length, name).toBeGreaterThanOrEqual(1);
        }
        expect(choose(beds, { holeDiameter, pump })).toEqual(bit);
      }),
      { numRuns: 60 },
    );
  });

  it("keeps what it chooses within the ranges of the trade", () => {
    fc.assert(
      fc.property(anyHole, anyColumn, anyFlow, (holeDiameter, beds, flow) => {
        const bit = choose(beds, { holeDiameter, pump: { flow, pressureForBit: MPa } });
        const { wings, cuttersPerWing } = bit.wings.value;
        expect(wings).toBeGreaterThanOrEqual(3);
        expect(wings).toBeLessThanOrEqual(6);
        const seats = holeDiameter / 2 / (bit.cutter.value.faceDiameter + 0.0015);
        expect(cuttersPerWing).toBeLessThanOrEqual(seats);
        expect(bit.backRake.value.centre / degree).toBeGreaterThan(4.9);
        expect(bit.backRake.value.centre / degree).toBeLessThan(15.1);
        expect(bit.backRake.value.gauge / degree).toBeGreaterThan(19.9);
        expect(bit.backRake.value.gauge / degree).toBeLessThan(30.1);
        expect(bit.ports.value.diameter).toBeGreaterThanOrEqual(0.5 * inch - 1e-12);
      }),
      { numRuns: 60 },
    );
  });

  it("never gives harder rock a sharper bevel or a larger cutter", () => {
    const anyStrength = fc.double({ min: 0.1, max: 300, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...rockIds), anyStrength, anyStrength, (id, one, other) => {
        const at = (strength: number) =>
          choose(bedsOf([id, 30]).map((bed) => ({ ...bed, confinedStrength: exactBand(strength * MPa) })));
        const soft = at(Math.min(one, other));
        const hard = at(Math.max(one, other));
        expect(hard.chamfer.value.angle).toBeGreaterThanOrEqual(soft.chamfer.value.angle);
        expect(hard.chamfer.value.width).toBeGreaterThanOrEqual(soft.chamfer.value.width);
        expect(hard.cutter.value.faceDiameter).toBeLessThanOrEqual(soft.cutter.value.faceDiameter);
      }),
    );
  });
});
