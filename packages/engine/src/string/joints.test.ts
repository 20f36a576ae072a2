import { describe, expect, it } from "vitest";
import { REGULAR_CONNECTIONS } from "./connection-list.ts";
import { DRILL_COLLARS } from "./drill-collar-list.ts";
import { DRILL_PIPES, JOINT_LENGTHS } from "./drill-pipe-list.ts";
import {
  feet,
  footPounds,
  gallonsPerMinute,
  inches,
  poundsForce,
  poundsPerFoot,
  poundsPerSquareInch,
} from "./field-sizes.ts";
import { MAKE_UP_TORQUES, makeUpTorque } from "./make-up-torque.ts";
import { pinFindings, pinForBitSize } from "./pin-for-bit-size.ts";
import { RATED_RIGS, RIG_CLASSES } from "./rig-class-list.ts";

describe("the pin of a bit", () => {
  it("takes a size just on a band's edge into that band", () => {
    expect(pinForBitSize(inches(4.5))).toEqual({ decision: "settled", thread: "2 3/8 REG" });
    expect(pinForBitSize(inches(5))).toEqual({ decision: "settled", thread: "2 7/8 REG" });
    expect(pinForBitSize(inches(7.375))).toEqual({ decision: "settled", thread: "3 1/2 REG" });
  });
  it("is asked for, never guessed, where sources disagree or the list ends", () => {
    expect(pinForBitSize(inches(5.5)).decision).toBe("ask");
    expect(pinForBitSize(inches(16))).toEqual({ decision: "ask", candidates: [] });
    expect(() => pinForBitSize(0)).toThrow(/bitDiameter/);
  });
  it("brings a remark when unsettled or unusual", () => {
    const codes = (...of: Parameters<typeof pinFindings>) => pinFindings(...of).map((f) => f.code);
    expect(codes({ bitDiameter: inches(5.125) })).toEqual(["string.pin-unsettled"]);
    expect(codes({ bitDiameter: inches(5.125), thread: "3 1/2 REG" })).toEqual([]);
    expect(codes({ bitDiameter: inches(6.125), thread: "2 7/8 REG" })).toEqual(["string.pin-unusual"]);
    expect(codes({ bitDiameter: inches(6.125) })).toEqual([]);
  });
});

describe("make-up torque", () => {
  it("errs to the weaker row between two subs and keeps the last row for larger ones", () => {
    expect(makeUpTorque({ thread: "3 1/2 REG", subDiameter: inches(4.375) })?.normal).toBeCloseTo(footPounds(8050), 6);
    expect(makeUpTorque({ thread: "3 1/2 REG", subDiameter: inches(5) })?.normal).toBeCloseTo(footPounds(9850), 6);
    expect(makeUpTorque({ thread: "3 1/2 REG", subDiameter: inches(4) })).toBeUndefined();
  });
  it("rises down each thread's rows and from least to most", () => {
    for (const row of MAKE_UP_TORQUES) {
      expect(row.least).toBeLessThan(row.normal);
      expect(row.normal).toBeLessThan(row.most);
      const next = MAKE_UP_TORQUES.find((r) => r.thread === row.thread && r.subDiameter > row.subDiameter);
      if (next) expect(next.normal).toBeGreaterThan(row.normal);
    }
  });
});

describe("the lists", () => {
  it("turn printed units into SI by the exact definitions", () => {
    expect(inches(1)).toBe(0.0254);
    expect(feet(1)).toBeCloseTo(0.3048, 15);
    expect(poundsForce(1)).toBeCloseTo(4.4482216152605, 12);
    expect(poundsPerFoot(1)).toBeCloseTo(14.593902937, 8);
    expect(footPounds(1)).toBeCloseTo(1.3558179483, 9);
    expect(gallonsPerMinute(1)).toBeCloseTo(6.30901964e-5, 12);
    expect(poundsPerSquareInch(1)).toBeCloseTo(6894.757293, 5);
  });
  it("hold pipe whose nominal weight lies above its plain weight by no more than the joints make", () => {
    for (const pipe of DRILL_PIPES) {
      expect(pipe.nominalWeight / pipe.plainEndWeight, pipe.name).toBeGreaterThan(1.05);
      expect(pipe.nominalWeight / pipe.plainEndWeight, pipe.name).toBeLessThan(1.12);
    }
    expect(JOINT_LENGTHS.every((joint) => joint.length > feet(9))).toBe(true);
  });
  it("hold pins whose shoulder is larger than their base", () => {
    for (const joint of REGULAR_CONNECTIONS) {
      expect(joint.bitBevelDiameter).toBeGreaterThan(joint.pinLargeDiameter ?? joint.pitchDiameter);
    }
    expect(DRILL_COLLARS.length).toBe(3);
  });
  it("hold rig classes that grow", () => {
    const hoists = RIG_CLASSES.map((rig) => rig.hoist.mid);
    expect([...hoists].sort((a, b) => a - b)).toEqual(hoists);
    const engines = RIG_CLASSES.map((rig) => rig.enginePower);
    expect(engines.every((engine, k) => k === 0 || engine.low >= engines[k - 1].high)).toBe(true);
    // A mud rig has 150 to 300 hp, common practice with no source; 745.7 W a horsepower.
    expect(engines[1].low / 745.7).toBeCloseTo(150, 1);
    expect(engines[1].high / 745.7).toBeCloseTo(300, 1);
    expect(RATED_RIGS[0].hoistRating).toBeCloseTo(poundsForce(30_000), 6);
  });
});
