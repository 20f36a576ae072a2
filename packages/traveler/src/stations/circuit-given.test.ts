import { band } from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { parseTraveler } from "../document/index.ts";
import { workUp } from "../work-up.ts";

const GPM = (231 * 0.0254 ** 3) / 60;
const PSI = 4.4482216152605 / 0.0254 ** 2;

function worked(pump: Record<string, unknown>, overrides?: Record<string, unknown>) {
  const sound = soundTraveler();
  const inquiry = { ...sound.inquiry, pump };
  const read = parseTraveler({ ...sound, inquiry, ...(overrides ? { overrides } : {}) });
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  return workUp(read);
}

/** A straight curve, so that the crossing can be told by hand: 80 psi at rest, none at 320 gpm. */
const curve = [
  { flow: "0 gpm", pressure: "80 psi" },
  { flow: "320 gpm", pressure: "0 psi" },
];
const curvePressure = (flow: number) => 80 * PSI * (1 - flow / (320 * GPM));

describe("a job worked up", () => {
  it("goes by the flow at which the curve of its pump meets the circuit", () => {
    const { flow, card, life } = worked({ curve });
    expect(flow.heldBy).toBe("pump curve");
    const { losses, ports } = flow.circuit ?? { losses: [], ports: { pressureDrop: 0 } };
    const asked = losses.reduce((sum, { pressureDrop }) => sum + pressureDrop, ports.pressureDrop);
    expect(asked / curvePressure(flow.flow)).toBeCloseTo(1, 6);
    expect(card.rows.flatMap((row) => row.flow?.value ?? [])).toEqual(
      card.rows.flatMap((row) => (row.flow ? flow.flow : [])),
    );
    expect(card.rows.some((row) => row.flow)).toBe(true);
    expect(flow.working.find(({ name }) => name === "flow that the pump gives")?.value).toBe(flow.flow);
    // The film of the cutters and the return go by the same flow.
    const washed = life.films?.working[0]?.inputs.find(({ symbol }) => symbol === "v")?.value;
    const other = worked({ flow: `${(flow.flow / GPM).toFixed(9)} gpm`, pressureRating: "400 psi" });
    expect(washed).toBeCloseTo(
      other.life.films?.working[0]?.inputs.find(({ symbol }) => symbol === "v")?.value ?? 0,
      6,
    );
    expect(flow.beds.map(({ rateCeiling }) => rateCeiling.mid)).toEqual(
      other.flow.beds.map(({ rateCeiling }) => expect.closeTo(rateCeiling.mid, 9)),
    );
  });

  it("goes by a flow that was named where a valve can hold the pump to it", () => {
    const named = worked({ curve, flow: "60 gpm" });
    expect(named.flow.flow / GPM).toBeCloseTo(60, 9);
    expect(named.flow.heldBy).toBe("flow asked");
    expect(worked({ curve }, { flow: "60 gpm" }).flow.flow / GPM).toBeCloseTo(60, 9);
    // More than the curve has cannot be had by a valve.
    const much = worked({ curve, flow: "300 gpm" }).flow;
    expect(much.heldBy).toBe("pump curve");
    expect(much.flow).toBeLessThan(300 * GPM);
    expect(much.findings.find(({ code }) => code === "flow.pump-short")).toMatchObject({
      value: much.flow,
      limit: expect.closeTo(300 * GPM, 9),
    });
  });

  it("goes by the form of slip that was named, in the circuit as in the return of every bed", () => {
    const pump = { flow: "150 gpm", pressureRating: "400 psi" };
    const usual = worked(pump).flow;
    const slow = worked(pump, { slip: "Chien" }).flow;
    expect(slow.circuit?.cleaning.slip.form).toBe("Chien");
    expect(slow.circuit?.cleaning.slip.speed.mid).toBe(usual.circuit?.cleaning.slip.chien);
    // In this mud Chien has the chips fall faster than Moore, so that less is cleaned.
    expect(slow.beds.length).toBeGreaterThan(0);
    for (const [k, bed] of slow.beds.entries()) expect(bed.rateCeiling.mid).toBeLessThan(usual.beds[k].rateCeiling.mid);
  });

  it("shows how far pressure and cleaning may be off where the mud was only timed", () => {
    const sound = soundTraveler();
    const fluid = { kind: "bentonite", density: "8.6 ppg", funnelTime: "38 s" };
    const read = parseTraveler({ ...sound, inquiry: { ...sound.inquiry, fluid } });
    if (!read.ok) throw new Error("the traveler has problems");
    const { flow } = workUp(read);
    const { pumpPressure, rateCeiling } = flow.byFunnel ?? { pumpPressure: band(0, 0, 0), rateCeiling: band(0, 0, 0) };
    expect(pumpPressure.mid).toBe(flow.circuit?.pumpPressure);
    expect(rateCeiling.mid).toBe(flow.circuit?.cleaning.rateCeiling.mid);
    expect(pumpPressure.low).toBeLessThan(pumpPressure.mid);
    expect(pumpPressure.high).toBeGreaterThan(pumpPressure.mid);
    expect(flow.findings.map(({ code }) => code)).toContain("flow.funnel-only");
  });

  it("cleans by a washout, where the return is slowest", () => {
    const flowWith = (washouts: readonly object[]) => {
      const sound = soundTraveler();
      const read = parseTraveler({ ...sound, inquiry: { ...sound.inquiry, washouts } });
      if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
      return workUp(read).flow;
    };
    const sound = flowWith([]);
    const washed = flowWith([{ from: "90 ft", to: "110 ft", diameter: "8 in" }]);
    expect(washed.circuit?.slowestAnnulus.name).toBe("pipe in washout of open hole");
    // V = 24.51 Q/(D2² - D1²) in ft/min, for 180 gpm past 3 1/2 in pipe.
    expect((washed.circuit?.slowestAnnulus.speed ?? 0) / (0.3048 / 60)).toBeCloseTo(
      (24.51 * 180) / (8 ** 2 - 3.5 ** 2),
      0,
    );
    expect(washed.circuit?.cleaning.rateCeiling.mid).toBeLessThan(sound.circuit?.cleaning.rateCeiling.mid ?? 0);
    expect(
      washed.circuit?.losses
        .filter(({ part }) => part === "annulus")
        .map(({ name, length }) => [name, Math.round(length / 0.3048)]),
    ).toEqual([
      ["collars in open hole", 30],
      ["pipe in open hole", 160],
      ["pipe in washout of open hole", 20],
      ["pipe in open hole", 45],
      ["pipe in casing", 45],
    ]);
  });

  it("goes by what a piston pump still gives at its rating", () => {
    const { flow } = worked({ flow: "150 gpm", pressureRating: "40 psi" });
    expect(flow.heldBy).toBe("pressure rating");
    expect(flow.flow).toBeLessThan(150 * GPM);
    expect(flow.circuit?.pumpPressure).toBeCloseTo(40 * PSI, -1);
  });
});
