import { beforeAll, describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { rpm } from "../../../../tests/support/field-units.ts";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { parseTraveler } from "../document/index.ts";
import { workUp } from "../work-up.ts";
import type { Workup } from "../workup.ts";
import { type BandsStudy, bandsStudy, bandsStudyInSteps } from "./bands-study.ts";
import { lifeBands, lifeBandsInSteps } from "./life-bands.ts";
import { runFindings } from "./map-findings.ts";
import { type MapStudy, mapStudy, mapStudyInSteps } from "./map-study.ts";
import { studiedBeds } from "./studied-beds.ts";

type Sound = ReturnType<typeof soundTraveler>;

function worked(change: (traveler: Sound) => unknown = () => undefined): Workup {
  const traveler = soundTraveler();
  change(traveler);
  const read = parseTraveler(traveler);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  return workUp(read);
}

let workup: Workup;
beforeAll(() => {
  workup = worked();
});

describe("studiedBeds", () => {
  it("takes the beds the bit drills with the limits of the cut station", () => {
    const { beds } = studiedBeds(workup);
    expect(beds.map(({ name }) => name)).toEqual(["shale", "limestone"]);
    for (const { cut, limits } of beds) {
      const known = new Set(Object.keys(limits));
      for (const { limit } of cut.bounds) expect(known.has(limit)).toBe(true);
      expect(limits.torque).toBe(workup.inquiry.inquiry.rig.torque);
    }
  });

  it("picks a bed by number, by name, by a part of the name; a whole name goes first", () => {
    const named = (asked: string) => studiedBeds(workup, asked).beds.map(({ number }) => number);
    expect(named("2")).toEqual([2]);
    expect(named("Limestone")).toEqual([2]);
    expect(named(" lime ")).toEqual([2]);
    expect(named("shale")).toEqual([1]);
    expect(named("granite")).toEqual([]);
    expect(named("")).toEqual([]);
  });
});

describe("mapStudyInSteps", () => {
  it("tells the bed it is at, and ends with the beds it has when it is stopped", () => {
    const workup = worked();
    const names = workup.cut.beds.map(({ bed }) => bed.name);
    expect(names.length).toBeGreaterThan(1);
    let told = 0;
    const steps = mapStudyInSteps(workup, { shouldStop: () => told > 0 });
    expect(steps.next()).toEqual({ done: false, value: { bed: names[0], done: 0, of: names.length } });
    told += 1;
    const end = steps.next();
    expect(end.done && end.value.beds.map(({ name }) => name)).toEqual(names.slice(0, 1));
  });
});

describe("mapStudy", () => {
  let study: MapStudy;
  beforeAll(() => {
    study = mapStudy(workup);
  });

  it("draws past what the rig turns and past the rule of thumb", () => {
    const { rig } = workup.inquiry.inquiry;
    for (const { map, rule, run, table } of study.beds) {
      const last = map.rotarySpeeds[map.rotarySpeeds.length - 1];
      expect(last).toBeGreaterThan(rig.rotarySpeedMax);
      expect(map.rotarySpeeds[0]).toBeLessThan(rig.rotarySpeedMin);
      expect(map.mostWeight).toBeGreaterThan(rule.weight.high);
      expect(map.mostWeight).toBeGreaterThan(run.weight);
      for (const { rate, rotarySpeed, advance } of table)
        expectClose(rate, (advance * rotarySpeed) / (2 * Math.PI), 1e-12);
    }
  });

  it("lists the most weight at speeds the rotary turns, by the tightest line", () => {
    for (const { inside, map } of study.beds) {
      expect(inside.map(({ rotarySpeed }) => Math.round(rotarySpeed / rpm))).toEqual([20, 40, 60, 80, 100, 120, 140]);
      for (const { rotarySpeed, advance, binds } of inside) {
        const here = map.lines.flatMap(({ points }) => points.filter((point) => point.rotarySpeed === rotarySpeed));
        expect(Math.min(...here.map((point) => point.advance))).toBe(advance);
        expect(map.lines.map(({ limit }) => limit)).toContain(binds);
      }
    }
  });

  it("keeps the best point out of speeds to keep out of, and says where none is left", () => {
    const avoid = [{ from: 100 * rpm, to: 200 * rpm, why: "the string swings" }];
    const [shale] = mapStudy(workup, { bed: "shale", avoid }).beds;
    expect(shale.map.best?.rotarySpeed ?? 0).toBeLessThanOrEqual(100 * rpm * (1 + 1e-9));
    const none = mapStudy(workup, { bed: "shale", avoid: [{ from: 1, to: 500 * rpm, why: "all" }] }).beds[0];
    expect(none.map.best).toBeUndefined();
    expect(none.findings.map(({ code }) => code)).toEqual(["no-speed-left", "run-in-speeds-to-avoid"]);
    for (const { rotarySpeed, keptOut } of shale.inside) {
      if (rotarySpeed > 101 * rpm) expect(keptOut).toBe("the string swings");
      if (rotarySpeed < 99 * rpm) expect(keptOut).not.toBe("the string swings");
    }
    const beside = mapStudy(workup, { bed: "shale", avoid: [{ from: 150 * rpm, to: 160 * rpm, why: "swing" }] })
      .beds[0];
    expect(beside.findings.map(({ code }) => code)).not.toContain("run-in-speeds-to-avoid");
  });

  it("keeps the best point out of step with the string, as the stability station has it half-way down the bed", () => {
    const { beds } = workup.stability;
    mapStudy(workup).beds.forEach(({ map }, k) => {
      const windows = beds[k].review.string?.avoid ?? [];
      expect(map.avoid.map(({ from, to }) => [from, to])).toEqual(windows.map(({ from, to }) => [from, to]));
      const best = map.best?.rotarySpeed ?? Number.NaN;
      for (const { from, to } of windows) expect(best > from * (1 + 1e-9) && best < to * (1 - 1e-9)).toBe(false);
    });
  });

  it("notes a run in step with the string, and cautions of one in speeds that were asked to be kept out of", () => {
    const [{ stability }] = studiedBeds(workup).beds;
    const [window] = stability.review.string?.avoid ?? [];
    const speed = (window.from + window.to) / 2;
    const windows = (asked: readonly (typeof window)[], inStep: readonly (typeof window)[]) =>
      runFindings("shale", speed, { asked, inStep }).map(({ severity }) => severity);
    expect(windows([], [window])).toEqual(["note"]);
    expect(windows([window], [window])).toEqual(["caution"]);
    expect(windows([], [])).toEqual([]);
  });

  it("maps a rig that names no slowest speed, and one with gears only", () => {
    const still = worked(({ inquiry }) => Object.assign(inquiry.rig, { rotarySpeedMin: "0 rpm" }));
    expect(mapStudy(still, { bed: "shale" }).beds[0].map.rotary.slowest).toBeGreaterThan(0);
    const geared = worked(({ inquiry }) =>
      Object.assign(inquiry.rig, { rotarySpeeds: ["40 rpm", "75 rpm", "130 rpm"] }),
    );
    expect(mapStudy(geared, { bed: "shale" }).beds[0].map.best?.rotarySpeed).toBeCloseTo(130 * rpm, 9);
  });

  it("holds a weight set by hand inside the limits, as the workup does", () => {
    const heavy = worked((traveler) =>
      Object.assign(traveler, { overrides: { weight: "30 klbf", rotarySpeed: "140 rpm" } }),
    );
    const [bed] = mapStudy(heavy, { bed: "shale" }).beds;
    const [tightest] = bed.atRun;
    expectClose(bed.run.advance, tightest.points[0].advance, 1e-6);
    expectClose(bed.run.rotarySpeed / rpm, 140, 1e-12);
  });
});

describe("bandsStudy", () => {
  const options = { samples: 40, seed: 9 } as const;
  let study: BandsStudy;
  beforeAll(() => {
    study = bandsStudy(workup, options);
  });

  it("is the same for the same seed, and another for another", () => {
    expect(bandsStudy(workup, options)).toEqual(study);
    expect(bandsStudy(workup, { ...options, seed: 10 })).not.toEqual(study);
  });

  it("keeps rates in order: held is no faster than free", () => {
    for (const { bands } of study.beds) {
      const { rate, freeRate } = bands.figures;
      for (const side of ["low", "mid", "high"] as const) {
        expect(rate.band?.[side]).toBeLessThanOrEqual((freeRate.band?.[side] ?? 0) * (1 + 1e-9));
      }
      const whole = bands.outcomes.reduce((sum, { share }) => sum + share, 0);
      expectClose(whole, 1, 1e-12);
    }
  });

  it("narrows where the strength is known better: one figure for the limestone, a band for the shale", () => {
    const [shale, limestone] = study.beds.map(({ bands }) => bands.figures.mechanicalEnergy.band);
    if (!shale || !limestone) throw new Error("no band");
    expect(shale.high / shale.low).toBeGreaterThan(limestone.high / limestone.low);
  });

  it("tells how far it is, bed after bed, and ends with what it has", () => {
    const told: number[] = [];
    bandsStudy(workup, { ...options, samples: 5, progress: ({ done, of }) => told.push(done / of) });
    expect(told).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((done) => done / 10));
    let asked = 0;
    const stopped = bandsStudy(workup, { ...options, shouldStop: () => ++asked === 12 });
    expect(stopped.beds.map(({ bands }) => bands.samples)).toEqual([12]);
    expect(stopped.notReached).toEqual(["limestone"]);
    expect(stopped.asked).toBe(40);
  });

  it("goes a sample at a time for a caller with other things to do", () => {
    const steps = bandsStudyInSteps(workup, options);
    let count = 0;
    let step = steps.next();
    for (; !step.done; step = steps.next()) count++;
    expect(count).toBe(80);
    expect(step.value).toEqual(study);
  });

  it("draws the cleaning only where the slip methods set it, not where a hand did", () => {
    expect(study.beds[0].inputs["what the flow cleans"]).toBeDefined();
    const byHand = worked((traveler) => Object.assign(traveler, { overrides: { limits: { rate: "60 ft/h" } } }));
    const [bed] = bandsStudy(byHand, { samples: 5, bed: "shale" }).beds;
    expect(bed.inputs["what the flow cleans"]).toBeUndefined();
    expect(bed.bands.figures.rate.band?.high).toBeLessThanOrEqual(((60 * 0.3048) / 3600) * (1 + 1e-9));
  });
});

