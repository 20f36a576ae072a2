/** Published and derived checks of power and fuel. Source kinds: (a) read, (b) recalled, (c) practice, (d) derived. */
import {
  compressorPower,
  engineFuelFlow,
  rigPower,
  SPECIFIC_CONSUMPTION,
  torsionalYield,
  USUAL_COMPRESSOR_EFFICIENCY,
  USUAL_COMPRESSOR_STAGES,
  USUAL_FUEL_DENSITY,
  USUAL_PIPE_YIELD,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import {
  foot,
  footPerHour,
  footPound,
  gallon,
  gpm,
  horsepower,
  inch,
  poundForce,
  psi,
  rpm,
} from "../support/field-units.ts";

const gallonPerHour = gallon / 3600;
const cubicFootPerMinute = foot ** 3 / 60;

describe("power and fuel", () => {
  // compressor.power, (d): two stages, overall .75, gal/h = hp x .36/7.1
  const flows = [750, 900, 1070, 1150];
  const shafts = [261.37, 313.64, 372.89, 400.77];
  const burns = [13.253, 15.903, 18.907, 20.321];
  const compressors = flows.map((cfm) =>
    compressorPower({
      freeAirFlow: cfm * cubicFootPerMinute,
      deliveryPressure: 350 * psi,
      inletPressure: 14.7 * psi,
      stageCount: USUAL_COMPRESSOR_STAGES,
      efficiency: USUAL_COMPRESSOR_EFFICIENCY,
    }),
  );
  const fuels = compressors.map((enginePower) =>
    engineFuelFlow({ enginePower, specificConsumption: SPECIFIC_CONSUMPTION.mid, fuelDensity: USUAL_FUEL_DENSITY }),
  );

  it.each(flows.map((_, k) => k))("compressor %d of the case at 350 psi: power", (k) => {
    expectClose(compressors[k] / horsepower, shafts[k], 1e-3);
  });

  it.each(flows.map((_, k) => k))("compressor %d of the case at 350 psi: fuel", (k) => {
    expectClose(fuels[k] / gallonPerHour, burns[k], 1e-3);
  });

  // fuel, (d) on (c): .36 lb/(hp h) at 7.1 lb/gal make .051 gal/(hp h)
  const perHorsepower =
    engineFuelFlow({
      enginePower: horsepower,
      specificConsumption: SPECIFIC_CONSUMPTION.mid,
      fuelDensity: USUAL_FUEL_DENSITY,
    }) / gallonPerHour;

  it("fuel of one horsepower", () => {
    expectClose(perHorsepower, 0.051, 1e-2);
  });

  // Torsional yield of new pipe of 75,000 psi, (b) table of API RP 7G, recalled and printed there to 10 lbf ft
  const pipes = [
    [2.375, 1.815, 6250],
    [2.875, 2.151, 11_550],
    [3.5, 2.992, 14_150],
    [3.5, 2.764, 18_550],
    [4.5, 3.826, 30_810],
  ] as const;
  const twisted = pipes.map(
    ([outer, bore]) =>
      torsionalYield({ outerDiameter: outer * inch, bore: bore * inch, yieldStrength: USUAL_PIPE_YIELD }) / footPound,
  );

  it.each(pipes.map((_, k) => k))("torsional yield of pipe %d of the table", (k) => {
    expectClose(twisted[k], pipes[k][2], 1.5e-3);
  });

  // A mud rig of 150 to 300 hp, 40 to 60 % loaded, burns 4 to 9 gal/h: (c) no source. Here 1,500 lbf ft at 90 rpm, 150 gpm
  // at 250 psi on an engine of 200 hp.
  const mudRig = rigPower({
    beds: [
      {
        name: "shale",
        length: 300 * foot,
        rate: 90 * footPerHour,
        drillingTorque: 1500 * footPound,
        rotarySpeed: 90 * rpm,
        feedForce: 2000 * poundForce,
        pump: { flow: 150 * gpm, pressure: 250 * psi },
      },
    ],
    enginePower: 200 * horsepower,
    draggingTorque: 0,
    hoistingWork: 0,
    handlingTime: 0,
  });

  it("a mud rig burns what the trade sees while it drills", () => {
    // By hand: 25.704/.75 to turn, 21.875/.7 to pump, .091/.75 to push and .15 of 200 hp are 95.6 hp, 48 %, and 4.85 gal/h.
    const [bed] = mudRig.beds;
    expectClose(bed.enginePower.mid / horsepower, 25.704 / 0.75 + 21.875 / 0.7 + 0.0909 / 0.75 + 30, 1e-3);
    expect(bed.engineShare.mid).toBeGreaterThan(0.4);
    expect(bed.engineShare.mid).toBeLessThan(0.6);
    expect(bed.fuelFlow.mid / gallonPerHour).toBeGreaterThan(4);
    expect(bed.fuelFlow.mid / gallonPerHour).toBeLessThan(9);
  });
});
