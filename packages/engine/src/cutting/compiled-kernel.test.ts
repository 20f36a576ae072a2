import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { afterEach, describe, expect, it, vi } from "vitest";
import { compileKernel, kernelModule } from "../../../../kernel/compile-kernel.ts";
import { degree, MPa, mm } from "../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../tests/support/profiled-bit.ts";
import { anyAdvance, anyCoveredLayout } from "../../../../tests/support/random-layout.ts";
import { sandstoneLike } from "../../../../tests/support/rock-responses.ts";
import type { BitLayout } from "../bit/index.ts";
import type { RockResponse } from "../ground/index.ts";
import { compiledKernel } from "./compiled-kernel.ts";
import { type CuttingKernel, plainKernel } from "./cutting-kernel.ts";
import { drillAtAdvance, drillAtWeight } from "./drilled-state.ts";
import { emptyEdgeLoads } from "./edge-loads.ts";
import type { EdgeTrace } from "./edge-trace.ts";
import { emptyEngagement } from "./engage.ts";
import { traceEdges } from "./trace-edges.ts";

const compiled = compiledKernel();

function required(kernel: CuttingKernel | undefined): CuttingKernel {
  if (!kernel) throw new Error("this host runs no WebAssembly");
  return kernel;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyRock: fc.Arbitrary<RockResponse> = fc.record({
  specificEnergy: between(5 * MPa, 300 * MPa),
  contactStress: between(0, 900 * MPa),
  faceFriction: between(0, 30 * degree),
  flatFriction: between(0, 0.9),
  kappa: between(0, 20),
});

/** Everything a kernel says of a bit at one advance, row by row. */
function figures(kernel: CuttingKernel, trace: EdgeTrace, advance: number, rock: RockResponse) {
  const { engagement, loads } = drillAtAdvance({ trace, response: rock, kernel }, advance);
  const { depth, area, volume } = engagement;
  return { depth, area, volume, ...loads };
}

// The plain kernel is what the other tests of this room hold to the kinematics and to the force law.
describe("the compiled kernel beside the plain one", () => {
  it("gives the same figures to the last bit, for any layout, grid, advance and rock", () => {
    const kernel = required(compiled);
    const grid = fc.integer({ min: 1, max: 900 });
    const check = (layout: BitLayout, cells: number, advance: number, rock: RockResponse) => {
      const trace = traceEdges(layout, { cells });
      expect(figures(kernel, trace, advance, rock)).toEqual(figures(plainKernel, trace, advance, rock));
    };
    fc.assert(fc.property(anyCoveredLayout, grid, anyAdvance, anyRock, check), { seed: 17, numRuns: 150 });
  });

  it("finds the same advance under a weight", () => {
    const trace = traceEdges(profiledBit());
    const [plain, other] = [plainKernel, required(compiled)].map((kernel) =>
      drillAtWeight({ trace, response: sandstoneLike, kernel }, 20_000),
    );
    expect(plain?.advance).toBeGreaterThan(0.1 * mm);
    expect(other).toEqual(plain);
  });

  it("does not mix up two bits that take turns, and takes depths that another worked out", () => {
    const kernel = required(compiled);
    const traces = [traceEdges(profiledBit()), traceEdges(profiledBit(), { cells: 90 })];
    for (const trace of [...traces, ...traces]) {
      const engagement = plainKernel.engage(trace, 1 * mm);
      expect(kernel.edgeLoads(trace, engagement, sandstoneLike)).toEqual(
        plainKernel.edgeLoads(trace, engagement, sandstoneLike),
      );
    }
  });

  it("uses the room it is given, works on a bit without cutters and refuses what the plain kernel refuses", () => {
    const kernel = required(compiled);
    const trace = traceEdges(profiledBit());
    const rooms = { engagement: emptyEngagement(trace), loads: emptyEdgeLoads(trace) };
    expect(kernel.engage(trace, 1 * mm, rooms.engagement)).toBe(rooms.engagement);
    expect(rooms.engagement.advance).toBe(1 * mm);
    expect(kernel.edgeLoads(trace, rooms.engagement, sandstoneLike, rooms.loads)).toBe(rooms.loads);
    expect([...kernel.engage(traceEdges({ holeDiameter: 0.1, cutters: [] }), 1 * mm).volume]).toEqual([]);
    expect(() => kernel.engage(trace, -1e-6)).toThrow("advance must not be negative, got -0.000001");
    expect(() => kernel.edgeLoads(trace, rooms.engagement, { ...sandstoneLike, specificEnergy: 0 })).toThrow(
      "specificEnergy must be positive, got 0",
    );
  });
});

describe("the compiled kernel's bytes", () => {
  it("are what its source compiles to", async () => {
    const held = fileURLToPath(new URL("kernel-code.ts", import.meta.url));
    expect(readFileSync(held, "utf8")).toBe(kernelModule(await compileKernel()));
  });
});

describe("where nothing can be compiled", () => {
  afterEach(() => vi.unstubAllGlobals());

  it("there is none, and nobody is stopped by it", () => {
    vi.stubGlobal("WebAssembly", undefined);
    expect(compiledKernel()).toBeUndefined();
    class Refused {
      constructor() {
        throw new Error("refused by the policy of the page");
      }
    }
    vi.stubGlobal("WebAssembly", { Module: Refused, Instance: Refused });
    expect(compiledKernel()).toBeUndefined();
  });
});
