import { describe, expect, it } from "vitest";
import { gapsBetweenWings } from "../../bit/index.ts";
import { catalogCutter } from "../../cutter/index.ts";
import { ARC_STEP, copied, RAKE_STEP, SWEEP_STEP } from "./candidate.ts";
import type { LayoutQuestion } from "./layout-question.ts";
import { drawnMove, holdsDiameter } from "./moves.ts";
import { randomSource } from "./random-source.ts";
import { solverSetting } from "./solver-setting.ts";

const spec: LayoutQuestion["spec"] = {
  holeDiameter: 7.875 * 0.0254,
  profile: { shape: "short parabolic" },
  wings: { wings: 5, cuttersPerWing: 4 },
  cutter: catalogCutter("1308"),
  rakes: { kind: "even", centre: { backRake: 0.17, sideRake: 0.1 }, gauge: { backRake: 0.25, sideRake: 0.15 } },
  material: "steel",
};

/** A long random walk: every allowed move is taken, none is undone. */
function walked(question: LayoutQuestion, steps: number) {
  const setting = solverSetting(question);
  const random = randomSource({ seed: 11, row: 0 });
  const walk = [copied(setting.start)];
  for (let step = 0; step < steps; step++) {
    const before = walk[walk.length - 1];
    const next = copied(before);
    const moved = drawnMove(random)(next, setting, random);
    if (moved) walk.push(next);
    for (const at of moved ? next.role.keys() : []) {
      const stands = next.role[at] === before.role[at] && next.arc[at] === before.arc[at];
      const sameWing = next.wing[at] === before.wing[at];
      if (!moved?.includes(at)) expect(stands && sameWing).toBe(true);
    }
  }
  return { setting, walk };
}

describe("moves", () => {
  it("keep the cutters of each wing, the gaps, the freedom and the diameter, however far they walk", () => {
    const { setting, walk } = walked({ spec }, 4000);
    const onWings = (wing: readonly number[]) =>
      setting.start.wingAngles.map((_, k) => wing.filter((w) => w === k).length);
    for (const candidate of walk) {
      expect(onWings(candidate.wing)).toEqual(onWings(setting.start.wing));
      expect(candidate.role.filter((role) => role === "centre")).toHaveLength(1);
      expect(holdsDiameter(candidate)).toBe(true);
      const gaps = gapsBetweenWings(candidate.wingAngles);
      expect(gaps.reduce((sum, gap) => sum + gap, 0)).toBeCloseTo(2 * Math.PI, 9);
      expect(Math.min(...gaps)).toBeGreaterThanOrEqual(setting.gaps.least);
      expect(Math.max(...gaps)).toBeLessThanOrEqual(setting.gaps.most);
      expect(Math.max(...gaps)).toBeGreaterThanOrEqual(setting.gaps.leastWidest);
      expect(Math.abs(candidate.sweep - setting.start.sweep)).toBeLessThan(setting.freedom.sweep + SWEEP_STEP);
      for (const [zone, steps] of candidate.rakeSteps.entries()) {
        expect(Math.abs(steps) * RAKE_STEP).toBeLessThan(setting.freedom.rake + RAKE_STEP / 2);
        if (zone > 0) expect(steps).toBeGreaterThanOrEqual(candidate.rakeSteps[zone - 1]);
      }
    }
    const last = walk[walk.length - 1];
    expect(last.wingAngles).not.toEqual(setting.start.wingAngles);
    expect(last.rakeSteps).not.toEqual(setting.start.rakeSteps);
    for (const [at, arc] of last.arc.entries()) {
      if (last.role[at] !== "face") continue;
      expect(Math.abs(arc / ARC_STEP - Math.round(arc / ARC_STEP))).toBeLessThan(1e-6);
    }
  });

  it("leave wings, sweep and rakes alone where no freedom is given", () => {
    const { setting, walk } = walked({ spec, freedom: { sweep: 0, gap: 0, rake: 0 } }, 800);
    const last = walk[walk.length - 1];
    expect(last.wingAngles).toEqual(setting.start.wingAngles);
    expect(last.sweep).toBe(setting.start.sweep);
    expect(last.rakeSteps).toEqual(setting.start.rakeSteps);
    expect(last.arc).not.toEqual(setting.start.arc);
  });

  it("leave wings alone whose angles are named", () => {
    const angles = [0, 1.2, 2.5, 3.7, 5.1];
    const { walk } = walked({ spec: { ...spec, wings: { ...spec.wings, angles } } }, 800);
    expect(walk[walk.length - 1].wingAngles).toEqual(angles);
  });
});

// Wings 1 to 4 stand at 0, 90, 180 and 270 degrees; the azimuths of two are counted in other turns.
const TURN = 2 * Math.PI;
const wingAngles = [TURN, TURN / 4, TURN / 2 - TURN, (3 / 4) * TURN];

describe("holdsDiameter", () => {
  it("goes by where the wings stand, not by the turn that their azimuths are counted in", () => {
    const carrying = (gaugeWings: readonly number[]) => ({
      role: [0, 1, 2, 3].map((wing) => (gaugeWings.includes(wing) ? ("gauge" as const) : ("face" as const))),
      wing: [0, 1, 2, 3],
      arc: [0, 0, 0, 0],
      wingAngles,
      sweep: 0,
      rakeSteps: [],
    });
    expect(holdsDiameter(carrying([0, 2]))).toBe(true);
    expect(holdsDiameter(carrying([1, 3]))).toBe(true);
    expect(holdsDiameter(carrying([0, 1]))).toBe(false);
    expect(holdsDiameter(carrying([1, 2]))).toBe(false);
  });
});
