import { describe, expect, it } from "vitest";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { parseTraveler } from "../document/index.ts";
import { workUp } from "../work-up.ts";

const CFM = 0.3048 ** 3 / 60;
const GPM = (231 * 0.0254 ** 3) / 60;

function problemsOrFlow(fluid: object, more: Record<string, unknown> = {}) {
  const sound = soundTraveler();
  const compressor = { flow: "750 cfm", pressure: "150 psi", engine: "own" };
  const read = parseTraveler({ ...sound, inquiry: { ...sound.inquiry, compressor, fluid, ...more } });
  return read.ok ? workUp(read).flow : read.problems.map(({ message }) => message);
}

function flowOn(fluid: object, more: Record<string, unknown> = {}) {
  const flow = problemsOrFlow(fluid, more);
  if (Array.isArray(flow)) throw new Error(flow.join("\n"));
  return flow;
}

const codes = ({ findings }: { readonly findings: readonly { readonly code: string }[] }) =>
  findings.map(({ code }) => code);

describe("a hole drilled on air", () => {
  it("needs more free air where the site stands high and warm, in step with the thinness of the air there", () => {
    const low = flowOn({ kind: "air", temperature: "60 °F" }, { altitude: "0 ft" });
    const high = flowOn({ kind: "air", temperature: "70 °F" }, { altitude: "6000 ft" });
    const standard = (of: typeof low) =>
      of.working.find(({ name }) => name === "least air to lift the chips, counted as standard air")?.value ?? 0;
    // 378 scfm are 481 acfm at 6,000 ft and 70 °F (Lyons, Guo & Seidel 2001): 1.2725 times; rounded there from tables.
    expect((high.leastAirFlow ?? 0) / standard(high) / (481 / 378)).toBeCloseTo(1, 2);
    expect((low.leastAirFlow ?? 0) / standard(low)).toBeCloseTo(1, 3);
    expect((low.leastAirFlow ?? 0) / CFM).toBeGreaterThan(400);
  });

  it("has to lift what is injected as mist as well", () => {
    const dry = flowOn({ kind: "air" });
    const misty = flowOn({ kind: "mist", injection: "10 gpm" });
    expect(misty.leastAirFlow).toBeGreaterThan(dry.leastAirFlow ?? 0);
    expect(codes(misty)).not.toContain("injection-much");
    expect(codes(flowOn({ kind: "mist", injection: "25 gpm" }))).toContain("injection-much");
    expect(codes(flowOn({ kind: "mist", injection: "2 gpm" }))).toContain("injection-little");
  });

  it("says where the standing water presses harder than the compressor", () => {
    // 265 ft of water stand over the end of the hole: 265 × 0.4335 = 115 psi.
    const weak = { compressor: { flow: "750 cfm", pressure: "100 psi", engine: "own" } };
    const { findings } = flowOn({ kind: "air" }, weak);
    const held = findings.find(({ code }) => code === "water-over-compressor");
    expect((held?.limit ?? 0) / 6894.757).toBeCloseTo(265 * 0.4335, 0);
    expect(codes(flowOn({ kind: "air" }))).not.toContain("water-over-compressor");
  });
});

describe("a hole drilled on foam", () => {
  it("has its air, its quality and their poor accuracy", () => {
    const { foam, leastAirFlow, findings } = flowOn({ kind: "foam", injection: "10 gpm", temperature: "60 °F" });
    expect(leastAirFlow).toBeGreaterThan(0);
    // The liquid alone rises far slower than foam has to.
    const area = (Math.PI / 4) * (6.125 ** 2 - 4.75 ** 2) * 0.0254 ** 2;
    expect((10 * GPM) / area).toBeLessThan(0.4572);
    expect(foam?.topQuality).toBeGreaterThan(foam?.bottomQuality ?? 1);
    expect(findings.map(({ code }) => code)).toContain("foam-by-its-column");
  });

  it("is wet where much is injected", () => {
    expect(codes(flowOn({ kind: "foam", injection: "50 gpm" }))).toContain("foam-wet");
  });
});

describe("what is injected", () => {
  it("goes into mist and foam only", () => {
    expect(problemsOrFlow({ kind: "bentonite", injection: "10 gpm" })).toEqual([
      'inquiry.fluid.injection: got "10 gpm" into bentonite; give mist or foam as kind, or leave it out',
    ]);
  });

  it("is no reason for a liquid to be ice", () => {
    expect(problemsOrFlow({ kind: "bentonite", temperature: "-10 °C" })).toEqual([
      'inquiry.fluid.temperature: got "-10 °C" of bentonite; give a temperature from 0 °C up',
    ]);
    expect(flowOn({ kind: "air", temperature: "-10 °C" }).leastAirFlow).toBeGreaterThan(0);
  });
});
