import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { groundColumn, type Hazard, rockIds } from "../ground/index.ts";
import { exactBand } from "../quantity/index.ts";
import { type AdvisedBed, advisedBedOf } from "./advised-bed.ts";
import { type BedFit, fitOfBed } from "./fit-of-bed.ts";
import type { Verdict } from "./verdict.ts";

const MPa = 1e6;
const RANK: Readonly<Record<Verdict, number>> = { fit: 0, "fit-with-care": 1, unfit: 2 };

function bedOf(rockId: string, depth = { top: 10, bottom: 20 }): AdvisedBed {
  const { beds } = groundColumn({ beds: [{ name: rockId, rockId, ...depth }], fluidDensity: 1000 });
  const [bed] = beds.map(advisedBedOf);
  if (!bed) throw new Error("the column lost its bed");
  return bed;
}

const limestoneOf = (low: number, mid: number, high: number): AdvisedBed => ({
  ...bedOf("limestone"),
  confinedStrength: { low: low * MPa, mid: mid * MPa, high: high * MPa },
  abrasivityIndex: exactBand(5),
  cerchar: exactBand(1),
  hazards: [],
});

const rules = (fit: BedFit) => fit.reasons.map(({ rule }) => rule);
const tools = (fit: BedFit) => fit.insteadUse.map(({ tool }) => tool);

describe("strength", () => {
  it("is fit below 100 MPa, with care to 150, unfit from there", () => {
    expect(fitOfBed(limestoneOf(99, 99, 99)).verdict).toBe("fit");
    expect(fitOfBed(limestoneOf(100, 100, 100)).verdict).toBe("fit-with-care");
    expect(fitOfBed(limestoneOf(149, 149, 149)).verdict).toBe("fit-with-care");
    expect(fitOfBed(limestoneOf(150, 150, 150)).verdict).toBe("unfit");
  });

  it("says where the band reaches over a limit, with the figure that does", () => {
    const fit = fitOfBed(limestoneOf(60, 80, 160));
    expect(fit.verdict).toBe("fit");
    expect(fit.reasons.filter(({ rule }) => rule.endsWith("band")).map(({ value, limit }) => [value, limit])).toEqual([
      [160 * MPa, 100 * MPa],
      [160 * MPa, 150 * MPa],
    ]);
    expect(fit.findings.map(({ code, severity }) => [code, severity])).toEqual([
      ["strength-straddles-care", "note"],
      ["strength-straddles-unfit", "caution"],
    ]);
    const hard = fitOfBed(limestoneOf(140, 155, 170));
    expect(hard.reasons.find(({ rule }) => rule.endsWith("band"))?.value).toBe(140 * MPa);
    expect(fitOfBed(limestoneOf(60, 80, 99)).findings).toEqual([]);
  });
});

describe("kind", () => {
  it("gives a plain no with what to use instead in loose stones and in rock that chips the edge", () => {
    for (const id of ["gravel", "boulders", "conglomerate", "chert", "quartzite", "granite", "basalt", "gneiss"]) {
      const fit = fitOfBed(bedOf(id));
      expect(fit.verdict, id).toBe("unfit");
      expect(tools(fit).length, id).toBeGreaterThan(0);
    }
    expect(tools(fitOfBed(bedOf("gravel")))[0]).toBe("casing advance");
    expect(tools(fitOfBed(bedOf("granite")))[0]).toBe("down-hole hammer");
    expect(tools(fitOfBed(bedOf("conglomerate")))).not.toContain("auger");
  });

  it("offers an auger only near the surface and never among boulders", () => {
    expect(tools(fitOfBed(bedOf("gravel", { top: 2, bottom: 8 })))).toContain("auger");
    expect(tools(fitOfBed(bedOf("gravel", { top: 50, bottom: 60 })))).not.toContain("auger");
    expect(tools(fitOfBed(bedOf("boulders", { top: 2, bottom: 8 })))).not.toContain("auger");
  });

  it("notes the cheaper drag blade in clay, and cases loose sand off", () => {
    const clay = fitOfBed(bedOf("clay"));
    expect(clay.verdict).toBe("fit");
    expect(tools(clay)).toContain("drag blade");
    expect(clay.caseOff).toBe(false);
    const sand = fitOfBed(bedOf("sand"));
    expect(sand.verdict).toBe("fit-with-care");
    expect(sand.caseOff).toBe(true);
    expect(fitOfBed(bedOf("shale")).caseOff).toBe(false);
  });

  it("does not call ground fit that nobody named", () => {
    const { beds } = groundColumn({ beds: [{ name: "?", top: 1, bottom: 2, phrase: "??" }], fluidDensity: 1000 });
    const [fit] = beds.map(advisedBedOf).map(fitOfBed);
    expect(fit?.kind).toBe("unknown");
    expect(fit?.verdict).toBe("fit-with-care");
  });

  it("sorts every rock of the table by its own row", () => {
    // A rock added to the table without a kind would fall to its family; made up ids do.
    const family = (id: string) => fitOfBed({ ...bedOf(id), rock: { ...bedOf(id).rock, id: "of the shop" } }).kind;
    expect(family("gravel")).toBe("gravel");
    expect(family("sand")).toBe("sand");
    expect(family("clay")).toBe("soil");
    expect(family("sandstone")).toBe("sandstone");
    expect(family("conglomerate")).toBe("gravel");
    expect(family("shale")).toBe("shale");
    expect(family("granite")).toBe("crystalline");
    expect(family("tuff")).toBe("tuff");
  });
});

