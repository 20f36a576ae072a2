import { readFileSync } from "node:fs";
import { STANDARD_GRAVITY } from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { projectFile } from "../../../../tests/support/command.ts";
import { parseTraveler } from "../document/index.ts";
import { workUp } from "../work-up.ts";
import type { Workup } from "../workup.ts";
import { workupJson } from "../workup-json.ts";

const document = () => JSON.parse(readFileSync(projectFile("examples/house-well.traveler.json"), "utf8"));

function worked(change: (document: ReturnType<typeof JSON.parse>) => unknown = () => undefined): Workup {
  const traveler = document();
  change(traveler);
  const read = parseTraveler(JSON.stringify(traveler));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return workUp(read);
}

const well = worked();
const crossingsOf = ({ stability }: Workup) =>
  stability.beds.flatMap(({ review }) => review.crossings.map(({ from, to }) => `${from} > ${to}`));

describe("stabilityStation", () => {
  it("looks at the very runs of the cut station", () => {
    const { beds } = well.stability;
    expect(beds.map(({ name }) => name)).toEqual(well.cut.beds.map(({ bed }) => bed.name));
    beds.forEach(({ review, weight, rotarySpeed }, k) => {
      const { drilling } = well.cut.beds[k];
      expect([weight, rotarySpeed]).toEqual([well.cut.beds[k].weight, well.cut.beds[k].rotarySpeed]);
      expectClose(review.advance, drilling.advance, 1e-6);
      expectClose(review.imbalance.whole.share, drilling.bit.lateralShare, 1e-5);
    });
  });

  it("crosses from bed to bed the way down, at the weight of the bed above", () => {
    const [, lime] = well.stability.beds;
    const [crossed] = lime.review.crossings;
    expect([crossed.from, crossed.to]).toEqual(["gray shale", "limestone, medium hard"]);
    expect(crossed.weight).toBe(well.cut.beds[0].weight);
    expect(crossed.intoHarder).toBe(true);
  });

  it("meets the hard bands that the phrase names within a bed, and none that it does not", () => {
    const bands = "blue shale w/ lime stringers > its limestone bands";
    expect(crossingsOf(well)).toContain(bands);
    const plain = worked((traveler) => {
      traveler.ground.beds[5].phrase = "blue shale";
    });
    expect(crossingsOf(plain)).toHaveLength(crossingsOf(well).length - 1);
  });

  it("does not cross where the bit leaves out a bed between two", () => {
    const gapped = worked((traveler) => {
      traveler.ground.beds[5] = { bottom: "228 ft", rock: "granite" };
    });
    const drilled = gapped.cut.beds.map(({ bed }) => bed.name);
    expect(drilled).not.toContain("granite");
    for (const crossing of crossingsOf(gapped)) expect(crossing).not.toContain("limestone, medium hard > sandstone");
  });

  it("hangs the bit on pipe and collars as long as half-way through the bed", () => {
    const collared = worked((traveler) => {
      traveler.inquiry.collars = [
        { outsideDiameter: "4 3/4 in", bore: "2 1/4 in", length: "30 ft", weight: "46.7 lb/ft" },
      ];
    });
    const { top, bottom, review } = collared.stability.beds[1];
    const { pipe, collars, rig } = collared.inquiry.inquiry;
    const length = (top + bottom) / 2;
    expectClose(review.string?.mode.length ?? 0, length, 1e-12);
    const [collar] = collars;
    const steel = collar.linearMass * collar.length + pipe.linearMass * (length - collar.length);
    expectClose(review.string?.mass ?? 0, steel + rig.topHeadWeight / STANDARD_GRAVITY, 1e-9);
  });

  it("names the beds with what it finds there, once for all alike, and the depths at which a speed is in step", () => {
    const found = well.findings.filter(({ station }) => station === "stability");
    expect(found.length).toBeGreaterThan(0);
    const names = well.stability.beds.map(({ name }) => name);
    for (const { where } of found) expect(names.some((name) => where.includes(name))).toBe(true);
    expect(new Set(found.map(({ code, severity, where }) => `${code} ${severity} ${where}`)).size).toBe(found.length);
    const inStep = found.find(({ code }) => code === "speed-in-step-with-string");
    const bed = well.stability.beds.find(({ name }) => inStep?.where.includes(name));
    expect(inStep?.value).toBeGreaterThanOrEqual(bed?.top ?? Number.NaN);
    expect(inStep?.limit).toBeLessThanOrEqual(bed?.bottom ?? Number.NaN);
  });

  it("opens every figure to a working of its own name", () => {
    const { working } = well.stability;
    expect(working.length).toBeGreaterThan(0);
    for (const { name, value } of working) expect(Number.isFinite(value), name).toBe(true);
  });

  it("keeps marches, loads and curves out of the saved workup", () => {
    const saved = JSON.parse(workupJson(well)).stability.beds[1].review;
    expect(saved.string.march.regime).toBe(well.stability.beds[1].review.string?.march.regime);
    expect(saved.string.march).not.toHaveProperty("series");
    expect(saved).not.toHaveProperty("loads");
    expect(saved.crossings[0].crossing).not.toHaveProperty("curve");
  });

  it("has nothing to say where no bed is drilled", () => {
    const gravel = worked((traveler) => {
      traveler.ground.beds = [{ top: "0 ft", bottom: "360 ft", rock: "gravel" }];
    });
    expect(gravel.stability).toEqual({ beds: [], findings: [], working: [] });
  });
});
