import { describe, expect, it } from "vitest";
import { foot, footPerMinute, gallon, horsepower, poundForce, psi } from "../../../../tests/support/field-units.ts";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { parseTraveler } from "../document/index.ts";
import { workUp } from "../work-up.ts";

function worked(more: (inquiry: ReturnType<typeof soundTraveler>["inquiry"]) => object = (inquiry) => inquiry) {
  const traveler = soundTraveler();
  const read = parseTraveler({ ...traveler, inquiry: more(traveler.inquiry) });
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  return workUp(read);
}

describe("the power station", () => {
  const { power, cut, flow, string, inquiry, findings } = worked();

  it("has the torque of cut and drag at the speed of the card, and the pump at the end of each bed", () => {
    expect(power?.beds.map(({ name }) => name)).toEqual(cut.beds.map(({ bed }) => bed.name));
    const last = power?.beds.at(-1);
    const { drilling, rotarySpeed } = cut.beds[cut.beds.length - 1];
    // 200 lbf of drag on pipe of 3 1/2 in; drive 0.75, pump and drive 0.7: common practice.
    const dragging = (200 * poundForce * 3.5 * 0.0254) / 2;
    expect(last?.parts.rotaryPower).toBeCloseTo(((drilling.bit.torque + dragging) * rotarySpeed) / 0.75, 3);
    const at = flow.circuit?.operatingPoint ?? { flow: 0, pressure: 0 };
    expect((last?.parts.pumpPower ?? 0) / ((at.flow * at.pressure) / 0.7)).toBeCloseTo(1, 3);
    expect(last?.parts.ownPower).toBeCloseTo(0.15 * 180 * horsepower, 3);
  });

  it("counts trips, connections and the hoist in the fuel of the hole", () => {
    const drilled = cut.beds.reduce((sum, { bed }) => sum + bed.bottom - bed.top, 0);
    const joints = drilled / (20 * foot);
    const onBottom = cut.beds.reduce((sum, { bed, drilling }) => sum + (bed.bottom - bed.top) / drilling.rate, 0);
    expect(power?.timeOnBottom).toBeCloseTo(onBottom, 3);
    const time = onBottom + inquiry.prices.tripTime + joints * inquiry.prices.connectionTime;
    expect((power?.meanFuelFlow.mid ?? 0) * time).toBeCloseTo(power?.fuelVolume.mid ?? 0, 9);
    const drilling = power?.beds.reduce((sum, bed) => sum + bed.fuelFlow.mid * (bed.timeOnBottom ?? 0), 0) ?? 0;
    expect(power?.fuelVolume.mid).toBeGreaterThan(drilling);
  });

  it("holds the hardest bed's torque against joint and pipe", () => {
    const torques = cut.beds.map(({ drilling }) => drilling.bit.torque);
    expect(string?.hardestBed).toBe(cut.beds[torques.indexOf(Math.max(...torques))].bed.name);
    expect(string?.makeUpTorque?.thread).toBe("3 1/2 REG");
    // 5,000 lbf ft of the rig under the least of 8,400 for 3 1/2 REG on a sub of 4 1/2 in: reprint of API RP 7G.
    expect(findings.map(({ code }) => code)).toContain("string.make-up-short");
  });

  it("says that a thread off the list has no make-up torque here", () => {
    const other = worked((given) => ({ ...given, pipe: { ...given.pipe, connection: "NC38" } }));
    expect(other.string?.makeUpTorque).toBeUndefined();
    expect(other.string?.findings.map(({ code }) => code)).toContain("string.make-up-not-listed");
  });

  it("goes by the burn that was given, and remarks on one far from the load", () => {
    const own = worked((given) => ({ ...given, rig: { ...given.rig, fuelBurn: "30 gal/h" } }));
    expect((own.power?.meanFuelFlow.mid ?? 0) / (gallon / 3600)).toBeCloseTo(30, 6);
    expect(own.findings.map(({ code }) => code)).toContain("power.burn-apart");
    expect(own.power?.reckonedFuelFlow.mid).toBeCloseTo(power?.meanFuelFlow.mid ?? 0, 12);
  });

  it("says where the engine is too small", () => {
    const weak = worked((given) => ({ ...given, rig: { ...given.rig, enginePower: "20 hp" } }));
    expect(weak.findings.filter(({ station }) => station === "power").map(({ code }) => code)).toContain(
      "power.engine-short",
    );
  });

  it("reads the gauge by another factor while the rig holds back", () => {
    const given = worked((from) => ({ ...from, rig: { ...from.rig, holdBackGaugeForceFactor: "5 lbf/psi" } }));
    const held = given.string?.joints.filter(({ feedForce }) => feedForce < 0) ?? [];
    expect(held.length).toBeGreaterThan(0);
    for (const { feedForce, gaugeReading = 0 } of held)
      expect(gaugeReading / psi).toBeCloseTo(40 + -feedForce / poundForce / 5, 3);
  });
});

describe("power on air", () => {
  const air = { flow: "750 cfm", pressure: "350 psi" };
  const onAir = (more: object) =>
    worked(({ pump: _, fluid: __, ...given }) => ({ ...given, fluid: { kind: "air" }, altitude: "0 ft", ...more }));

  it("has the compressor at full delivery and no pump", () => {
    const { power } = onAir({ compressor: { ...air, engine: "rig" } });
    // 261.37 hp in air of 14.7 psi, case compressor.power of the handbook, derived; standard air here is 14.696 psi.
    expect((power?.compressorPower ?? 0) / horsepower).toBeCloseTo(261.3, 0);
    expect(power?.beds[0].parts.pumpPower).toBe(0);
    expect(power?.beds[0].parts.compressorPower).toBe(power?.compressorPower);
    expect(power?.findings.map(({ code }) => code)).toContain("power.engine-short");
    expect(750 * foot ** 2 * footPerMinute).toBeCloseTo(0.354, 3);
  });

  it("says what is left out where none is named", () => {
    expect(onAir({}).power?.findings.map(({ code }) => code)).toEqual(["power.compressor-unknown"]);
  });
});
