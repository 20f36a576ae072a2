import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bitProfile, type ProfileShape, type ProfileSpec } from "./profile.ts";
import { alongPiece, pieceEnd } from "./profile-piece.ts";
import { profileAtArc, profileAtRadius } from "./profile-place.ts";

const inch = 0.0254;
const deg = Math.PI / 180;
const shapes: ProfileShape[] = ["flat", "step", "short parabolic", "medium parabolic", "long parabolic"];
const spec: fc.Arbitrary<ProfileSpec> = fc.record({
  shape: fc.constantFrom(...shapes),
  holeDiameter: fc.double({ min: 3 * inch, max: 12 * inch, noNaN: true }),
  leastCorner: fc.constantFrom(0.0041, 0.00672, 0.00794),
});

describe("bitProfile", () => {
  it("joins its pieces without a step or a corner, from the axis to the gauge", () => {
    fc.assert(
      fc.property(spec, (of) => {
        const profile = bitProfile(of);
        expect(profile.pieces[0]?.radius).toBe(0);
        for (const [at, piece] of profile.pieces.entries()) {
          const before = profile.pieces[at - 1];
          if (!before) continue;
          const end = pieceEnd(before);
          expect(piece.radius).toBeCloseTo(end.radius, 10);
          expect(piece.height).toBeCloseTo(end.height, 10);
          expect(piece.startAngle).toBeCloseTo(end.angle, 10);
        }
        const gauge = profile.pieces.at(-1);
        expect(gauge?.radius).toBeCloseTo(of.holeDiameter / 2, 10);
        expect(gauge?.endAngle).toBe(Math.PI / 2);
      }),
    );
  });

  it("has its nose at height 0 and nothing deeper; the angle is the slope of the line", () => {
    fc.assert(
      fc.property(spec, (of) => {
        const profile = bitProfile(of);
        const step = profile.gaugeStart / 2000;
        let deepest = Number.NEGATIVE_INFINITY;
        for (let at = 1; at < 2000; at++) {
          const [a, b, c] = [at - 1, at, at + 1].map((n) => profileAtArc(profile, n * step));
          if (!a || !b || !c) throw new Error("no place");
          deepest = Math.max(deepest, b.height);
          // Chord slope against the angle in its middle; a joint may lie between.
          expect(Math.atan2(a.height - c.height, c.radius - a.radius)).toBeCloseTo(b.angle, 1);
          expect(c.radius).toBeGreaterThanOrEqual(a.radius);
        }
        expect(deepest).toBeLessThanOrEqual(1e-12);
        expect(deepest).toBeGreaterThan(-1e-4 * of.holeDiameter);
      }),
      { numRuns: 30 },
    );
  });

  it("gives the same place by arc and by radius", () => {
    fc.assert(
      fc.property(spec, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (of, share) => {
        const profile = bitProfile(of);
        const byArc = profileAtArc(profile, share * profile.gaugeStart);
        const byRadius = profileAtRadius(profile, byArc.radius);
        expect(byRadius.height).toBeCloseTo(byArc.height, 6);
        expect(byRadius.arc).toBeCloseTo(byArc.arc, 5);
      }),
    );
  });

  it("runs through cone, nose, shoulder and gauge in that order", () => {
    const profile = bitProfile({ shape: "short parabolic", holeDiameter: 6.125 * inch, leastCorner: 0.00672 });
    const zones: string[] = [];
    for (let at = 0; at <= 200; at++) {
      const { zone } = profileAtArc(profile, (at / 200) * (profile.gaugeStart + 0.01));
      if (zones.at(-1) !== zone) zones.push(zone);
    }
    expect(zones).toEqual(["cone", "nose", "shoulder", "gauge"]);
    // Quarter circle from nose to gauge: as high as it is wide.
    expect(profile.height).toBeCloseTo(0.24 * 3.0625 * inch, 9);
  });

  it("is longer from short to long", () => {
    const heights = (["flat", "short parabolic", "medium parabolic", "long parabolic"] as const).map(
      (shape) => bitProfile({ shape, holeDiameter: 8.5 * inch, leastCorner: 0.00672 }).height,
    );
    expect([...heights].sort((a, b) => a - b)).toEqual(heights);
  });

  it("meets a height asked for and says when it cannot", () => {
    const of = { shape: "medium parabolic", holeDiameter: 8.5 * inch, leastCorner: 0.00672 } as const;
    const met = bitProfile({ ...of, height: 0.06 });
    expect(met.height).toBeCloseTo(0.06, 8);
    expect(met.findings).toEqual([]);
    const low = bitProfile({ ...of, height: 0.001 });
    expect(low.findings.map((finding) => finding.code)).toEqual(["profile-height-out-of-reach"]);
    expect(low.findings[0]?.limit).toBeCloseTo(low.height, 9);
  });

  it("does not make the shoulder sharper than the cutter", () => {
    const of = { shape: "flat", holeDiameter: 6 * inch, leastCorner: 0.00794, shoulderCurve: 0.003 } as const;
    const profile = bitProfile(of);
    expect(profile.findings.map((finding) => finding.code)).toEqual(["shoulder-sharper-than-cutter"]);
    expect(profile.height).toBeCloseTo(0.00794, 12);
  });

  it("steps down toward the centre", () => {
    const profile = bitProfile({ shape: "step", holeDiameter: 8 * inch, leastCorner: 0.00672 });
    const level = profile.pieces.filter((piece) => piece.startAngle === 0 && piece.endAngle === 0);
    expect(level.length).toBe(3);
    expect(level.map((piece) => Math.round((-piece.height / inch) * 100) / 100 + 0)).toEqual([0, 0.48, 0.96]);
    const small = bitProfile({ shape: "step", holeDiameter: 3 * inch, leastCorner: 0.00672, steps: 3 });
    expect(small.findings.map((finding) => finding.code)).toEqual(["fewer-steps"]);
  });

  it("keeps an arc on its circle", () => {
    const arc = { radius: 0.01, height: 0, startAngle: 0, endAngle: 90 * deg, length: (0.02 * Math.PI) / 2 };
    const middle = alongPiece(arc, arc.length / 2);
    expect(Math.hypot(middle.radius - 0.01, middle.height + 0.02)).toBeCloseTo(0.02, 12);
  });

  it("refuses sizes that are none", () => {
    expect(() => bitProfile({ shape: "flat", holeDiameter: 0, leastCorner: 0.006 })).toThrow(
      "holeDiameter must be positive",
    );
    expect(() => bitProfile({ shape: "flat", holeDiameter: 0.02, leastCorner: 0.006 })).toThrow(/leastCorner must lie/);
  });
});
