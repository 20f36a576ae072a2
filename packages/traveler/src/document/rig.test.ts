import { describe, expect, it } from "vitest";
import { footPound, gallon, gpm, horsepower, poundForce, psi, rpm } from "../../../../tests/support/field-units.ts";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { parseTraveler } from "./parse-traveler.ts";

const { pump: _, ...bare } = soundTraveler().inquiry;
const read = (more: object) => parseTraveler({ ...soundTraveler(), inquiry: { ...bare, ...more } });
function gearOf(more: object) {
  const parsed = read(more);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join("\n"));
  const { inquiry, findings } = parsed.resolved;
  return { ...inquiry, findings, assumed: parsed.assumed };
}
const problemsOf = (more: object) => {
  const parsed = read(more);
  return parsed.ok ? [] : parsed.problems.map(({ message }) => message);
};

describe("a rig picked by its class", () => {
  // Low sides of the classes of the handbook (common practice, no source): hoist, torque, pump; the engine of a mud rig 150 hp.
  it.each([
    ["small", 8000, 1000, 60, 60, 100],
    ["medium", 25_000, 4000, 150, 150, 200],
    ["large", 50_000, 8000, 300, 300, 200],
  ] as const)(
    "%s fills hoist, pull-down, torque, speeds, engine and pump",
    (preset, hoist, torque, hp, flow, pressure) => {
      const { rig, pump, assumed } = gearOf({ rig: { preset } });
      expect(rig.hoist / poundForce).toBeCloseTo(hoist, 6);
      expect(rig.pullDown / poundForce).toBeCloseTo(hoist / 2, 6);
      expect(rig.torque / footPound).toBeCloseTo(torque, 6);
      expect(rig.enginePower / horsepower).toBeCloseTo(hp, 6);
      expect(rig.rotarySpeedMax / rpm).toBeCloseTo(200, 6);
      expect(pump.flow / gpm).toBeCloseTo(flow, 6);
      expect(pump.pressureRating / psi).toBeCloseTo(pressure, 6);
      const named = assumed.map(({ field }) => field);
      const filled = [
        "pullDown",
        "hoist",
        "torque",
        "rotarySpeedMin",
        "rotarySpeedMax",
        "enginePower",
        "topHeadWeight",
      ];
      for (const field of filled) expect(named).toContain(`inquiry.rig.${field}`);
      for (const field of ["pullDown", "hoist", "torque", "enginePower"])
        expect(assumed.find((one) => one.field === `inquiry.rig.${field}`)?.source.kind).toBe("practice");
    },
  );

  it("leaves the pump to the size of the hole where the rig is the shop's own", () => {
    const own = { lists: { rigs: [{ id: "large", hoist: "20 klbf" }] } };
    const parsed = parseTraveler({ ...soundTraveler(), ...own, inquiry: { ...bare, rig: { preset: "large" } } });
    expect(parsed.ok && parsed.resolved.inquiry.pump.flow / gpm).toBeCloseTo(150, 6);
  });

  it("keeps what was given, the burn and a gauge for holding back among it", () => {
    const given = {
      enginePower: "210 hp",
      fuelBurn: "6 gal/h",
      gaugeForceFactor: "9 lbf/psi",
      holdBackGaugeForceFactor: "7 lbf/psi",
    };
    const { rig } = gearOf({ rig: { preset: "medium", ...given } });
    expect(rig.enginePower / horsepower).toBeCloseTo(210, 6);
    expect((rig.fuelBurn ?? 0) / (gallon / 3600)).toBeCloseTo(6, 6);
    expect((rig.holdBackGaugeForceFactor ?? 0) / (poundForce / psi)).toBeCloseTo(7, 6);
    expect(problemsOf({ rig: { enginePower: "0 hp" } })[0]).toMatch(/^inquiry\.rig\.enginePower: got "0 hp"/);
  });
});

describe("a compressor", () => {
  const air = { flow: "750 cfm", pressure: "350 psi" };

  it("has an engine of its own where nobody said so, and that is named", () => {
    const { compressor, assumed } = gearOf({ compressor: air });
    expect(compressor?.ownEngine).toBe(true);
    expect(assumed.map(({ field }) => field)).toContain("inquiry.compressor.engine");
    expect(gearOf({ compressor: { ...air, enginePower: "400 hp" } }).assumed.map(({ field }) => field)).not.toContain(
      "inquiry.compressor.engine",
    );
    expect(gearOf({ compressor: { ...air, engine: "rig" } }).compressor?.ownEngine).toBe(false);
  });

  it("is refused a power of its own on the rig's engine", () => {
    expect(problemsOf({ compressor: { ...air, engine: "rig", enginePower: "400 hp" } })[0]).toMatch(
      /^inquiry\.compressor\.enginePower: got "400 hp" for a compressor that the rig's engine drives/,
    );
  });
});

describe("the joint of the bit", () => {
  const { connection, subDiameter, yieldStrength, ...tube } = bare.pipe;

  it("takes the pin of the bit's size and the slimmest listed sub, each named", () => {
    const { pipe, assumed } = gearOf({ pipe: tube });
    expect(pipe.connection).toBe("3 1/2 REG");
    // 4 1/8 in is the first sub of 3 1/2 REG in the reprint of API RP 7G.
    expect((pipe.subDiameter ?? 0) / 0.0254).toBeCloseTo(4.125, 9);
    const named = assumed.map(({ field }) => field).filter((field) => field.startsWith("inquiry.pipe."));
    expect(named).toEqual(["inquiry.pipe.connection", "inquiry.pipe.subDiameter", "inquiry.pipe.yieldStrength"]);
  });

  it("asks where the sources part over the size, and knows no sub for a thread off the list", () => {
    const holes = [{ name: "open hole", diameter: "5 1/8 in", from: "0 ft", to: "300 ft" }];
    const unsettled = read({ pipe: tube, holes, collars: [] });
    expect(unsettled.ok).toBe(false);
    const other = gearOf({ pipe: { ...tube, connection: "NC38" } }).pipe;
    expect([other.connection, other.subDiameter]).toEqual(["NC38", undefined]);
    expect([connection, subDiameter, yieldStrength]).toEqual(["3-1/2 REG", "4 1/2 in", "75 ksi"]);
  });
});
