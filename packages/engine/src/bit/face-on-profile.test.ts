import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cuttingTip, faceAcrossAxis, faceAtGauge, faceWithTipAt } from "./face-on-profile.ts";
import { bitProfile } from "./profile.ts";
import { profileAtRadius } from "./profile-place.ts";
import { sweptInterval } from "./swept-interval.ts";

const deg = Math.PI / 180;
const shape = fc.constantFrom("flat", "short parabolic", "medium parabolic", "long parabolic" as const);
const profile = fc
  .record({ shape, holeDiameter: fc.double({ min: 0.075, max: 0.3, noNaN: true }) })
  .map((of) => bitProfile({ ...of, leastCorner: 0.00672 }));
const tilt = fc.record({
  backRake: fc.double({ min: 2 * deg, max: 35 * deg, noNaN: true }),
  sideRake: fc.double({ min: 3 * deg, max: 15 * deg, noNaN: true }),
  faceDiameter: fc.constant(0.01344),
});
const profileAngle = fc.double({ min: -20 * deg, max: 90 * deg, noNaN: true });

describe("faceWithTipAt", () => {
  it("puts the tip where it is wanted", () => {
    const tip = fc.record({
      radius: fc.double({ min: 0.01, max: 0.15, noNaN: true }),
      height: fc.double({ min: -0.05, max: 0, noNaN: true }),
    });
    fc.assert(
      fc.property(tip, tilt, profileAngle, (wanted, of, angle) => {
        const found = cuttingTip(faceWithTipAt({ tip: wanted, azimuth: 1, tilt: { ...of, profileAngle: angle } }));
        expect(found.radius).toBeCloseTo(wanted.radius, 12);
        expect(found.height).toBeCloseTo(wanted.height, 12);
      }),
    );
  });
});

describe("faceAcrossAxis", () => {
  it("sweeps from the axis outward, with its tip on the profile", () => {
    fc.assert(
      fc.property(profile, tilt, (on, of) => {
        const pose = faceAcrossAxis({ profile: on, azimuth: 0.3, tilt: of });
        expect(sweptInterval(pose).from).toBeLessThan(1e-9);
        const tip = cuttingTip(pose);
        expect(tip.height).toBeCloseTo(profileAtRadius(on, tip.radius).height, 9);
        expect(pose.profileAngle).toBeCloseTo(profileAtRadius(on, tip.radius).angle, 9);
      }),
    );
  });

  it("crosses the axis the lower on the face the more it is turned outward", () => {
    const on = bitProfile({ shape: "flat", holeDiameter: 0.15, leastCorner: 0.00672 });
    const radius = (sideRake: number) =>
      faceAcrossAxis({ profile: on, azimuth: 0, tilt: { backRake: 10 * deg, sideRake, faceDiameter: 0.01344 } }).radius;
    // Without turn the edge crosses level with the centre.
    expect(radius(0)).toBeCloseTo(0.00672, 12);
    expect(radius(5 * deg)).toBeLessThan(radius(0));
    expect(radius(15 * deg)).toBeLessThan(radius(5 * deg));
  });
});

describe("faceAtGauge", () => {
  it("reaches the hole radius to a thousandth of a micrometre, with its tip on the profile", () => {
    fc.assert(
      fc.property(profile, tilt, fc.double({ min: 0, max: 90 * deg, noNaN: true }), (on, of, angle) => {
        const pose = faceAtGauge({ profile: on, azimuth: 2, tilt: { ...of, profileAngle: angle } });
        expect(Math.abs(sweptInterval(pose).to - on.holeRadius)).toBeLessThan(1e-9);
        const tip = cuttingTip(pose);
        expect(tip.radius).toBeLessThanOrEqual(on.holeRadius + 1e-9);
        expect(tip.height).toBeCloseTo(profileAtRadius(on, Math.min(tip.radius, on.holeRadius)).height, 9);
      }),
    );
  });
});