describe("lifeBands", () => {
  const options = { samples: 6, seed: 3, holes: 60 } as const;

  it("is the same for the same seed, in order, and says what ended the lives", () => {
    const spread = lifeBands(workup, options) ?? expect.fail("no life");
    expect(lifeBands(workup, options)).toEqual(spread);
    for (const { band, drivers } of Object.values(spread.bands.figures)) {
      const { low, mid, high } = band ?? expect.fail("no band");
      expect(low <= mid && mid <= high).toBe(true);
      expect(drivers.length).toBe(Object.keys(spread.inputs).length);
    }
    expectClose(
      spread.bands.outcomes.reduce((sum, { share }) => sum + share, 0),
      1,
      1e-12,
    );
    expect(Object.keys(spread.inputs)).toContain("strength of bed 2, limestone");
  });

  it("draws wear around what returned bits have shown, and goes as far as it wears less", () => {
    const [usual, thrice] = [1, 3].map((wearFactor) => lifeBands(workup, { ...options, wearFactor }));
    const { band } = usual?.inputs["wear coefficient"] ?? expect.fail("not drawn");
    expectClose(thrice?.inputs["wear coefficient"].band.mid ?? 0, 3 * band.mid, 1e-12);
    const mid = (spread: typeof usual) => spread?.bands.figures.footage.band?.mid ?? Number.NaN;
    // The march sees coefficient and way as a product: three times the wear goes a third as far, through two beds nearly.
    expect(mid(usual) / mid(thrice)).toBeGreaterThan(2);
    expect(mid(usual) / mid(thrice)).toBeLessThan(4);
  });

  it("tells how far it is, and ends with the lives it has when asked to", () => {
    const told: string[] = [];
    const steps = lifeBandsInSteps(workup, { ...options, shouldStop: () => told.length >= 2 });
    let step = steps.next();
    for (; !step.done; step = steps.next()) told.push(`${step.value.done}/${step.value.of}`);
    expect(told.slice(0, 2)).toEqual(["1/6", "2/6"]);
    expect(step.value?.bands.samples).toBeLessThan(6);
  });

  it("has nothing to spread where no bed is drilled", () => {
    const gravel = worked((traveler) => {
      traveler.ground.beds = [{ top: "0 ft", bottom: "300 ft", rock: "gravel" }] as never;
    });
    expect(lifeBands(gravel, options)).toBeUndefined();
  });
});
