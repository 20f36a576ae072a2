import { describe, expect, it } from "vitest";
import { feet, footPounds, inches, poundsForce, poundsPerFoot, poundsPerSquareInch } from "./field-sizes.ts";
import type { StringStationInput } from "./string-state.ts";
import { stringStation } from "./string-station.ts";

/** A 6 1/8 in house well to 300 ft: 60 ft of 46.8 lb/ft collars, 13.3 lb/ft pipe in 20 ft joints, 8.6 lb/gal mud. */
const well: StringStationInput = {
  makeUp: {
    collars: { length: feet(60), linearWeight: poundsPerFoot(46.8) },
    pipe: { jointLength: feet(20), linearWeight: poundsPerFoot(13.3) },
  },
  fluidDensity: 8.6 * 119.826427,
  depth: feet(300),
  targetWeight: poundsForce(6125),
  bitDiameter: inches(6.125),
  thread: "3 1/2 REG",
  subDiameter: inches(4.5),
  limits: {
    pullDownRating: poundsForce(8000),
    hoistRating: poundsForce(30_000),
    gauge: { gaugeForceFactor: poundsForce(20) / poundsPerSquareInch(1) },
  },
  torqueRating: footPounds(10_000),
  drillingTorque: footPounds(1500),
  rotarySpeed: (90 * 2 * Math.PI) / 60,
};
const codes = (input: StringStationInput) => stringStation(input).findings.map((f) => `${f.severity} ${f.code}`);

describe("a string on its rig", () => {
  const worked = stringStation(well);

  it("needs 913 lbf of pull-down at 300 ft, 45.6 psi on a gauge of 20 lbf for each psi", () => {
    const last = worked.rows[worked.rows.length - 1];
    expect(worked.rows.length).toBe(15);
    expect(last.feedForce / poundsForce(1)).toBeCloseTo(913, -1);
    expect((last.gaugeReading ?? 0) / poundsPerSquareInch(1)).toBeCloseTo(913 / 20, 0);
  });

  it("would turn to holding back below the hole: 913 lbf over .869 x 13.3 lb/ft is another 79 ft", () => {
    expect(worked.balanceDepth / feet(1)).toBeCloseTo(379, 0);
  });

  it("has the neutral point in the pipe: no collar length of 60 ft carries 6125 lbf", () => {
    expect(worked.neutralPoint.part).toBe("above the string");
    const deeper = stringStation({ ...well, depth: feet(500) });
    expect(deeper.neutralPoint.part).toBe("pipe");
    expect(deeper.neutralPoint.aboveBit / feet(1)).toBeCloseTo(379, 0);
    const light = stringStation({ ...well, targetWeight: poundsForce(2000) });
    expect(light.neutralPoint.part).toBe("collars");
    expect(light.neutralPoint.aboveBit / feet(1)).toBeCloseTo(2000 / (0.8687 * 46.8), 0);
  });

  it("takes 25.7 hp to turn", () => {
    expect((worked.rotaryPower ?? 0) / 745.7).toBeCloseTo(25.7, 1);
  });

  it("shows a working for every figure and names each once", () => {
    const names = worked.working.map((w) => w.name);
    expect(new Set(names).size).toBe(names.length);
    for (const row of worked.rows) {
      const feed = worked.working.find((w) => w.name === `feed force, joint ${row.joint}`);
      expect(feed?.value).toBe(row.feedForce);
      expect(names).toContain(`feed gauge, joint ${row.joint}`);
    }
    for (const name of ["buoyancy factor", "rotary power", "neutral point above the bit"])
      expect(names).toContain(name);
  });
});

