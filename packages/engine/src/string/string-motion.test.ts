import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { criticalRotarySpeed } from "./critical-rotary-speed.ts";
import { feet, inches, poundsForce, poundsPerFoot } from "./field-sizes.ts";
import { stringStation } from "./string-station.ts";

const RPM = (2 * Math.PI) / 60;
const pipe = { jointLength: feet(20), linearWeight: poundsPerFoot(13.3) };
const job = {
  makeUp: { pipe },
  fluidDensity: 0,
  depth: feet(300),
  bitDiameter: inches(6.125),
  targetWeight: poundsForce(6000),
  limits: { pullDownRating: poundsForce(3000) },
  startDepth: feet(60),
};
const codes = (input: Parameters<typeof stringStation>[0]) => stringStation(input).findings.map(({ code }) => code);

describe("the speed at which a joint whips", () => {
  it.each([
    [3.5, 2.764, 20],
    [2.375, 1.815, 10],
    [4.5, 3.826, 30],
  ])("is the field rule for %s in pipe with a bore of %s in, joints of %s ft", (outer, bore, length) => {
    // (b) API RP 7G, recalled: 4,760,000 √(D² + d²)/l², inches and rpm.
    const rpm = (4.76e6 * Math.hypot(outer, bore)) / (12 * length) ** 2;
    const found = criticalRotarySpeed({ outerDiameter: inches(outer), bore: inches(bore), jointLength: feet(length) });
    expectClose(found / RPM, rpm, 5e-3);
  });

  it("is told where the planned speed comes near it, and not far from it", () => {
    const pipeSize = { outerDiameter: inches(3.5), bore: inches(2.764) };
    const at = (rpm: number) => codes({ ...job, pipeSize, rotarySpeed: rpm * RPM });
    expect(at(330)).toContain("string.critical-speed");
    expect(at(120)).not.toContain("string.critical-speed");
  });
});

describe("the collar that makes up a weight", () => {
  it("is what the rig lacks over what collar weighs more than pipe", () => {
    const makeUp = { pipe, collars: { length: feet(20), linearWeight: poundsPerFoot(53) } };
    const { collar } = stringStation({ ...job, makeUp });
    // (d) by hand, in air: 6000 - 3000 - 20·53 - 40·13.3 = 1408 lbf; over 53 - 13.3 lbf/ft, 35.466 ft.
    expectClose((collar?.missingWeight ?? 0) / poundsForce(1), 1408, 1e-9);
    expectClose((collar?.collarLength ?? 0) / feet(1), 1408 / 39.7, 1e-9);
    expect(codes({ ...job, makeUp })).toContain("string.collar-needed");
  });

  it("gives, put in, just the weight wanted", () => {
    const from = { ...job, startDepth: feet(100) };
    const { collar } = stringStation(from);
    const { collarLength = 0, collarWeight: linearWeight = 0 } = collar ?? {};
    const { rows } = stringStation({ ...from, makeUp: { pipe, collars: { length: collarLength, linearWeight } } });
    expect(collarLength).toBeLessThan(feet(100));
    expectClose(rows.find(({ depth }) => Math.abs(depth - feet(100)) < 1e-6)?.mostWeight ?? 0, job.targetWeight, 1e-9);
  });

  it("is not spoken of where the rig pushes enough, or where its push is not known", () => {
    expect(stringStation({ ...job, limits: { pullDownRating: poundsForce(9000) } }).collar).toBeUndefined();
    expect(stringStation({ ...job, limits: {} }).collar).toBeUndefined();
  });
});

describe("the twist of a string", () => {
  it("is that of a plain bar, and told once it passes a turn", () => {
    const [outer, bore, length, torque] = [inches(3.5), inches(2.764), feet(300), 2000];
    // (d) T L/(G J) with G = 79.3 GPa.
    const torsionalStiffness = (79.3e9 * Math.PI * (outer ** 4 - bore ** 4)) / (32 * length);
    const { twist } = stringStation({ ...job, torsionalStiffness, drillingTorque: torque });
    expectClose(twist ?? 0, (32 * torque * length) / (79.3e9 * Math.PI * (outer ** 4 - bore ** 4)), 1e-12);
    expect(codes({ ...job, torsionalStiffness, drillingTorque: torque })).not.toContain("string.wound-up");
    expect(codes({ ...job, torsionalStiffness: torsionalStiffness / 10, drillingTorque: torque * 2 })).toContain(
      "string.wound-up",
    );
  });
});
