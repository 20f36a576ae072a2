import { describe, expect, it } from "vitest";
import { pathOf, pathText, valueAt, withValue } from "./path.ts";

describe("pathOf", () => {
  it("reads and writes the paths of problems", () => {
    expect(pathOf("inquiry.holes[0].diameter")).toEqual(["inquiry", "holes", 0, "diameter"]);
    expect(pathText(["ground", "beds", 12, "strength", "low"])).toBe("ground.beds[12].strength.low");
  });
});

describe("valueAt", () => {
  it("finds what stands there, and nothing where the way ends", () => {
    const document = { ground: { beds: [{ top: "0 ft" }] } };
    expect(valueAt(document, ["ground", "beds", 0, "top"])).toBe("0 ft");
    expect(valueAt(document, ["ground", "beds", 4, "top"])).toBeUndefined();
    expect(valueAt(document, ["bit", "spec", "wings"])).toBeUndefined();
  });
});

describe("withValue", () => {
  const document = { job: { name: "A" }, inquiry: { holes: [{ diameter: "6 in" }, { diameter: "4 in" }] }, own: 1 };

  it("makes the groups on the way and leaves the rest, unknown fields too", () => {
    const changed = withValue(document, ["inquiry", "rig", "pullDown"], "12000 lbf");
    expect(changed).toEqual({ ...document, inquiry: { ...document.inquiry, rig: { pullDown: "12000 lbf" } } });
    expect(document.inquiry).not.toHaveProperty("rig");
  });

  it("makes a list where a row of one is set", () => {
    expect(withValue({}, ["ground", "beds", 0, "phrase"], "clay")).toEqual({ ground: { beds: [{ phrase: "clay" }] } });
  });

  it("takes a field out, and the groups it leaves empty", () => {
    const withRig = withValue(document, ["inquiry", "rig", "pullDown"], "12000 lbf");
    expect(withValue(withRig, ["inquiry", "rig", "pullDown"], undefined)).toEqual(document);
  });

  it("keeps an emptied row in its place and drops a row that is taken out", () => {
    const emptied = withValue(document, ["inquiry", "holes", 0, "diameter"], undefined);
    expect(valueAt(emptied, ["inquiry", "holes"])).toEqual([{}, { diameter: "4 in" }]);
    const dropped = withValue(document, ["inquiry", "holes", 0], undefined);
    expect(valueAt(dropped, ["inquiry", "holes"])).toEqual([{ diameter: "4 in" }]);
  });
});
