import { describe, expect, it } from "vitest";
import { band, readIn } from "../quantity/index.ts";
import type { Bed } from "./bed.ts";
import { bottomHolePressureDifference, DEFAULT_WATER_LEVEL } from "./bottom-hole-pressure-difference.ts";
import { confinedStrength } from "./confined-strength.ts";
import type { GroundBed } from "./ground-bed.ts";
import { groundColumn } from "./ground-column.ts";
import { rockById } from "./rock-table.ts";
import { shopRock } from "./shop-rock.ts";
import { LEAST_STRENGTH } from "./worked-bed.ts";

const mud = { fluidDensity: 1030, waterLevel: 20 };

function onlyBed(bed: Partial<Bed>, fluid: Parameters<typeof groundColumn>[0] | object = {}): GroundBed {
  const { beds } = groundColumn({ ...mud, ...fluid, beds: [{ name: "bed", top: 0, bottom: 40, ...bed }] });
  const [first] = beds;
  if (!first) throw new Error("no bed");
  return first;
}

const codes = ({ findings }: Pick<GroundBed, "findings">) => findings.map(({ code }) => code);

describe("groundColumn", () => {
  it("works a bed up at the pressure of its middle", () => {
    const bed = onlyBed({ top: 40, bottom: 80, rockId: "limestone" });
    const pressureDifference = bottomHolePressureDifference({ depth: 60, ...mud });
    const { ucs, frictionAngle } = rockById("limestone");
    expect(bed.midDepth).toBe(60);
    expect(bed.pressureDifference).toBe(pressureDifference);
    expect(bed.confinedStrength.mid).toBe(
      confinedStrength({ ucs: ucs.mid, frictionAngle: frictionAngle.mid, pressureDifference }),
    );
    expect(bed.response.mid.specificEnergy).toBeCloseTo(bed.confinedStrength.mid, 3);
  });

  it("takes rock, state and hazards from the phrase", () => {
    const bed = onlyBed({ phrase: "hard gray shale w/ chert" });
    expect(bed).toMatchObject({ rockFrom: "phrase", rock: { id: "shale" } });
    expect(bed.ucs.low).toBe(rockById("shale").ucs.mid);
    expect(bed.hazards).toEqual(expect.arrayContaining(["swelling", "impact", "abrasion"]));
    expect(codes(bed)).toContain("hazard-impact");
  });

  it("says when the strength is only that of the name, and not when it was given", () => {
    expect(codes(onlyBed({ rockId: "shale" }))).toContain("strength-from-table-only");
    const ucsSource = readIn("core test of the neighbour well");
    const tested = onlyBed({ rockId: "shale", ucs: band(2e7, 2.5e7, 3e7), ucsSource });
    expect(codes(tested)).not.toContain("strength-from-table-only");
    expect(tested.working[0]).toMatchObject({ value: 2.5e7, source: ucsSource });
  });

  it("keeps a band as wide as rock goes for ground nobody named, and asks for the name", () => {
    const bed = onlyBed({ phrase: "bedrock" });
    expect(bed).toMatchObject({ rockFrom: "not named", rock: { id: "unnamed" } });
    expect(codes(bed)[0]).toBe("ground-not-named");
    expect(bed.ucs.high / bed.ucs.low).toBeGreaterThan(1000);
  });

  it("notes a phrase that reads otherwise than the rock entered", () => {
    expect(codes(onlyBed({ rockId: "shale", phrase: "broken lime" }))).toContain("phrase-reads-otherwise");
    expect(codes(onlyBed({ rockId: "shale", phrase: "blue shale" }))).not.toContain("phrase-reads-otherwise");
    expect(codes(onlyBed({ phrase: "gravelly, brown" }))).toContain("rock-guessed-from-phrase");
  });

  it("speaks of abrasive ground and not of soft shale", () => {
    expect(codes(onlyBed({ rockId: "granite" }))).toContain("abrasive-bed");
    expect(codes(onlyBed({ rockId: "quartzite" }))).toContain("abrasive-bed");
    expect(codes(onlyBed({ rockId: "shale" }))).not.toContain("abrasive-bed");
    expect(codes(onlyBed({ rockId: "limestone" }))).not.toContain("abrasive-bed");
    expect(onlyBed({ rockId: "quartzite" }).abrasivity.class).toBe("extremely abrasive");
  });

  it("works up the hard bands that the phrase names, at the pressure of the bed, the strongest of them", () => {
    const { stringer, pressureDifference, working } = onlyBed({
      phrase: "soft shale w/ limestone and dolomite ledges",
    });
    const [lime, dolomite] = [rockById("limestone"), rockById("dolomite")];
    const strongest = dolomite.ucs.mid > lime.ucs.mid ? dolomite : lime;
    expect(stringer?.rock.id).toBe(strongest.id);
    const sine = Math.sin(strongest.frictionAngle.mid);
    const confined = strongest.ucs.mid + pressureDifference * (1 + (2 * sine) / (1 - sine));
    expect(stringer?.confinedStrength.mid).toBeCloseTo(confined, 0);
    expect(stringer?.response.mid.specificEnergy).toBeCloseTo(confined * strongest.specificEnergyRatio.mid, 0);
    expect(working.find(({ name }) => name.includes("bands in bed"))?.value).toBe(stringer?.confinedStrength.mid);
    expect(onlyBed({ phrase: "limestone with shale bands" })).not.toHaveProperty("stringer");
  });

  it("asks which rock hard bands are of, where the phrase does not say", () => {
    expect(codes(onlyBed({ phrase: "shale with hard bands" }))).toContain("hard-bands-unnamed");
    expect(codes(onlyBed({ phrase: "shale with limestone bands" }))).not.toContain("hard-bands-unnamed");
  });

  it("uses the stones, not the loose bulk, for how gravel grinds", () => {
    const { abrasivity } = onlyBed({ rockId: "gravel" });
    expect(abrasivity.index.mid).toBeCloseTo((150e6 / 1e6) * rockById("gravel").equivalentQuartz.mid, 9);
  });

  it("finds gaps, from the top of the ground on, and an assumed water level", () => {
    const column = groundColumn({
      fluidDensity: 1030,
      beds: [
        { name: "clay", top: 2, bottom: 10, rockId: "clay" },
        { name: "shale", top: 10, bottom: 30, rockId: "shale" },
        { name: "lime", top: 35, bottom: 50, rockId: "limestone" },
      ],
    });
    expect(column.findings.map(({ code, where, value }) => [code, where, value])).toEqual([
      ["gap-between-beds", "clay", 2],
      ["gap-between-beds", "lime", 5],
      ["water-level-assumed", "ground", DEFAULT_WATER_LEVEL],
    ]);
    expect(column.waterLevel).toBe(DEFAULT_WATER_LEVEL);
    expect(column.working[0]?.value).toBe(43);
  });

  it("refuses beds upside down, overlapping, of unknown rock", () => {
    expect(() => onlyBed({ top: 10, bottom: 5 })).toThrow("thickness of bed must be positive, got -5");
    const overlapping: Bed[] = [
      { name: "a", top: 0, bottom: 10 },
      { name: "b", top: 8, bottom: 20 },
    ];
    expect(() => groundColumn({ ...mud, beds: overlapping })).toThrow("top of b must not lie above the bottom");
    expect(() => onlyBed({ rockId: "grnite" })).toThrow(/near it: granite/);
  });

  it("lets the shop's own rock win over the table's", () => {
    const shale = rockById("shale");
    const own = shopRock({ like: shale, properties: { ucs: band(1e7, 1.5e7, 2e7) }, from: "overrides" });
    expect(onlyBed({ rockId: "shale" }, { shopRocks: [own] }).ucs.mid).toBe(1.5e7);
  });

  it("never hands a cutter ground of no strength", () => {
    const bed = onlyBed({ rockId: "sand", ucs: band(0, 0, 0) }, { fluidDensity: 1.2 });
    expect(bed.confinedStrength.low).toBe(LEAST_STRENGTH);
    expect(bed.response.mid.specificEnergy).toBeGreaterThan(0);
  });

  it("shows a working for every figure, each consistent with the figure", () => {
    const bed = onlyBed({ rockId: "sandstone" });
    expect(bed.working.map(({ value }) => value)).toEqual([
      bed.ucs.mid,
      bed.pressureDifference,
      bed.confinedStrength.mid,
      bed.response.mid.specificEnergy,
      bed.response.mid.contactStress,
      bed.abrasivity.index.mid,
    ]);
  });
});
