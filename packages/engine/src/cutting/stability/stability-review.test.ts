import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../../tests/support/close-to.ts";
import { degree, mm, rpm } from "../../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../../tests/support/profiled-bit.ts";
import { sandstoneLike } from "../../../../../tests/support/rock-responses.ts";
import { exposure } from "../../bit/index.ts";
import { drillAtWeight } from "../drilled-state.ts";
import { traceEdges } from "../trace-edges.ts";
import type { StabilityInput } from "./stability-figures.ts";
import { stabilityReview } from "./stability-review.ts";
import { whirlFindings } from "./whirl-tendency.ts";

const layout = profiledBit();
const trace = traceEdges(layout, { cells: 300 });
const soft = { name: "soft shale", response: { ...sandstoneLike, specificEnergy: 12e6, contactStress: 12e6 } };
const hard = { name: "sandstone", response: sandstoneLike };
const input: StabilityInput = {
  trace,
  bed: soft,
  weight: 9000,
  rotarySpeed: 90 * rpm,
  neighbours: [hard],
  body: { exposure: exposure({ layout }).cutters.map(({ alongNormal }) => alongNormal), wingThickness: 16 * mm },
  string: { sections: [{ outerDiameter: 0.0889, bore: 0.076, length: 90, linearWeight: 140 }], topHeadMass: 400 },
  rotary: { slowest: 40 * rpm, fastest: 120 * rpm },
  gaugeClearance: 5 * mm,
};
const review = stabilityReview(input);
const codes = (one = review) => one.findings.map(({ code }) => code);
const value = (name: string) => review.working.find((one) => one.name.startsWith(name))?.value ?? Number.NaN;