describe("abrasion and hazards", () => {
  it("goes by the class limits 60 and 120 of the rock abrasivity index", () => {
    const at = (index: number) => fitOfBed({ ...limestoneOf(50, 50, 50), abrasivityIndex: exactBand(index) });
    expect([59, 60, 119, 120].map((index) => at(index).verdict)).toEqual([
      "fit",
      "fit-with-care",
      "fit-with-care",
      "unfit",
    ]);
  });

  it("goes by the scratch test where one is known", () => {
    const at = (index: number) => fitOfBed({ ...limestoneOf(50, 50, 50), cerchar: exactBand(index) }).verdict;
    expect([2.9, 3, 4.9, 5].map(at)).toEqual(["fit", "fit-with-care", "fit-with-care", "unfit"]);
  });

  it("asks for care where stones or hard bands strike, and only warns of the rest", () => {
    const withHazard = (hazard: Hazard) => fitOfBed({ ...limestoneOf(50, 50, 50), hazards: [hazard] });
    expect(withHazard("impact").verdict).toBe("fit-with-care");
    expect(withHazard("hard-stringers").verdict).toBe("fit-with-care");
    for (const hazard of ["sticky", "gas", "lost-circulation", "caving"] as const) {
      expect(withHazard(hazard).verdict).toBe("fit");
      expect(withHazard(hazard).cautions.length).toBeGreaterThan(0);
      expect(rules(withHazard(hazard))).toContain(`hazard: ${hazard}`);
    }
  });

  it("puts the reasons that decided first", () => {
    expect(rules(fitOfBed(limestoneOf(160, 160, 160)))[0]).toBe("strength limit of a PDC bit");
    expect(rules(fitOfBed(bedOf("gravel")))[0]).toBe("kind of ground");
  });
});

describe("laws", () => {
  const anyRock = fc.constantFrom(...rockIds);
  const anyStrength = fc.double({ min: 0.1, max: 400, noNaN: true });

  it("never gets fitter in stronger rock", () => {
    fc.assert(
      fc.property(anyRock, anyStrength, fc.double({ min: 1, max: 5, noNaN: true }), (id, strength, factor) => {
        const bed = bedOf(id);
        const soft = fitOfBed({ ...bed, confinedStrength: exactBand(strength * MPa) });
        const hard = fitOfBed({ ...bed, confinedStrength: exactBand(strength * factor * MPa) });
        expect(RANK[hard.verdict]).toBeGreaterThanOrEqual(RANK[soft.verdict]);
      }),
    );
  });

  it("always gives at least one reason, each with its source, and a tool to turn to where unfit", () => {
    fc.assert(
      fc.property(anyRock, anyStrength, (id, strength) => {
        const fit = fitOfBed({ ...bedOf(id), confinedStrength: exactBand(strength * MPa) });
        expect(fit.reasons.length).toBeGreaterThanOrEqual(1);
        for (const { sentence, source } of fit.reasons) {
          expect(sentence).not.toBe("");
          expect(source.cite).not.toBe("");
        }
        if (fit.verdict === "unfit") expect(fit.insteadUse.length).toBeGreaterThan(0);
      }),
    );
  });

  it("refuses a bed without thickness", () => {
    expect(() => fitOfBed({ ...bedOf("shale"), bottom: 10 })).toThrow("thickness must be positive, got 0");
  });
});
