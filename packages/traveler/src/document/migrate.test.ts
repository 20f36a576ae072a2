import { describe, expect, it } from "vitest";
import { migrate } from "./migrate.ts";

describe("migrate", () => {
  it("takes a document of version 0 to today's: the one hole becomes a list, all else stays", () => {
    const hole = { diameter: "6 1/8 in", to: "300 ft" };
    const old = { format: "bitwright-traveler", version: 0, inquiry: { rig: {}, hole, own: 1 }, mine: true };
    expect(migrate(old)).toEqual({
      ok: true,
      document: { format: "bitwright-traveler", version: 1, inquiry: { rig: {}, holes: [hole], own: 1 }, mine: true },
    });
    expect(old.inquiry.hole).toBe(hole);
  });

  it("leaves a document of today's version as it is", () => {
    const document = { format: "bitwright-traveler", version: 1, inquiry: { hole: "the shop's own field" } };
    expect(migrate(document)).toEqual({ ok: true, document });
  });

  it.each([
    [
      { format: "bitwright-traveler", version: 3 },
      /^version: this traveler was saved by a newer Bitwright \(version 3\); this one reads up to version 1$/,
    ],
    [{ version: 1 }, /^format: nothing is given; give "bitwright-traveler"/],
    [{ format: "other", version: 1 }, /^format: got "other"; give "bitwright-traveler"/],
    [{ format: "bitwright-traveler" }, /^version: nothing is given/],
    [{ format: "bitwright-traveler", version: "one" }, /^version: got "one"/],
    [{ format: "bitwright-traveler", version: 0.5 }, /^version: got 0.5/],
    [[], /^traveler: got \[\]/],
    [null, /^traveler: nothing is given/],
    ["text", /^traveler: got "text"/],
  ])("refuses %j", (document, pattern) => {
    const migrated = migrate(document);
    expect(migrated.ok ? "" : migrated.problem.message).toMatch(pattern);
  });
});
