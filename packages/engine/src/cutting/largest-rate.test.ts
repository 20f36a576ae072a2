import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { mm, rpm } from "../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../tests/support/profiled-bit.ts";
import { sandstoneLike } from "../../../../tests/support/rock-responses.ts";
import { contactTemperatures, type HeatConditions } from "./cutter-heat.ts";
import { drillAtWeight } from "./drilled-state.ts";
import { largestRate } from "./largest-rate.ts";
import { traceEdges } from "./trace-edges.ts";

const rotarySpeed = 90 * rpm;
const bit = { trace: traceEdges(profiledBit()), response: sandstoneLike };
const heat: HeatConditions = {
  rock: { conductivity: 3, diffusivity: 1.3e-6 },
  fluidTemperature: 293.15,
  film: { coefficient: 5000, area: 2e-4 },
};

describe("largestRate", () => {
  it("names the limit that binds and keeps inside all others", () => {
    const { bit: loads, advance } = drillAtWeight(bit, 15e3);
    const limits = { weight: 15e3, torque: 2 * loads.torque, power: 3 * loads.torque * rotarySpeed, rate: 1 };
    const found = largestRate({ ...bit, rotarySpeed, limits });
    expect(found.binds).toBe("weight");
    expectClose(found.rate, (advance * rotarySpeed) / (2 * Math.PI), 1e-7);
    expect(found.bounds.map(({ limit }) => limit)).toEqual(["weight", "torque", "power", "rate"]);
  });

  it("lets each limit bind in turn as it is tightened", () => {
    const loose = {
      weight: 60e3,
      torque: 4e3,
      power: 60e3,
      advance: 10 * mm,
      exposure: 20 * mm,
      rate: 0.1,
      contactTemperature: 2000,
    };
    const tight = {
      weight: 4e3,
      torque: 100,
      power: 900,
      advance: 0.1 * mm,
      exposure: 0.2 * mm,
      rate: 1e-4,
      contactTemperature: 296,
    };
    for (const name of Object.keys(tight) as (keyof typeof tight)[]) {
      const found = largestRate({ ...bit, rotarySpeed, heat, limits: { ...loose, [name]: tight[name] } });
      expect(found.binds).toBe(name);
    }
  });

  it("meets an exposure at the deepest cutter and a temperature at the hottest", () => {
    const deep = largestRate({ ...bit, rotarySpeed, limits: { exposure: 0.4 * mm } });
    expectClose(Math.max(...deep.state.loads.deepest), 0.4 * mm, 1e-6);
    const hot = largestRate({ ...bit, rotarySpeed, heat, limits: { contactTemperature: 310 } });
    expectClose(Math.max(...contactTemperatures(hot.state.loads, { ...bit, rotarySpeed, heat })), 310, 1e-6);
  });

  it("leaves out a limit that no rate meets, and says when none is left", () => {
    const found = largestRate({ ...bit, rotarySpeed, heat, limits: { weight: 15e3, contactTemperature: 1e5 } });
    expect(found.bounds.map(({ limit }) => limit)).toEqual(["weight"]);
    expect(() => largestRate({ ...bit, rotarySpeed, limits: {} })).toThrow(/no limit given is met/);
    expect(() => largestRate({ ...bit, rotarySpeed, limits: { contactTemperature: 400 } })).toThrow(/needs the heat/);
  });
});
