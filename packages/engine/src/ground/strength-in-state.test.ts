import { expect, it } from "vitest";
import { rockById } from "./rock-table.ts";
import { CEMENTED_SOIL_STRENGTH, DECOMPOSED_SHARE, strengthInState, WEATHERED_SHARE } from "./strength-in-state.ts";

const shale = rockById("shale");
const { low, mid, high } = shale.ucs;

it("takes the upper or lower half of the band for hard and soft", () => {
  expect(strengthInState({ rock: shale, modifiers: ["hard"] })).toEqual({ low: mid, mid: Math.sqrt(mid * high), high });
  expect(strengthInState({ rock: shale, modifiers: ["soft"] })).toEqual({ low, mid: Math.sqrt(low * mid), high: mid });
});

it("changes nothing for words that cancel or say nothing of strength", () => {
  expect(strengthInState({ rock: shale, modifiers: ["hard", "soft"] })).toEqual(shale.ucs);
  expect(strengthInState({ rock: shale, modifiers: ["broken", "water-bearing", "sticky"] })).toEqual(shale.ucs);
  expect(strengthInState({ rock: shale, modifiers: ["dense"] })).toEqual(shale.ucs);
});

it("leaves a share of the strength in weathered and decomposed rock", () => {
  expect(strengthInState({ rock: shale, modifiers: ["weathered"] }).mid).toBe(mid * WEATHERED_SHARE.mid);
  expect(strengthInState({ rock: shale, modifiers: ["decomposed", "weathered"] }).high).toBe(
    high * DECOMPOSED_SHARE.high,
  );
});

it("treats soil by its own words: cemented, dense, loose", () => {
  const gravel = rockById("gravel");
  expect(strengthInState({ rock: gravel, modifiers: ["cemented"] })).toEqual(CEMENTED_SOIL_STRENGTH);
  expect(strengthInState({ rock: gravel, modifiers: ["loose"] }).high).toBe(gravel.ucs.mid);
  expect(strengthInState({ rock: gravel, modifiers: ["dense"] }).low).toBe(gravel.ucs.mid);
  expect(strengthInState({ rock: gravel, modifiers: ["weathered"] })).toEqual(gravel.ucs);
});
