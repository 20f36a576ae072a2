import { readFileSync } from "node:fs";
import { COBALT_TABLE_LIMIT, LEACHED_TABLE_LIMIT } from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { projectFile } from "../../../../tests/support/command.ts";
import { parseTraveler } from "../document/index.ts";
import { workUp } from "../work-up.ts";
import type { Workup } from "../workup.ts";
import { lifeStation, lifeStationInSteps } from "./life-station.ts";

function worked(example: string, change: (document: Record<string, unknown>) => void = () => {}): Workup {
  const document = JSON.parse(readFileSync(projectFile(`examples/${example}.traveler.json`), "utf8"));
  change(document);
  const read = parseTraveler(JSON.stringify(document));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return workUp(read);
}

const well = worked("house-well");

describe("lifeStation", () => {
  it("drills the beds of the cut at their own speeds, and begins at the rates of the cut", () => {
    const { beds, life } = lifeStation(well.inquiry, well, { holes: 1 });
    expect(beds.map(({ name }) => name)).toEqual(well.cut.beds.map(({ bed }) => bed.name));
    beds.forEach((bed, k) => {
      expect(bed.rotarySpeed).toBe(well.cut.beds[k].rotarySpeed);
      expect(bed.weight).toBeGreaterThanOrEqual(well.cut.beds[k].weight * (1 - 1e-9));
    });
    const first = life?.steps[0];
    expectClose(first?.rate ?? 0, well.cut.beds[0].rate.mid, 0.1);
    expect(life?.end.by).toBe("holes drilled");
    expectClose(
      life?.footage ?? 0,
      beds.reduce((sum, { top, bottom }) => sum + bottom - top, 0),
      1e-9,
    );
  });

  it("goes on hole after hole to a limit, within a band of a factor of ten either way", () => {
    const { life, footageBand } = lifeStation(well.inquiry, well);
    expect(life?.end.by).not.toBe("holes drilled");
    expect(life?.holes).toBeGreaterThan(1);
    const { low, mid, high } = footageBand ?? expect.fail("no band");
    expect(mid / low).toBeGreaterThan(6);
    expect(mid / low).toBeLessThan(15);
    expectClose(high / mid, 10, 1e-9);
  });

  it("wears in step with the factor that returned bits have shown, and says so", () => {
    const [once, thrice] = [1, 3].map((wearFactor) => lifeStation(well.inquiry, well, { wearFactor }).life);
    expectClose((once?.footage ?? 0) / (thrice?.footage ?? 1), 3, 0.15);
    expect(thrice?.findings.map(({ code }) => code)).toContain("wear-coefficient-set");
    expect(once?.findings.map(({ code }) => code)).toContain("wear-coefficient-unsourced");
  });

  it("keeps a weight set by hand", () => {
    const byHand = worked("house-well", (document) => {
      document.overrides = { ...(document.overrides as object), weight: "2000 lbf" };
    });
    const { beds } = lifeStation(byHand.inquiry, byHand, { holes: 1 });
    for (const { weight } of beds) expect(weight).toBeLessThanOrEqual(2000 * 4.4483);
  });

  it("knows leached diamond from diamond with its cobalt, and cooling from none", () => {
    const measured = worked("measured-bit");
    const onAir = worked("house-well", (document) => {
      const inquiry = document.inquiry as Record<string, unknown>;
      inquiry.fluid = { kind: "air" };
      inquiry.compressor = { flow: "900 cfm", pressure: "350 psi" };
    });
    expect(lifeStation(well.inquiry, well, { holes: 1 }).limits.temperature).toBe(LEACHED_TABLE_LIMIT);
    expect(lifeStation(measured.inquiry, measured, { holes: 1 }).limits.temperature).toBe(COBALT_TABLE_LIMIT);
    const dry = lifeStation(onAir.inquiry, onAir, { holes: 1 });
    expect(dry.films).toBeUndefined();
    expect(dry.heatCurves?.curves.every(({ flowShare }) => flowShare === 1)).toBe(true);
  });

  it("allows less weight at less flow, wherever heat sets a limit at all", () => {
    const measured = worked("measured-bit");
    const { curves } = lifeStation(measured.inquiry, measured, { holes: 1 }).heatCurves ?? expect.fail("no curves");
    const [full, half] = [1, 0.5].map((share) =>
      curves.filter(({ flowShare }) => flowShare === share).flatMap(({ points }) => points),
    );
    const both = full.flatMap(({ weight }, k) => {
      const less = half[k].weight;
      return weight === undefined || less === undefined ? [] : [{ weight, less }];
    });
    expect(both.length).toBeGreaterThan(0);
    for (const { weight, less } of both) expect(less).toBeLessThan(weight);
  });

  it("stops where it is told to, with what it has", () => {
    let asked = 0;
    const steps = lifeStationInSteps(well.inquiry, well, { shouldStop: () => ++asked > 10 });
    let step = steps.next();
    while (!step.done) step = steps.next();
    expect(step.value.life?.end.by).toBe("stopped");
    expect(step.value.life?.footage).toBeGreaterThan(0);
    expect(step.value.findings.map(({ code }) => code)).toContain("life-ends-stopped");
  });

  it("holds the gauge with the pads ordered, or those of the rules, and with none of a bit that tells of none", () => {
    const pads = (change: (spec: Record<string, unknown>) => unknown) =>
      worked("house-well", (document) => change((document.bit as { spec: Record<string, unknown> }).spec));
    const footage = (workup: Workup) => workup.life.life?.footage ?? Number.NaN;
    const short = pads((spec) => Object.assign(spec, { gaugeLength: "1/4 in", gaugeProtection: "hardfacing" }));
    const long = pads((spec) => Object.assign(spec, { gaugeLength: "2 in", gaugeProtection: "diamond" }));
    expect(footage(long)).toBeGreaterThan(1.1 * footage(short));
    const codes = (workup: Workup) => workup.life.findings.map(({ code }) => code);
    expect(codes(well)).toContain("pad-wear-unsourced");
    expect(codes(worked("measured-bit"))).toContain("gauge-pads-left-out");
  });
});