describe("remarks on a string", () => {
  it("find only that the rig pushes all the way in the shallow well", () => {
    expect(codes(well)).toEqual(["note string.pressed-throughout"]);
  });

  it("caution to hold back below the balance depth", () => {
    const deep = stringStation({ ...well, depth: feet(500) });
    const holdBack = deep.findings.find((f) => f.code === "string.hold-back");
    expect(holdBack?.value).toBe(deep.balanceDepth);
    expect(codes({ ...well, depth: feet(500) })).toEqual([
      "caution string.hold-back",
      "caution string.neutral-point-in-pipe",
      "note string.collars-for-neutral-point",
    ]);
    // 177 ft of 46.8 lb/ft carry 6,125 lbf in 8.6 ppg: handbook case collar.length, tolerance of that case.
    const enough = deep.findings.find((f) => f.code === "string.collars-for-neutral-point")?.value ?? 0;
    expect(Math.abs(enough / feet(177) - 1)).toBeLessThan(3e-3);
  });

  it("hold the torque of drilling against the pipe", () => {
    // 18,550 lbf·ft: torsional yield of new 3 1/2 in 13.30 lb/ft grade E pipe, API RP 7G, recalled.
    const pipeSize = { outerDiameter: inches(3.5), bore: inches(2.764) };
    const yieldStrength = 75_000 * poundsPerSquareInch(1);
    const turned = (torque: number) =>
      codes({ ...well, pipeSize, yieldStrength, drillingTorque: footPounds(torque), torqueRating: footPounds(30_000) });
    expect(turned(18_700)).toContain("stop string.pipe-twists-off");
    expect(turned(18_300)).toContain("caution string.pipe-torque-near-yield");
    expect(turned(13_800).join()).not.toMatch(/string\.pipe-t/);
  });

  it("tell of a rig that stalls also where the thread is not known", () => {
    const { thread: _, ...unknown } = well;
    expect(codes({ ...unknown, torqueRating: footPounds(1400) })).toContain("caution string.rig-torque-short");
  });

  it("take a string without collars as it is", () => {
    const bare = { ...well, makeUp: { pipe: well.makeUp.pipe }, depth: feet(600) };
    expect(codes(bare)).toEqual(["caution string.hold-back", "note string.no-collars"]);
  });

  it("say where the rig cannot push the weight", () => {
    const weak = { ...well, limits: { pullDownRating: poundsForce(3000) } };
    const station = stringStation(weak);
    // 6125 - 3000 lbf from 60 ft of collars in mud (2439 lbf) and 59 ft of pipe
    expect((station.fullWeightDepth ?? 0) / feet(1)).toBeCloseTo(60 + (3125 - 2439.4) / (0.8687 * 13.3), 0);
    expect(codes(weak)).toContain("caution string.pull-down-short");
    expect(station.rows.find((row) => row.verdict === "within")?.depth).toBeGreaterThanOrEqual(
      station.fullWeightDepth ?? Number.POSITIVE_INFINITY,
    );
  });

  it("start to push at once where the pull-down overcomes drag too, and count the drag where it does not", () => {
    const pullDownRating = poundsForce(8000);
    const dragged = (drag: number) => stringStation({ ...well, drag, limits: { pullDownRating } });
    // 6125 - 8000 + 1000 lbf: the rig has 875 lbf to spare before anything hangs.
    expect(dragged(poundsForce(1000)).fullWeightDepth).toBe(0);
    expect(dragged(poundsForce(1000)).findings.map(({ code }) => code)).not.toContain("string.pull-down-short");
    // 6125 - 8000 + 3000 lbf = 1125 lbf, carried by collars of 46.8 lb/ft in mud.
    expect((dragged(poundsForce(3000)).fullWeightDepth ?? 0) / feet(1)).toBeCloseTo(1125 / (0.8687 * 46.8), 1);
  });

  it("tell of the hoist also where the topmost joint is overloaded before", () => {
    const limits = { hoistRating: poundsForce(5000), topJointRating: poundsForce(4000) };
    expect(codes({ ...well, limits })).toEqual(
      expect.arrayContaining(["stop string.hoist-short", "stop string.top-joint-overloaded"]),
    );
  });

  it("stop at a string heavier than the hoist or the top joint may carry", () => {
    expect(codes({ ...well, limits: { hoistRating: poundsForce(5000) } })).toContain("stop string.hoist-short");
    expect(codes({ ...well, limits: { topJointRating: poundsForce(5250) } })).toContain(
      "stop string.top-joint-overloaded",
    );
  });

  it("look at the joint's torque from three sides", () => {
    expect(codes({ ...well, torqueRating: footPounds(4000) })).toContain("caution string.make-up-short");
    expect(codes({ ...well, drillingTorque: footPounds(9900) })).toContain("caution string.torque-above-make-up");
    expect(codes({ ...well, torqueRating: footPounds(1400) })).toEqual([
      "caution string.make-up-short",
      "caution string.torque-above-make-up",
      "caution string.rig-torque-short",
      "note string.pressed-throughout",
    ]);
    expect(codes({ ...well, subDiameter: inches(4) })).toContain("caution string.make-up-unknown");
  });

  it("ask for a pin that is not settled", () => {
    const { thread: _, ...unknown } = well;
    expect(codes({ ...unknown, bitDiameter: inches(5.125) })).toContain("caution string.pin-unsettled");
  });
});
