import { describe, expect, it } from "vitest";
import { plannedBit } from "../../bit/index.ts";
import { catalogCutter } from "../../cutter/index.ts";
import type { LayoutQuestion } from "./layout-question.ts";
import { layoutSolver, solveLayout } from "./layout-solver.ts";

const inch = 0.0254;
const rakes = {
  kind: "even",
  centre: { backRake: 0.17, sideRake: 0.1 },
  gauge: { backRake: 0.25, sideRake: 0.15 },
} as const;
const question: LayoutQuestion = {
  spec: {
    holeDiameter: 4.75 * inch,
    profile: { shape: "short parabolic" },
    wings: { wings: 4, cuttersPerWing: 3 },
    cutter: catalogCutter("1308"),
    rakes,
    material: "steel",
  },
  seed: 5,
  candidates: 1200,
};

describe("layoutSolver", () => {
  it("finds the same for the same seed and something else for another", () => {
    const [one, again, other] = [question, question, { ...question, seed: 6 }].map((of) => solveLayout(of));
    expect(again).toEqual(one);
    expect(other?.choices.map(({ plan }) => plan)).not.toEqual(one?.choices.map(({ plan }) => plan));
  });

  it("does not care where or in which order its chunks run, nor that they travel as plain data", () => {
    const of = { ...question, candidates: 8_000 };
    const [here, there] = [layoutSolver(of), layoutSolver(of)];
    expect(here.chunks).toBe(2);
    const inTurn = [here.run(0), here.run(1)];
    const apart = [there.run(1), layoutSolver(of).run(0)];
    const sent = JSON.parse(JSON.stringify(apart));
    expect(there.finish(sent)).toEqual(here.finish(inTurn));
    expect(here.finish(inTurn).tried).toBe(8_000);
  });

  it("gives each choice as its plan describes it, sorted, none bettered by another", () => {
    const { choices, best } = solveLayout(question);
    expect(choices.length).toBeGreaterThan(0);
    expect(choices.length).toBeLessThanOrEqual(12);
    expect(choices[best]).toBeDefined();
    for (const [at, { plan, bit, figures, working }] of choices.entries()) {
      const again = plannedBit(question.spec, plan).layout.cutters;
      for (const [k, cutter] of bit.layout.cutters.entries()) {
        expect(cutter.radius).toBeCloseTo(again[k]?.radius ?? Number.NaN, 9);
        expect(cutter.azimuth).toBeCloseTo(again[k]?.azimuth ?? Number.NaN, 9);
      }
      expect(working.find(({ name }) => name.startsWith("unevenness"))?.value).toBe(figures.evenness);
      const next = choices[at + 1]?.figures;
      if (!next) continue;
      expect(next.evenness).toBeGreaterThan(figures.evenness);
      expect(next.imbalance).toBeLessThan(figures.imbalance);
    }
  });

  it("tells how far it is and stops when asked, with what it has", () => {
    const seen: number[] = [];
    const whole = solveLayout(question, { onProgress: (tried) => seen.push(tried) });
    expect(seen.at(-1)).toBe(1200);
    expect(seen).toEqual([...seen].sort((a, b) => a - b));
    expect(whole.findings.map(({ code }) => code)).not.toContain("search-stopped");
    let looks = 0;
    const stopped = solveLayout(question, { shouldStop: () => ++looks > 3 });
    expect(stopped.tried).toBeLessThan(whole.tried);
    expect(stopped.choices.length).toBeGreaterThan(0);
    expect(stopped.findings.find(({ code }) => code === "search-stopped")).toMatchObject({ limit: 1200 });
    const never = solveLayout(question, { shouldStop: () => true });
    expect(never.tried).toBe(0);
    expect(never.choices.map(({ plan }) => plan)).toContainEqual(never.steadied.plan);
  });

  it("says which walls it could not keep where there is no room for so many cutters", () => {
    const crowded: LayoutQuestion = {
      ...question,
      candidates: 600,
      spec: {
        ...question.spec,
        cutter: catalogCutter("1608"),
        wings: { wings: 6, cuttersPerWing: 3 },
        material: "matrix",
      },
    };
    const { choices, findings } = solveLayout(crowded);
    expect(findings.map(({ code }) => code)).toContain("no-sound-layout");
    expect(choices).toHaveLength(1);
    expect(choices[0]?.sound).toBe(false);
    const wall = choices[0]?.findings.find(({ code }) => code === "pockets-meet" || code === "thin-pocket-wall");
    expect(wall?.where).toMatch(/^cutters \d+ and \d+/);
    expect(wall?.value).toBeLessThan(1.5e-3);
    expect(wall?.limit).toBe(1.5e-3);
    const port = choices[0]?.findings.find(({ code }) => code === "port-does-not-fit-slot");
    expect(port?.where).toMatch(/^slot between wings \d and \d$/);
  });

  it("keeps the port that was asked for in every slot", () => {
    const asked = { ...question, portDiameter: 14.5e-3 };
    for (const { figures, findings } of solveLayout(asked).choices) {
      expect(figures.largestPort).toBeGreaterThanOrEqual(14.5e-3);
      expect(findings.map(({ code }) => code)).not.toContain("port-does-not-fit-slot");
    }
  });

  it("refuses numbers that are none", () => {
    expect(() => layoutSolver({ ...question, candidates: 0 })).toThrow(/candidates/);
    expect(() => layoutSolver({ ...question, advances: [1e-3, -1] })).toThrow(/advance/);
    expect(() => layoutSolver({ ...question, advances: [] })).toThrow(/advances/);
    expect(() => layoutSolver({ ...question, seed: 0.5 }).run(0)).toThrow(/seed/);
  });
});
