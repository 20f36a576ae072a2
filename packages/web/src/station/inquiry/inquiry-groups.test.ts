import { fieldFacts, fieldPaths } from "@bitwright/traveler";
import { describe, expect, it } from "vitest";
import { askedPath } from "./field-group.ts";
import { INQUIRY_GROUPS } from "./inquiry-groups.ts";

const asked = INQUIRY_GROUPS.flatMap((group) => group.fields.map((field) => askedPath(group, field).join(".")));

describe("the inquiry's screen", () => {
  it("asks for every field of the schema that a person gives at the inquiry, once", () => {
    const inSchema = [...fieldPaths(["job"]), ...fieldPaths(["inquiry"])].map((path) => path.join("."));
    expect([...asked].sort()).toEqual([...inSchema].sort());
  });

  it("knows what each of them takes", () => {
    for (const group of INQUIRY_GROUPS) {
      for (const field of group.fields) {
        expect(fieldFacts(askedPath(group, field))?.description, field.label).not.toBe("");
      }
    }
  });
});
