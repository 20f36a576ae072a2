import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { classifyGround } from "./classify-ground.ts";
import { rockIds } from "./rock-table.ts";

describe("classifyGround", () => {
  it("shows each word with its role and place", () => {
    const { words } = classifyGround("brown sandy clay w/ gravel");
    expect(words).toEqual([
      { text: "brown", start: 0, end: 5, role: "noise" },
      { text: "sandy", start: 6, end: 11, role: "minor", meaning: "sand" },
      { text: "clay", start: 12, end: 16, role: "main", meaning: "clay" },
      { text: "w", start: 17, end: 18, role: "noise" },
      { text: "gravel", start: 20, end: 26, role: "minor", meaning: "gravel" },
    ]);
  });

  it("gives the reason in a sentence", () => {
    expect(classifyGround("broken lime").reason).toBe('"lime" names limestone, broken.');
    expect(classifyGround("bedrock").reason).toBe('"bedrock" does not say which rock.');
    expect(classifyGround("as above, harder").reason).toMatch(/points to the bed before/);
    expect(classifyGround("  ").reason).toBe("Nothing is written here.");
    expect(classifyGround("brown and wet").reason).toBe("No word here names a rock.");
    expect(classifyGround("gravelly, brown").reason).toBe(
      '"gravelly" names gravel; a guess: only an adjective names it.',
    );
  });

  it("gives a state to the material it stands by", () => {
    expect(classifyGround("clay, weathered shale").modifiers).toEqual([]);
    expect(classifyGround("shale hard some soft bands").modifiers).toEqual(["hard"]);
    expect(classifyGround("hard and soft granite").modifiers).toEqual(["hard", "soft"]);
    expect(classifyGround("granite, pink, decomposed").modifiers).toEqual(["decomposed"]);
    expect(classifyGround("granite porphyry weathered").modifiers).toEqual(["weathered"]);
    expect(classifyGround("clay with water bearing sand").modifiers).toEqual(["water-bearing"]);
  });

  it("sharpens sandstone and limestone by soft and hard", () => {
    expect(classifyGround("soft sandstone")).toMatchObject({ rockId: "friable-sandstone", modifiers: [] });
    expect(classifyGround("sandstone, grey, v. hard")).toMatchObject({ rockId: "hard-sandstone", modifiers: [] });
    expect(classifyGround("soft white lime").rockId).toBe("soft-limestone");
    expect(classifyGround("hard and soft sandstone").rockId).toBe("sandstone");
  });

  it("leaves out what the log says is not there", () => {
    expect(classifyGround("clay, no gravel")).toMatchObject({ rockId: "clay", secondary: [], hazards: [] });
    expect(classifyGround("shale without chert").hazards).not.toContain("impact");
  });

  it("lets the bed after a matrix word count in full", () => {
    expect(classifyGround("flint nodules in chalk")).toMatchObject({ rockId: "soft-limestone", secondary: ["chert"] });
    expect(classifyGround("clay seams in limestone").rockId).toBe("limestone");
    expect(classifyGround("sand & gravel, mostly gravel").rockId).toBe("gravel");
  });

  it("adds hard stringers for bands at least twice as strong as the bed", () => {
    expect(classifyGround("shale w/ limestone ledges").hazards).toContain("hard-stringers");
    expect(classifyGround("limestone with shale bands").hazards).not.toContain("hard-stringers");
    expect(classifyGround("clay with hard bands").hazards).toContain("hard-stringers");
    expect(classifyGround("shale w/ limestone ledges").stringers).toEqual(["limestone"]);
    expect(classifyGround("shale, no limestone bands").stringers).toEqual([]);
    expect(classifyGround("clay with hard bands").stringers).toEqual([]);
  });

  it("never loses the impact of gravel, boulders or chert, whatever stands around it", () => {
    const around = fc.constantFrom("", "brown ", "soft clay, ", "shale with ", "trace ", "sandy ", "hard lime & ");
    const stones = fc.constantFrom("gravel", "boulders", "chert", "cherty", "gravelly", "flint nodules", "cobbles");
    const after = fc.constantFrom("", " bands", ", wet", " in clay", " fragments", " clay");
    fc.assert(
      fc.property(around, stones, after, (before, stone, behind) => {
        expect(classifyGround(`${before}${stone}${behind}`).hazards).toContain("impact");
      }),
    );
  });

  it("reads upper case, doubled blanks and doubled words like plain ones", () => {
    for (const phrase of [
      "BROWN SANDY CLAY",
      "brown   sandy  clay",
      "brown sandy sandy clay clay",
      "Brown, sandy CLAY.",
    ]) {
      expect(classifyGround(phrase), phrase).toMatchObject({
        rockId: "clay",
        secondary: ["sand"],
        confidence: "clear",
      });
    }
    expect(classifyGround("gray shale").rockId).toBe(classifyGround("grey shale").rockId);
  });

  it("takes any text without throwing and names rocks of the table only", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (phrase) => {
        const { rockId, confidence } = classifyGround(phrase);
        expect(rockId === undefined || rockIds.includes(rockId)).toBe(true);
        expect(confidence === "unknown").toBe(rockId === undefined);
      }),
    );
  });
});
