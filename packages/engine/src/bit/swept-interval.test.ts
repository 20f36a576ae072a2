import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainCutter } from "../../../../tests/support/plain-cutter.ts";
import { cutterFrame, edgePoint } from "./cutter-frame.ts";
import type { CutterPose } from "./placed-cutter.ts";
import { sweptInterval } from "./swept-interval.ts";

const deg = Math.PI / 180;
const pose: fc.Arbitrary<CutterPose> = fc.record({
  radius: fc.double({ min: 0, max: 0.15, noNaN: true }),
  azimuth: fc.double({ min: -7, max: 7, noNaN: true }),
  height: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
  profileAngle: fc.double({ min: -30 * deg, max: 90 * deg, noNaN: true }),
  backRake: fc.double({ min: -10 * deg, max: 40 * deg, noNaN: true }),
  sideRake: fc.double({ min: -20 * deg, max: 20 * deg, noNaN: true }),
  faceDiameter: fc.double({ min: 0.008, max: 0.02, noNaN: true }),
});

/** Nearest and farthest of many points of what is left of the edge, the chord of the flat among them. */
function sampled(of: CutterPose, wornHeight: number) {
  const frame = cutterFrame(of);
  const reach = of.faceDiameter / 2;
  const radii: number[] = [];
  const kept = 1 - wornHeight / reach;
  for (let at = 0; at < 4000; at++) {
    const phi = (2 * Math.PI * at) / 4000;
    if (Math.sin(phi) > kept && wornHeight > 0) continue;
    const [x, y] = edgePoint(frame, of.faceDiameter, phi);
    radii.push(Math.hypot(x, y));
  }
  if (wornHeight > 0) {
    const half = Math.sqrt(Math.max(0, 1 - kept * kept));
    for (let at = 0; at <= 400; at++) {
      const across = half * (at / 200 - 1);
      const [x, y] = [0, 1].map(
        (i) => (frame.centre[i] ?? 0) + reach * (across * (frame.faceAcross[i] ?? 0) + kept * (frame.faceDown[i] ?? 0)),
      );
      radii.push(Math.hypot(x ?? 0, y ?? 0));
    }
  }
  return { from: Math.min(...radii), to: Math.max(...radii) };
}

describe("sweptInterval", () => {
  it("is where the nearest and the farthest edge point pass", () => {
    fc.assert(
      fc.property(pose, (of) => {
        const exact = sweptInterval(of);
        const points = sampled(of, 0);
        expect(exact.from).toBeLessThanOrEqual(points.from + 1e-9);
        expect(exact.to).toBeGreaterThanOrEqual(points.to - 1e-9);
        // Near the axis, the nearest of so many points may miss by half their spacing.
        expect(exact.from).toBeGreaterThan(points.from - 2e-5);
        expect(exact.to).toBeLessThan(points.to + 2e-8);
      }),
      { numRuns: 60 },
    );
  });

  it("follows the chord where the edge is worn", () => {
    fc.assert(
      fc.property(pose, fc.double({ min: 0.01, max: 0.95, noNaN: true }), (of, share) => {
        const wornHeight = share * of.faceDiameter;
        const exact = sweptInterval({ ...of, wornHeight });
        const points = sampled(of, wornHeight);
        expect(Math.abs(exact.from - points.from)).toBeLessThan(3e-5);
        expect(Math.abs(exact.to - points.to)).toBeLessThan(3e-5);
        const fresh = sweptInterval(of);
        expect(exact.to).toBeLessThanOrEqual(fresh.to + 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it("does not care where the bit is turned to or how deep it stands", () => {
    fc.assert(
      fc.property(pose, (of) => {
        const turned = sweptInterval({ ...of, azimuth: of.azimuth + 1, height: of.height + 1 });
        expect(turned.from).toBeCloseTo(sweptInterval(of).from, 12);
        expect(turned.to).toBeCloseTo(sweptInterval(of).to, 12);
      }),
    );
  });

  it("knows the level face by hand", () => {
    const level = plainCutter({ radius: 0.03 });
    const { from, to } = sweptInterval(level);
    expect(from).toBeCloseTo(0.025, 12);
    expect(to).toBeCloseTo(0.035, 12);
    // Turned by 60 degrees: the ends stand 2.5 mm out or in and 4.33 mm ahead or behind.
    const turned = sweptInterval({ ...level, sideRake: 60 * deg });
    expect(turned.to).toBeCloseTo(Math.hypot(0.0325, 0.005 * Math.sin(60 * deg)), 12);
  });

  it("leaves a core where a leaning face only passes over the axis", () => {
    // Lean b puts the edge point over the axis (D/2) sin b behind it at the tip.
    const over = plainCutter({ backRake: 20 * deg });
    expect(sweptInterval(over).from).toBeCloseTo(0.005 * Math.sin(20 * deg), 9);
  });

  it("refuses a face that is worn away or none", () => {
    const none = plainCutter({ faceDiameter: 0 });
    expect(() => sweptInterval(none)).toThrow("faceDiameter must be positive, got 0");
    expect(() => sweptInterval({ ...none, faceDiameter: 0.01, wornHeight: 0.02 })).toThrow(/wornHeight must lie/);
  });
});
