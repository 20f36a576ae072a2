import { describe, expect, it } from "vitest";
import { profiledBit } from "../../../../tests/support/profiled-bit.ts";
import { sandstoneLike } from "../../../../tests/support/rock-responses.ts";
import { contactTemperatures, type HeatConditions, hottestContact } from "./cutter-heat.ts";
import { drillAtWeight } from "./drilled-state.ts";
import type { CoolingFilm } from "./flat-temperature.ts";
import { traceEdges } from "./trace-edges.ts";

const bit = { trace: traceEdges(profiledBit()), response: sandstoneLike };
const { loads } = drillAtWeight(bit, 20e3);
const cutters = bit.trace.layout.cutters.length;
const film: CoolingFilm = { coefficient: 5000, area: 2e-4 };
const heat: HeatConditions = { rock: { conductivity: 3, diffusivity: 1.3e-6 }, fluidTemperature: 293.15 };
const turning = { response: sandstoneLike, rotarySpeed: 10 };

describe("contactTemperatures", () => {
  it("takes one film for all cutters or one for each, and no row that is short", () => {
    const all = contactTemperatures(loads, { ...turning, heat: { ...heat, film } });
    const each = contactTemperatures(loads, { ...turning, heat: { ...heat, film: new Array(cutters).fill(film) } });
    expect(each).toEqual(all);
    const short = { ...heat, film: new Array(cutters - 1).fill(film) };
    expect(() => contactTemperatures(loads, { ...turning, heat: short })).toThrow(
      `film must be one for each of ${cutters} cutters, got ${cutters - 1}`,
    );
  });
});

describe("hottestContact", () => {
  it("is the largest of them, and needs the heat conditions", () => {
    const all = [...contactTemperatures(loads, { ...turning, heat })].sort((a, b) => a - b);
    expect(all[0]).toBeLessThan(all[cutters - 1]);
    expect(hottestContact(loads, { ...turning, heat })).toBe(all[cutters - 1]);
    expect(() => hottestContact(loads, { ...turning, heat: undefined })).toThrow(/heat conditions/);
  });
});
