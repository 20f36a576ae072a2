import fc from "fast-check";
import { expect, it } from "vitest";
import { phraseUnits } from "./phrase-units.ts";

const texts = (phrase: string) => phraseUnits(phrase).map((unit) => unit.text);

it("takes the longest run of words it knows as one unit", () => {
  expect(texts("water bearing sand stone")).toEqual(["water bearing", "sand stone"]);
  expect(texts("water-bearing pea gravel")).toEqual(["water-bearing", "pea gravel"]);
});

it("keeps the stroke of a short form and splits on any other", () => {
  expect(phraseUnits("clay w/ sand").map(({ text, entry }) => [text, entry.does])).toEqual([
    ["clay", "name"],
    ["w", "lessen"],
    ["sand", "name"],
  ]);
  expect(phraseUnits("d/granite")[0]?.entry).toMatchObject({ does: "modify", modifier: "decomposed" });
  expect(phraseUnits("shale/slate")[1]?.joint).toBe("slash");
  expect(phraseUnits("clay w/o sand")[1]?.entry.does).toBe("deny");
});

it("tells a break from a join", () => {
  expect(phraseUnits("clay, sand").map(({ joint }) => joint)).toEqual(["none", "break"]);
  expect(phraseUnits("clay & sand").map(({ joint }) => joint)).toEqual(["none", "and"]);
  expect(phraseUnits("clay - sand").map(({ joint }) => joint)).toEqual(["none", "break"]);
  expect(phraseUnits("clay-sand").map(({ joint }) => joint)).toEqual(["none", "none"]);
});

it("mends one wrong letter in a long name and says so", () => {
  expect(phraseUnits("black daycite")[1]).toMatchObject({ mendedTo: "dacite" });
  expect(phraseUnits("finegravel")[0]).toMatchObject({ mendedTo: "gravel" });
  expect(phraseUnits("blck")[0]?.mendedTo).toBeUndefined();
});

it("gives spans that cut the very text out of any phrase, in order", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (phrase) => {
      let last = 0;
      for (const { text, start, end } of phraseUnits(phrase)) {
        expect(phrase.slice(start, end)).toBe(text);
        expect(start).toBeGreaterThanOrEqual(last);
        last = end;
      }
    }),
  );
});
