import { describe, expect, it } from "vitest";
import { fieldFacts, fieldPaths } from "./field-facts.ts";

describe("fieldFacts", () => {
  it("says what a quantity takes, with the limits of the schema", () => {
    const facts = fieldFacts(["inquiry", "holes", 3, "diameter"]);
    expect(facts?.takes).toEqual([{ kind: "diameter", limits: { least: "0.5 in", most: "60 in" } }]);
    expect(facts?.description).toBe("Nominal diameter. From 0.5 in to 60 in.");
  });

  it("names both ways in which a weight is given", () => {
    const kinds = fieldFacts(["overrides", "weight"])?.takes?.map(({ kind }) => kind);
    expect(kinds).toEqual(["force", "force per length"]);
  });

  it("knows words, whole numbers and a yes or no", () => {
    expect(fieldFacts(["inquiry", "fluid", "kind"])?.options).toContain("bentonite");
    expect(fieldFacts(["bit", "spec", "wings"])?.count).toEqual({ least: 1, most: 16 });
    expect(fieldFacts(["bit", "spec", "leached"])?.flag).toBe(true);
    expect(fieldFacts(["bit", "spec", "profile", "coneAngle"])?.takes?.[0]?.kind).toBe("angle");
  });

  it("knows nothing of a field that is not there", () => {
    expect(fieldFacts(["inquiry", "rig", "colour"])).toBeUndefined();
    expect(fieldFacts(["nowhere", "at", "all"])).toBeUndefined();
  });

  it("lists every field under a path once", () => {
    const paths = fieldPaths(["inquiry"]).map((path) => path.join("."));
    expect(paths).toContain("inquiry.rig.pullDown");
    expect(paths).toContain("inquiry.holes.0.casingBore");
    expect(paths).toContain("inquiry.pump.curve.0.flow");
    expect(new Set(paths).size).toBe(paths.length);
    for (const path of fieldPaths(["inquiry"])) expect(fieldFacts(path), path.join(".")).toBeDefined();
  });
});
