import { describe, expect, it } from "vitest";
import { compressorPower } from "./compressor-power.ts";
import { rigPower } from "./rig-power.ts";
import type { BedDrives, RigPowerInput } from "./rig-power-state.ts";

/** A shale at 1,200 N·m, 9 rad/s and 10 mm/s: 10.8 kW turned, 8 kW pumped, 10 W pushed. */
const shale: BedDrives = {
  name: "shale",
  length: 36,
  rate: 0.01,
  drillingTorque: 1150,
  rotarySpeed: 9,
  feedForce: 1000,
  pump: { flow: 0.01, pressure: 8e5 },
};
const rig: RigPowerInput = {
  beds: [shale],
  enginePower: 100e3,
  draggingTorque: 50,
  hoistingWork: 750e3,
  handlingTime: 3600,
};
const codes = (input: RigPowerInput) => rigPower(input).findings.map(({ severity, code }) => `${severity} ${code}`);

describe("power of a rig", () => {
  const { beds, timeOnBottom, fuelVolume, meanFuelFlow, working } = rigPower(rig);
  const [bed] = beds;

  it("is what arrives over the efficiency of the drives, and the engine's own share", () => {
    expect(bed.parts.rotaryPower).toBeCloseTo(10_800 / 0.75, 6);
    expect(bed.parts.pumpPower).toBeCloseTo(8000 / 0.7, 6);
    expect(bed.parts.feedPower).toBeCloseTo(10 / 0.75, 6);
    expect(bed.parts.ownPower).toBeCloseTo(15_000, 6);
    expect(bed.enginePower.mid).toBeCloseTo(14_400 + 11_428.57 + 13.33 + 15_000, 1);
    expect(bed.enginePower.low).toBeCloseTo(10_810 / 0.85 + 8000 / 0.8 + 15_000, 6);
    expect(bed.enginePower.high).toBeCloseTo(10_810 / 0.65 + 8000 / 0.6 + 15_000, 6);
    expect(bed.engineShare.mid).toBeCloseTo(0.4084, 4);
  });

  it("burns fuel by the load while drilling, and for handling and the trip out", () => {
    // 0.36 lb/(hp·h) at 7.1 lb/gal is 0.050704 gal/(hp·h); 745.7 W a horsepower, 3.785412 L a gallon.
    const perJoule = ((0.36 / 7.1) * 3.785412e-3) / (745.7 * 3600);
    expect(bed.fuelFlow.mid / (40_841.9 * perJoule)).toBeCloseTo(1, 4);
    expect((bed.fuelPerLength?.mid ?? 0) / (bed.fuelFlow.mid / 0.01)).toBeCloseTo(1, 9);
    expect(timeOnBottom).toBeCloseTo(3600, 6);
    const volume = (40_841.9 * 3600 + 15_000 * 3600 + 1e6) * perJoule;
    expect(fuelVolume.mid / volume).toBeCloseTo(1, 4);
    expect(meanFuelFlow.mid / (volume / 7200)).toBeCloseTo(1, 4);
  });

  it("takes the burn of the user where there is one, over all the time at the hole", () => {
    const own = rigPower({ ...rig, fuelFlow: 3e-6 });
    expect(own.beds[0].fuelFlow).toEqual({ low: 3e-6, mid: 3e-6, high: 3e-6 });
    expect(own.fuelVolume.mid).toBeCloseTo(3e-6 * 7200, 12);
    expect(own.reckonedFuelFlow).toEqual(meanFuelFlow);
    expect(codes({ ...rig, fuelFlow: 3e-6 })).toEqual([]);
    expect(codes({ ...rig, fuelFlow: 6e-6 })).toEqual(["note power.burn-apart"]);
    expect(codes({ ...rig, fuelFlow: 5e-7 })).toEqual(["note power.burn-apart"]);
  });

  it("names each working once, and its value is the figure", () => {
    const names = working.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    const of = (name: string) => working.find((one) => one.name === name)?.value;
    expect(of("engine load, shale")).toBe(bed.enginePower.mid);
    expect(of("fuel while drilling, shale")).toBe(bed.fuelFlow.mid);
    expect(of("fuel of the hole")).toBe(fuelVolume.mid);
    expect(of("mean fuel over the hole")).toBe(meanFuelFlow.mid);
  });

  it("asks nothing of the feed where the rig holds back, nor of a pump that moves nothing", () => {
    const { parts } = rigPower({ ...rig, beds: [{ ...shale, feedForce: -5000, pump: { flow: 0, pressure: 0 } }] })
      .beds[0];
    expect([parts.feedPower, parts.pumpPower]).toEqual([0, 0]);
  });

  it("leaves a bed that is not drilled out of time and fuel", () => {
    const stuck = rigPower({ ...rig, beds: [shale, { ...shale, name: "granite", rate: 0 }] });
    expect(stuck.timeOnBottom).toBeCloseTo(3600, 6);
    expect(stuck.beds[1].fuelPerLength).toBeUndefined();
    expect(rigPower({ ...rig, beds: [], handlingTime: 0 }).meanFuelFlow.mid).toBe(0);
  });
});

describe("remarks on the engine", () => {
  it("tell of one that is short, may be short, or has little left", () => {
    // Load at the middle 25.84 kW and at the worst drives 29.96 kW, each with 0.15 of the rating.
    expect(codes(rig)).toEqual([]);
    expect(codes({ ...rig, enginePower: 30e3 })).toEqual(["caution power.engine-short"]);
    expect(codes({ ...rig, enginePower: 35e3 })).toEqual(["note power.engine-doubtful"]);
    expect(codes({ ...rig, enginePower: 36e3 })).toEqual(["note power.engine-near-full"]);
    expect(codes({ ...rig, enginePower: 38e3 })).toEqual([]);
  });
});

describe("a compressor", () => {
  const air = { freeAirFlow: 0.35, deliveryPressure: 2.4e6, inletPressure: 101_325, ownEngine: true };
  const shaft = compressorPower({ ...air, stageCount: 2, efficiency: 0.75 });
  const { pump: _, ...blown } = shale;

  it("loads the engine that drives it and burns on either", () => {
    const apart = rigPower({ ...rig, beds: [blown], compressor: air });
    const onRig = rigPower({ ...rig, beds: [blown], compressor: { ...air, ownEngine: false } });
    expect(apart.compressorPower).toBeCloseTo(shaft, 6);
    expect(onRig.beds[0].enginePower.mid - apart.beds[0].enginePower.mid).toBeCloseTo(shaft, 6);
    expect(onRig.beds[0].fuelFlow.mid / apart.beds[0].fuelFlow.mid).toBeCloseTo(1, 9);
    expect(onRig.findings.map(({ code }) => code)).toEqual(["power.engine-short"]);
    expect(apart.findings).toEqual([]);
  });

  it("is remarked on where its own engine is too small for it", () => {
    const small = { ...air, enginePower: shaft / 2 };
    expect(codes({ ...rig, beds: [blown], compressor: small })).toEqual(["caution power.compressor-engine-short"]);
  });

  it("burns a fifth more than its drilling for connections", () => {
    const without = rigPower({ ...rig, beds: [blown] });
    const with_ = rigPower({ ...rig, beds: [blown], compressor: air });
    const perJoule = ((0.36 / 7.1) * 3.785412e-3) / (745.7 * 3600);
    const more = with_.fuelVolume.mid - without.fuelVolume.mid;
    expect(more / (1.2 * shaft * 3600 * perJoule)).toBeCloseTo(1, 4);
  });
});
