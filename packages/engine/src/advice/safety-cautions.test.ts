import { describe, expect, it } from "vitest";
import { safetyCautions } from "./safety-cautions.ts";

describe("safetyCautions", () => {
  it("gives the weight of a bit in both units, and first what to lift it with", () => {
    const cautions = safetyCautions({ fits: [], fluid: "water", mayFlow: false, places: ["rig"] });
    const { text = "" } = cautions.find(({ topic }) => topic === "lifting") ?? {};
    expect(text).toMatch(/^Lift the bit with a rated plug and tackle/);
    // Common practice, no source: 30 to 150 lb; the pound is 0.45359237 kg by definition.
    const [, poundsLow, poundsHigh, low, high] = /(\d+) to (\d+) lb \((\d+) to (\d+) kg\)/.exec(text) ?? [];
    expect([poundsLow, poundsHigh]).toEqual(["30", "150"]);
    expect([low, high].map(Number)).toEqual([30, 150].map((pounds) => Math.round(pounds * 0.45359237)));
  });
});
