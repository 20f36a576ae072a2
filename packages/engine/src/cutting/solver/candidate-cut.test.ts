import { describe, expect, it } from "vitest";
import { plannedBit } from "../../bit/index.ts";
import { catalogCutter } from "../../cutter/index.ts";
import { rockById, rockResponse } from "../../ground/index.ts";
import { exactBand } from "../../quantity/index.ts";
import { drillAtAdvance } from "../drilled-state.ts";
import { edgeLoads } from "../edge-loads.ts";
import { traceEdges } from "../trace-edges.ts";
import { candidateOf, copied, planOf } from "./candidate.ts";
import { scorer } from "./candidate-score.ts";
import { evenSpread } from "./even-spread.ts";
import type { EvenMeasure, LayoutQuestion } from "./layout-question.ts";
import { drawnMove } from "./moves.ts";
import { randomSource } from "./random-source.ts";
import { FIRST_FLAT, solverSetting } from "./solver-setting.ts";

const inch = 0.0254;
const CELLS = 150;

const question = (measure: EvenMeasure): LayoutQuestion => ({
  spec: {
    holeDiameter: 6.125 * inch,
    profile: { shape: "short parabolic" },
    wings: { wings: 5, cuttersPerWing: 3 },
    cutter: { ...catalogCutter("1308"), chamferWidth: 4e-4, chamferAngle: Math.PI / 4 },
    rakes: { kind: "even", centre: { backRake: 0.17, sideRake: 0.1 }, gauge: { backRake: 0.3, sideRake: 0.15 } },
    material: "steel",
  },
  measure,
  response: rockResponse({ rock: rockById("sandstone"), confinedStrength: exactBand(50e6) }).mid,
  advances: [0.6e-3, 2.5e-3],
});

/** Evenness and side force of a layout by the ways of the cutting room, on the same grid. */
function byOtherWay(of: LayoutQuestion, plan: ReturnType<typeof planOf>) {
  const { layout, places } = plannedBit(of.spec, plan);
  const trace = traceEdges(layout, { cells: CELLS });
  const response = of.response;
  if (!response) throw new Error("the question names no rock");
  const at = (of.advances ?? []).map((advance) => {
    const { engagement, loads, bit } = drillAtAdvance({ trace, response }, advance);
    const worn = { ...trace, flatLength: trace.flatLength.map((length) => Math.max(length, FIRST_FLAT)) };
    const { contactNormal } = edgeLoads(worn, engagement, response);
    const values = {
      area: engagement.area,
      work: loads.torque,
      wear: contactNormal.map((load, k) => load * (places[k]?.tipRadius ?? 0)),
    }[of.measure ?? "area"];
    return { spread: evenSpread(values, (k) => places[k]?.role !== "centre").deviation, side: bit.lateralShare };
  });
  return { evenness: Math.max(...at.map((one) => one.spread)), imbalance: Math.max(...at.map((one) => one.side)) };
}

describe("candidateSum", () => {
  it.each(["area", "work", "wear"] as const)("gives what trace, engage and edgeLoads give, for %s", (measure) => {
    const of = question(measure);
    const setting = solverSetting(of);
    const score = scorer(setting, CELLS);
    const random = randomSource({ seed: 4, row: 0 });
    let candidate = copied(setting.start);
    let compared = 0;
    for (let step = 0; step < 300 && compared < 12; step++) {
      const next = copied(candidate);
      if (!drawnMove(random)(next, setting, random)) continue;
      candidate = next;
      const scored = score(candidate, { imbalanceWeight: 0.5 });
      if (!scored || step % 7 !== 0) continue;
      compared++;
      const other = byOtherWay(of, planOf(candidate));
      expect(scored.evenness).toBeCloseTo(other.evenness, 9);
      expect(scored.imbalance).toBeCloseTo(other.imbalance, 9);
    }
    expect(compared).toBeGreaterThan(5);
  });

  it("does not change when the whole bit is turned", () => {
    const setting = solverSetting(question("work"));
    const score = scorer(setting, CELLS);
    const plain = score(setting.start, { imbalanceWeight: 0.5 });
    const turned = copied(setting.start);
    for (const at of turned.wingAngles.keys()) turned.wingAngles[at] += 1.3;
    const after = score(turned, { imbalanceWeight: 0.5 });
    expect(after?.evenness).toBeCloseTo(plain?.evenness ?? Number.NaN, 9);
    expect(after?.imbalance).toBeCloseTo(plain?.imbalance ?? Number.NaN, 9);
  });
});

describe("candidates", () => {
  it("come back from their plan as they were", () => {
    const setting = solverSetting(question("area"));
    const candidate = copied(setting.start);
    candidate.rakeSteps[2] = 1;
    expect(candidateOf(planOf(candidate))).toEqual(candidate);
  });
});
