import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../../tests/support/close-to.ts";
import { degree, mm, rpm } from "../../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../../tests/support/profiled-bit.ts";
import { sandstoneLike } from "../../../../../tests/support/rock-responses.ts";
import { exposure } from "../../bit/index.ts";
import { drillAtWeight } from "../drilled-state.ts";
import { traceEdges } from "../trace-edges.ts";
import { lengthsInStep, RESONANCE_MARGIN } from "./resonance.ts";
import type { CrossingToReview, StabilityInput } from "./stability-figures.ts";
import { speedFindings } from "./stability-findings.ts";
import { stabilityReview } from "./stability-review.ts";
import { stringMode } from "./string-mode.ts";
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
  crossings: [{ from: soft, to: hard, weight: 9000 }],
  body: { exposure: exposure({ layout }).cutters.map(({ alongNormal }) => alongNormal), wingThickness: 16 * mm },
  string: { sections: [{ outerDiameter: 0.0889, bore: 0.076, length: 90, linearWeight: 140 }], topHeadMass: 400 },
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

  it("goes across each boundary the way the bit comes, at the weight that is held there", () => {
    const [into] = review.crossings;
    expect([into.from, into.to, into.intoHarder]).toEqual(["soft shale", "sandstone", true]);
    const back = { from: hard, to: soft, weight: 6000 };
    const [out] = stabilityReview({ ...input, bed: hard, crossings: [back] }).crossings;
    expect([out.from, out.to, out.intoHarder]).toEqual(["sandstone", "soft shale", false]);
    expectClose(out.crossing.before.weight, 6000, 1e-6);
    expect(out.crossing.before.advance).toBeLessThan(out.crossing.after.advance);
  });

  it("tells the driller to ease off before a harder bed, and lightly as the bit drops out of one", () => {
    const overload = (crossing: CrossingToReview) =>
      stabilityReview({ ...input, crossings: [crossing] }).boundaryFindings.find(
        ({ code }) => code === "crossing-overload",
      );
    const into = overload({ from: soft, to: hard, weight: 6000 });
    expect(into?.message).toContain("Going into the harder bed");
    expect(into?.severity).toBe("caution");
    const out = overload({ from: hard, to: soft, weight: 6000 });
    expect(out?.message).toContain("Leaving the harder bed");
    expect(out?.severity).toBe("note");
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
    const finding = ahead.boundaryFindings.find(({ code }) => code === "crossing-overload");
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

  it("names the lengths of a growing string between which a speed is in step with it", () => {
    const [section] = input.string?.sections ?? [];
    // Plain pipe: (π/2) √(G/ρ)/L, so that each length stands over the speed alone.
    const atLength = (length: number) => stringMode([{ ...section, length }]).torsionalSpeed;
    const constant = atLength(100) * 100;
    const speed = 90 * rpm;
    const found = lengthsInStep({ sections: [section], shortest: 20, longest: 400, rotarySpeed: speed, wings: 5 });
    const twist = found.find(({ why }) => why === "5 wings a turn in step with the string's twist");
    expectClose(twist?.from ?? 0, (constant / (5 * speed)) * (1 - RESONANCE_MARGIN), 1e-5);
    expectClose(twist?.to ?? 0, (constant / (5 * speed)) * (1 + RESONANCE_MARGIN), 1e-5);
    const within = lengthsInStep({ sections: [section], shortest: 105, longest: 110, rotarySpeed: speed, wings: 5 });
    for (const { from, to } of within) expect(from >= 105 && to <= 110).toBe(true);
    expect(lengthsInStep({ sections: [section], shortest: 1, longest: 2, rotarySpeed: speed, wings: 5 })).toEqual([]);
    expect(() => lengthsInStep({ sections: [section], shortest: 3, longest: 2, rotarySpeed: speed, wings: 5 })).toThrow(
      "growth must not be negative, got -1",
    );
    const bed = { ...input, string: { sections: [section], lengths: { shortest: 20, longest: 400 } } };
    expect(codes(stabilityReview(bed))).toContain("speed-in-step-with-string");
  });

  it("lets the collars stay whole as the pipe above them grows", () => {
    const collar = { outerDiameter: 0.15, bore: 0.06, length: 30, linearWeight: 1200 };
    const pipe = { outerDiameter: 0.0889, bore: 0.076, length: 1, linearWeight: 140 };
    const speed = stringMode([collar, { ...pipe, length: 70 }]).torsionalSpeed / 5;
    const [found] = lengthsInStep({
      sections: [collar, pipe],
      shortest: 60,
      longest: 200,
      rotarySpeed: speed,
      wings: 5,
      marginShare: 1e-3,
    });
    expect(found.from < 100 && found.to > 100).toBe(true);
    expect(found.to - found.from).toBeLessThan(2);
  });

  it("cautions of a stick-slip that stands much of the time, not of one a feed held still would prevent", () => {
    expect(review.string?.feedHolds).toBe(true);
    const long = { sections: [{ outerDiameter: 0.0889, bore: 0.076, length: 900, linearWeight: 140 }] };
    const found = stabilityReview({ ...input, string: long, weight: 18_000 });
    expect(found.string?.feedHolds).toBe(false);
    expect(found.string?.march.stickShare).toBeGreaterThan(0.25);
    const light = stabilityReview({
      ...input,
      string: { ...long, sections: [{ ...long.sections[0], length: 600 }] },
      weight: 4000,
      rotarySpeed: 60 * rpm,
    });
    expect(light.string?.march.regime).toBe("stick-slip");
    expect(light.string?.march.stickShare).toBeLessThan(0.25);
    const severity = (one: typeof review) => one.findings.find(({ code }) => code === "stick-slip")?.severity;
    expect([severity(review), severity(light), severity(found)]).toEqual(["note", "note", "caution"]);
  });

  it("speaks of the damping that the twist needs only above the speed at which the bit bounces", () => {
    const damping = "damping of the twist that steady drilling needs";
    const named = (one: typeof review) => one.working.some(({ name }) => name === damping);
    expect(review.string?.axialLimitSpeed).toBeGreaterThan(90 * rpm);
    expect(named(review)).toBe(false);
    expect(named(stabilityReview({ ...input, rotarySpeed: 1.1 * (review.string?.axialLimitSpeed ?? 0) }))).toBe(true);
  });

  it("does with less: no crossings, body, string or wings", () => {
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

describe("speedFindings", () => {
  const spans = [
    { slowestSpeed: 4, fastestSpeed: 6 },
    { slowestSpeed: 10, fastestSpeed: 12 },
  ];
  const said = (rotarySpeed: number, steady = spans, finished = true) =>
    speedFindings({ tried: [], steady, finished }, rotarySpeed).map(({ code, limit }) => [code, limit]);

  it("points to the nearest steady speed, or says that there is none", () => {
    expect(said(5)).toEqual([]);
    expect(said(7)).toEqual([["steadier-at-another-speed", 6]]);
    expect(said(9)).toEqual([["steadier-at-another-speed", 10]]);
    expect(said(5, [])).toEqual([["no-steady-speed", undefined]]);
    expect(said(5, [], false)).toEqual([]);
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
