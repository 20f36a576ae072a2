import {
  type BitSpec,
  catalogCutter,
  drillAtAdvance,
  type EvenMeasure,
  exactBand,
  generateLayout,
  type LayoutQuestion,
  pocketWalls,
  rockById,
  rockResponse,
  type SolvedLayout,
  sideForceJudge,
  solveLayout,
  traceEdges,
  uncutRings,
  usualRakes,
} from "@bitwright/engine";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { holdSection, table } from "../support/checks-page.ts";
import { inch, mm } from "../support/field-units.ts";

const shale = rockResponse({ rock: rockById("shale"), confinedStrength: exactBand(30e6) }).mid;
const ADVANCES = [1 * mm, 3 * mm];

const bit = (hole: number, wings: number, code: string, cuttersPerWing: number): BitSpec => ({
  holeDiameter: hole * inch,
  profile: { shape: "short parabolic" },
  wings: { wings, cuttersPerWing },
  cutter: catalogCutter(code),
  rakes: usualRakes(),
  material: "steel",
});

/** Deviation over mean of a measure over all cutters but the innermost, which is the one at the centre; largest side force. */
function judged(layout: SolvedLayout["bit"]["layout"], measure: "area" | "work") {
  const at = ADVANCES.map((advance) => {
    const { engagement, loads, bit: whole } = drillAtAdvance({ trace: traceEdges(layout), response: shale }, advance);
    const values = [...(measure === "area" ? engagement.area : loads.torque)].slice(1);
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    return { deviation: Math.sqrt(squares / values.length) / mean, side: whole.lateralShare };
  });
  return { deviation: Math.max(...at.map((one) => one.deviation)), side: Math.max(...at.map((one) => one.side)) };
}

/** Everything a returned layout promises, looked at apart from the solver. */
function expectKept({ bit: { layout }, sound, findings }: SolvedLayout, { material, leastWall }: BitSpec): void {
  const walls = pocketWalls({ layout, material, ...(leastWall === undefined ? {} : { leastWall }) }).findings;
  const rings = uncutRings(layout);
  if (sound) {
    expect(rings).toEqual([]);
    expect(walls).toEqual([]);
  } else expect(findings.length).toBeGreaterThan(0);
  if (rings.length > 0) expect(findings.some(({ code }) => code === "uncut-ring" || code === "under-gauge")).toBe(true);
  for (const wall of walls) expect(findings).toContainEqual(wall);
}

// Derived: the plain generator's layouts, traced and summed by the same law. Fixed seed, bounded search.
describe("the demo bits, even and steady at once", () => {
  const bits = [
    { name: "6 1/8 in, five wings of three 1308", spec: bit(6.125, 5, "1308", 3) },
    { name: "4 3/4 in, four wings of three 1308", spec: bit(4.75, 4, "1308", 3) },
    { name: "7 7/8 in, five wings of four 1308", spec: bit(7.875, 5, "1308", 4) },
  ];
  const cases = bits.flatMap((one) => (["area", "work"] as const).map((measure) => ({ ...one, measure })));
  const known = new Map<string, ReturnType<typeof searched>>();
  const searched = ({ spec, measure }: (typeof cases)[number]) => {
    const { choices, best } = solveLayout({ spec, measure, seed: 1, candidates: 5_000 });
    const plain = judged(generateLayout(spec).layout, measure);
    const steadied = judged(generateLayout(spec, sideForceJudge()).layout, measure);
    const chosen = choices[best];
    if (!chosen) throw new Error("nothing was found");
    return { choices, chosen, plain, steadied, found: judged(chosen.bit.layout, measure) };
  };
  const foundIn = (of: (typeof cases)[number]) => {
    const key = `${of.name} ${of.measure}`;
    const result = known.get(key) ?? searched(of);
    known.set(key, result);
    return result;
  };

  for (const of of cases) {
    it(`${of.name}: ${of.measure}`, () => {
      const { choices, chosen, plain, steadied, found } = foundIn(of);
      expect(found.deviation).toBeLessThan(Math.min(plain.deviation, steadied.deviation));
      expect(found.side).toBeLessThan(Math.min(plain.side, steadied.side));
      // What the solver says of its layout is what this test finds.
      expect(chosen.figures.evenness).toBeCloseTo(found.deviation, 9);
      expect(chosen.figures.imbalance).toBeCloseTo(found.side, 9);
      expect(chosen.sound).toBe(true);
      for (const choice of choices) expectKept(choice, of.spec);
    });
  }

  it("stand in the guide as found", () => {
    const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
    const said = ({ deviation, side }: ReturnType<typeof judged>) => `${percent(deviation)}, side ${percent(side)}`;
    holdSection(
      "layout solver",
      table([
        ["bit", "measure", "plain generator", "steadiest wings", "chosen"],
        ...cases.map((of) => {
          const { plain, steadied, found } = foundIn(of);
          return [of.name, of.measure, said(plain), said(steadied), said(found)];
        }),
      ]),
    );
  });

  it("also with wings, sweep and rakes left as they are: by stations and the order of the wings alone", () => {
    const spec = bit(6.125, 5, "1308", 3);
    const { choices, steadied } = solveLayout({
      spec,
      seed: 1,
      candidates: 5_000,
      freedom: { sweep: 0, gap: 0, rake: 0 },
    });
    expect(
      choices.some(
        ({ figures }) => figures.evenness < steadied.figures.evenness && figures.imbalance < steadied.figures.imbalance,
      ),
    ).toBe(true);
    for (const { plan } of choices) expect(plan.wingAngles).toEqual(steadied.plan.wingAngles);
  });
});

describe("every layout that is returned", () => {
  const questions: fc.Arbitrary<LayoutQuestion> = fc
    .record({
      holeDiameter: fc.double({ min: 3.5 * inch, max: 10 * inch, noNaN: true }),
      shape: fc.constantFrom("flat", "step", "short parabolic", "medium parabolic" as const),
      code: fc.constantFrom("0808", "1008", "1308", "1608"),
      wings: fc.integer({ min: 3, max: 6 }),
      material: fc.constantFrom("steel", "matrix" as const),
      measure: fc.constantFrom<EvenMeasure>("area", "work", "wear"),
      seed: fc.nat(1_000),
    })
    .filter(({ holeDiameter, code }) => holeDiameter / 2 > 3.2 * catalogCutter(code).faceDiameter)
    .map(({ holeDiameter, shape, code, wings, material, measure, seed }) => ({
      spec: {
        holeDiameter,
        profile: { shape },
        wings: { wings },
        cutter: catalogCutter(code),
        rakes: usualRakes(),
        material,
      },
      measure,
      seed,
      candidates: 250,
    }));

  it("has no uncut ring and keeps its walls, or says so", () => {
    fc.assert(
      fc.property(questions, (question) => {
        const { choices, plain, steadied, findings } = solveLayout(question);
        expect(choices.length).toBeGreaterThan(0);
        for (const choice of [...choices, plain, steadied]) expectKept(choice, question.spec);
        const none = choices.every(({ sound }) => !sound);
        expect(findings.some(({ code }) => code === "no-sound-layout")).toBe(none);
      }),
      { numRuns: 6 },
    );
  });
});
