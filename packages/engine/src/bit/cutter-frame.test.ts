import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cross, dot, length, minus, type Vector } from "../geometry/index.ts";
import { cutterFrame, edgePoint } from "./cutter-frame.ts";
import type { CutterPose } from "./placed-cutter.ts";

const deg = Math.PI / 180;
const nose: CutterPose = {
  radius: 0.05,
  azimuth: 0,
  height: 0,
  profileAngle: 0,
  backRake: 20 * deg,
  sideRake: 0,
  faceDiameter: 0.01344,
};

const close = (a: Vector, b: Vector) => expect(length(minus(a, b))).toBeLessThan(1e-12);

describe("cutterFrame", () => {
  it("travels toward growing azimuth", () => {
    close(cutterFrame(nose).travel, [0, 1, 0]);
    close(cutterFrame({ ...nose, azimuth: Math.PI / 2 }).travel, [-1, 0, 0]);
  });

  it("leans the top of the face forward with positive back rake: the deepest edge point trails the centre", () => {
    const frame = cutterFrame(nose);
    const deepest = edgePoint(frame, nose.faceDiameter, Math.PI / 2);
    const ahead = dot(minus(deepest, frame.centre), frame.travel);
    expect(ahead).toBeCloseTo(-(0.01344 / 2) * Math.sin(20 * deg), 12);
    expect(deepest[2]).toBeCloseTo((0.01344 / 2) * Math.cos(20 * deg), 12);
  });

  it("turns the face outward with positive side rake", () => {
    const frame = cutterFrame({ ...nose, backRake: 0, sideRake: 10 * deg });
    expect(dot(frame.faceNormal, frame.outward)).toBeCloseTo(Math.sin(10 * deg), 12);
  });

  it("points the profile normal outward at gauge and down at the nose", () => {
    close(cutterFrame({ ...nose, profileAngle: Math.PI / 2 }).profileNormal, [1, 0, 0]);
    close(cutterFrame(nose).profileNormal, [0, 0, 1]);
  });

  it("is orthonormal for any pose", () => {
    const angle = fc.double({ min: -1.2, max: 1.2, noNaN: true });
    fc.assert(
      fc.property(angle, angle, angle, angle, (azimuth, profileAngle, backRake, sideRake) => {
        const f = cutterFrame({ ...nose, azimuth, profileAngle, backRake: backRake / 2, sideRake: sideRake / 2 });
        close(f.faceAcross, cross(f.faceDown, f.faceNormal));
        for (const direction of [f.faceNormal, f.faceDown, f.faceAcross]) expect(length(direction)).toBeCloseTo(1, 12);
        expect(dot(f.faceDown, f.faceNormal)).toBeCloseTo(0, 12);
      }),
    );
  });
});