describe("stabilityReview", () => {
  it("speaks of the state the plain solver finds", () => {
    const { bit, advance } = drillAtWeight({ trace, response: soft.response }, 9000);
    expectClose(review.advance, advance, 1e-7);
    expectClose(review.imbalance.whole.force, bit.lateralForce, 1e-6);
    const { string } = review;
    expectClose((string?.slopes.weightSlope ?? 0) * advance, bit.cuttingWeight, 1e-6);
    expectClose((string?.slopes.torqueSlope ?? 0) * advance + (string?.slopes.contactTorque ?? 0), bit.torque, 1e-6);
    // Half the mass more than the string's own lowers the limit as one over its root.
    const light = stabilityReview({ ...input, string: { ...string, sections: input.string?.sections ?? [] } });
    const ratio = (light.string?.axialLimitSpeed ?? 0) / (string?.axialLimitSpeed ?? 1);
    expectClose(ratio, Math.sqrt((string?.mass ?? 0) / (light.string?.mass ?? 1)), 1e-9);
  });

  it("goes from the softer into the harder bed, whichever is drilled", () => {
    expect(review.crossings.map(({ from, to }) => [from, to])).toEqual([["soft shale", "sandstone"]]);
    const other = stabilityReview({ ...input, bed: hard, neighbours: [soft] });
    expect(other.crossings.map(({ from, to }) => [from, to])).toEqual([["soft shale", "sandstone"]]);
    expectClose(other.crossings[0].crossing.peak.force, review.crossings[0].crossing.peak.force, 1e-6);
  });

  it("opens every figure to a working with inputs, unit and source", () => {
    for (const one of review.working) {
      expect(Number.isFinite(one.value), one.name).toBe(true);
      expect(one.inputs.length, one.name).toBeGreaterThan(0);
      expect(one.source.cite).not.toBe("");
    }
    expect(new Set(review.working.map(({ name }) => name)).size).toBe(review.working.length);
    expectClose(value("side force as a share"), review.imbalance.whole.share, 1e-12);
    expectClose(value("overload of that cutter"), review.crossings[0].crossing.peak.overloadRatio, 1e-12);
    expectClose(value("natural speed in twist"), review.string?.mode.torsionalSpeed ?? 0, 1e-12);
    // The side force of the working is that of its inputs.
    const [working] = review.working;
    const [drag, radial, angle] = working.inputs.map((one) => one.value);
    expectClose(working.value, Math.sqrt(drag ** 2 + radial ** 2 + 2 * drag * radial * Math.cos(angle)), 1e-6);
  });

  it("names the wing that a leaning bit leans to", () => {
    const leaning = layout.cutters.map((cutter) => ({ ...cutter, azimuth: 0.3 * (cutter.azimuth % (2 * Math.PI)) }));
    const found = stabilityReview({ ...input, trace: traceEdges({ ...layout, cutters: leaning }, { cells: 200 }) });
    const finding = found.findings.find(({ code }) => code === "side-force-leans");
    expect(finding?.message).toContain(found.imbalance.direction?.words);
    expect(finding?.where).toBe(`wing ${found.imbalance.direction?.wing}`);
    expect(codes(found)).toContain("tends-to-whirl");
    expect(found.findings.find(({ code }) => code === "tends-to-whirl")?.severity).toBe("caution");
  });

  it("cautions where a lone cutter meets the hard bed at the soft bed's cut, and where the wings rub", () => {
    const cutters = layout.cutters.map((c, k) => (k === 7 ? { ...c, height: c.height + 4 * mm } : c));
    const ahead = stabilityReview({ ...input, trace: traceEdges({ ...layout, cutters }, { cells: 200 }) });
    const finding = ahead.findings.find(({ code }) => code === "crossing-overload");
    expect(finding?.where).toBe("soft shale into sandstone, cutter 8");
    const shallow = { exposure: layout.cutters.map(() => 0.5 * mm), wingThickness: 16 * mm };
    expect(codes(stabilityReview({ ...input, body: shallow }))).toContain("ridge-as-high-as-wing");
    const high = { exposure: layout.cutters.map(() => 14 * mm), wingThickness: 16 * mm };
    expect(codes(stabilityReview({ ...input, body: high, weight: 6000 }))).not.toContain("wing-rubs");
    expect(codes(stabilityReview({ ...input, body: high, weight: 40_000 }))).toContain("wing-rubs");
  });

  it("keeps the driller out of step with the string", () => {
    const [window] = review.string?.avoid ?? [];
    const inStep = stabilityReview({ ...input, rotarySpeed: 0.5 * (window.from + window.to) });
    expect(codes(inStep)).toContain("speed-in-step-with-string");
    const outside = stabilityReview({ ...input, rotarySpeed: 1.01 * window.to });
    expect(codes(outside)).not.toContain("speed-in-step-with-string");
  });

  it("warns less of what a feed held still would keep from a short string", () => {
    expect(review.string?.feedHolds).toBe(true);
    const long = { sections: [{ outerDiameter: 0.0889, bore: 0.076, length: 900, linearWeight: 140 }] };
    const found = stabilityReview({ ...input, string: long });
    expect(found.string?.feedHolds).toBe(false);
    const severity = (one: typeof review) => one.findings.find(({ code }) => code === "stick-slip")?.severity;
    expect([severity(review), severity(found)]).toEqual(["note", "caution"]);
  });

  it("does with less: no neighbours, body, string, rotary or wings", () => {
    const unknown = { ...layout, cutters: layout.cutters.map((cutter) => ({ ...cutter, wing: 0 })) };
    const bare = stabilityReview({
      trace: traceEdges(unknown, { cells: 200 }),
      bed: hard,
      weight: 9000,
      rotarySpeed: 90 * rpm,
    });
    expect(bare.crossings).toEqual([]);
    for (const part of ["rubbing", "string", "whirl"]) expect(bare).not.toHaveProperty(part);
    expect(bare.imbalance.direction).toBeUndefined();
    expect(() => stabilityReview({ ...input, weight: 0 })).toThrow("weight must be positive, got 0");
  });
});

describe("whirlFindings", () => {
  const judge = (lateralShare: number, gaugeClearance = 0) =>
    whirlFindings({ layout, lateralShare, gaugeClearance }).map(({ code, severity }) => `${code}: ${severity}`);

  it("weighs push and room together", () => {
    expect(judge(0.02)).toEqual([]);
    expect(judge(0.07)).toEqual([]);
    expect(judge(0.02, 5 * mm)).toEqual(["room-to-whirl: note"]);
    expect(judge(0.07, 5 * mm)).toEqual(["tends-to-whirl: note"]);
    expect(judge(0.12)).toEqual(["tends-to-whirl: note"]);
    expect(judge(0.12, 5 * mm)).toEqual(["tends-to-whirl: caution"]);
  });

  it("remarks on wings evenly spaced", () => {
    const [cutter] = layout.cutters;
    const spaced = (by: readonly number[]) => ({
      holeDiameter: 0.15,
      cutters: by.map((azimuth, k) => ({ ...cutter, wing: k + 1, radius: 0.06, azimuth: azimuth * degree })),
    });
    const even = whirlFindings({ layout: spaced([5, 125, -115]), lateralShare: 0.01 });
    expect(even.map(({ code }) => code)).toEqual(["wings-evenly-spaced"]);
    expect(whirlFindings({ layout: spaced([0, 115, 240]), lateralShare: 0.01 })).toEqual([]);
  });
});
