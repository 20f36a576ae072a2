import { describe, expect, it } from "vitest";
import { groundColumn } from "../ground/index.ts";
import { advisedBedOf } from "./advised-bed.ts";
import { type CardBedInput, cardContent } from "./card-content.ts";
import { casingPoint } from "./casing-point.ts";
import type { AdvisedFluid } from "./drilling-fluid.ts";
import { fitOfBed } from "./fit-of-bed.ts";
import { practiceWeight } from "./practice-weight-and-speed.ts";
import { runningPoint } from "./running-point.ts";
import { CAUTION_DEFERRAL, safetyCautions } from "./safety-cautions.ts";
import { stopSigns } from "./stop-signs.ts";

const inch = 0.0254;
const holeDiameter = 6.125 * inch;

const fits = groundColumn({
  beds: [
    { name: "yellow clay", rockId: "clay", top: 0, bottom: 11 },
    { name: "chert gravel", rockId: "gravel", top: 11, bottom: 13 },
    { name: "grey shale", rockId: "shale", top: 13, bottom: 40 },
    { name: "sandstone", rockId: "sandstone", top: 40, bottom: 60 },
  ],
  fluidDensity: 1030,
})
  .beds.map(advisedBedOf)
  .map(fitOfBed);
const casing = casingPoint({ fits, from: 0, to: 60 });
const flow = 0.0095;

const beds = fits.map((fit): CardBedInput => {
  if (fit.bed.top < 13) return { fit };
  const run = runningPoint({
    holeDiameter,
    bed: fit.bed,
    candidates: [{ weight: 2 * practiceWeight(holeDiameter), rotarySpeed: 9, rate: 0.008, binds: "torque" }],
  });
  const feed = [
    { depth: fit.bed.top, feedForce: 12_000, gaugeReading: 2e6 },
    { depth: fit.bed.bottom, feedForce: -3000 },
  ];
  return { fit, run, rate: { low: 0.004, mid: 0.008, high: 0.012 }, feed };
});

function cardOn(fluid: AdvisedFluid) {
  const run = beds[2]?.run;
  return cardContent({
    job: "Quillback 12",
    customer: "Quillback Drilling",
    bit: "6 1/8 in, 5 wings",
    holeDiameter,
    flow,
    beds,
    casing,
    ...(run ? { breakIn: run.practice.breakIn } : {}),
    stopSigns: stopSigns({ fits, fluid }),
    cautions: safetyCautions({ fits, fluid, mayFlow: false, places: ["rig"] }),
    findings: casing.findings,
  });
}
const card = cardOn("bentonite");

describe("cardContent", () => {
  it("gives figures only for beds that the bit drills", () => {
    expect(card.rows.map(({ drilled }) => drilled)).toEqual([false, false, true, true]);
    const [, gravel, shale] = card.rows;
    expect(gravel?.weight).toBeUndefined();
    expect(gravel?.remarks[0]).toMatch(/^Not with this bit/);
    expect(shale?.weight).toEqual({
      kind: "force",
      value: practiceWeight(holeDiameter),
      to: 1.25 * practiceWeight(holeDiameter),
    });
    expect(shale?.flow).toEqual({ kind: "flow", value: flow });
    expect(shale?.rate).toEqual({ kind: "rate", value: 0.004, to: 0.012 });
  });

  it("says pull down or hold back, never a negative force", () => {
    const feed = card.rows[2]?.feed ?? [];
    expect(feed.map(({ act, force }) => [act, force.value])).toEqual([
      ["pull down", 12_000],
      ["hold back", 3000],
    ]);
    expect(feed[0]?.gauge).toEqual({ kind: "pressure", value: 2e6 });
    expect(feed[1]?.gauge).toBeUndefined();
  });

  it("prints the casing point, the break-in and the warnings", () => {
    expect(card.casing?.value).toBeCloseTo(13 + 1.524, 9);
    expect(card.breakIn?.weight.to).toBeCloseTo(practiceWeight(holeDiameter) / 2, 9);
    expect(card.warnings).toHaveLength(1);
    expect(card.standing).toContain("never a permission");
  });

  it("never leaves a driller without stop signs and cautions", () => {
    expect(card.stopSigns.length).toBeGreaterThan(3);
    expect(card.cautions.length).toBeGreaterThan(3);
  });
});

describe("safetyCautions", () => {
  const topics = (input: Partial<Parameters<typeof safetyCautions>[0]>) =>
    safetyCautions({ fits, fluid: "bentonite", mayFlow: false, places: ["rig"], ...input }).map(({ topic }) => topic);

  it("defers to local code and licensed practice each time", () => {
    for (const { deferral } of safetyCautions({ fits, fluid: "air", mayFlow: true, places: ["rig", "shop"] })) {
      expect(deferral).toBe(CAUTION_DEFERRAL);
    }
  });

  it("speaks of dust where quartz is drilled, harder on air", () => {
    const textOn = (fluid: AdvisedFluid) => cardOn(fluid).cautions.find(({ topic }) => topic === "silica dust")?.text;
    expect(textOn("air")).toContain("mask");
    expect(textOn("bentonite")).not.toContain("mask");
    expect(topics({ fits: fits.slice(0, 1) })).not.toContain("silica dust");
  });

  it("speaks of flow only where the hole may flow", () => {
    expect(topics({})).not.toContain("flowing water and gas");
    expect(topics({ mayFlow: true })).toContain("flowing water and gas");
  });

  it("keeps the shop's cautions for the shop", () => {
    expect(topics({})).not.toContain("brazing");
    expect(topics({ places: ["shop"] })).toEqual(
      expect.arrayContaining(["brazing", "braze heat", "grinding dust", "acid and presses"]),
    );
  });
});

describe("stopSigns", () => {
  const signs = (fluid: AdvisedFluid, of = fits) => stopSigns({ fits: of, fluid }).map(({ sign }) => sign);

  it("reads the pump gauge on liquid and the air gauge on gas", () => {
    expect(signs("water").some((sign) => sign.includes("pump pressure"))).toBe(true);
    expect(signs("air").some((sign) => sign.includes("pump pressure"))).toBe(false);
  });

  it("speaks of balling and stones only where the ground has them", () => {
    const sandstone = fits.slice(3);
    expect(signs("water").length).toBeGreaterThan(signs("water", sandstone).length);
  });
});
