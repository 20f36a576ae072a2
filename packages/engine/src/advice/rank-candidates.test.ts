import { describe, expect, it } from "vitest";
import { commonPractice, type Finding } from "../quantity/index.ts";
import type { BitChoices } from "./bit-choices.ts";
import type { CandidateBit, CandidateFigures, SoundCandidate } from "./candidate-bit.ts";
import { rankCandidates, TOO_CLOSE_SHARE } from "./rank-candidates.ts";
import { ruleChecks } from "./rule-checks.ts";

const CHOICES: BitChoices = {
  cutter: "1308",
  wings: 5,
  backRake: { centre: 0.2, gauge: 0.4 },
  chamfer: { angle: 0.3, width: 4e-4 },
  body: "steel",
};

const FIGURES: CandidateFigures = {
  costPerLength: { low: 18, mid: 20, high: 30 },
  bitPrice: 1000,
  bitCost: 2,
  drillingCost: 12,
  pulledAt: 500,
  footage: { low: 80, mid: 800, high: 8000 },
  freshRate: { low: 0.005, mid: 0.01, high: 0.012 },
  meanRate: 0.009,
  timeOnBottom: 55_000,
  heatMargin: 300,
  sideForceShare: 0.05,
  cutters: 15,
};

function candidate(
  choices: Partial<BitChoices>,
  figures: Partial<CandidateFigures> = {},
  more: Partial<CandidateBit> = {},
): SoundCandidate {
  return {
    choices: { ...CHOICES, ...choices },
    inWords: "a bit",
    excludedBy: [],
    figures: { ...FIGURES, ...figures },
    ...more,
  };
}

const costs = (low: number, mid: number, high: number) => ({ costPerLength: { low, mid, high } });
const stop: Finding = {
  code: "pockets-meet",
  severity: "stop",
  where: "wing 1",
  message: "No.",
  source: commonPractice(),
};

describe("rankCandidates", () => {
  it("puts the cheapest first and sets those apart that will not do", () => {
    const dear = candidate({ wings: 6 }, costs(20, 25, 40));
    const cheap = candidate({ wings: 4 }, costs(15, 18, 25));
    const { figures: _, ...none } = candidate({ wings: 3 });
    const out = { ...candidate({ wings: 2 }), excludedBy: [stop] };
    const { ranked, excluded } = rankCandidates([dear, none, cheap, out]);
    expect(ranked.map(({ place, candidate: { choices } }) => [place, choices.wings])).toEqual([
      [1, 4],
      [2, 6],
    ]);
    expect(ranked[1].overBest).toBeCloseTo(25 / 18 - 1, 12);
    expect(excluded).toEqual([none, out]);
  });

  it("says that two are one where they are nearer than the march is exact, and where their order turns in the band", () => {
    const best = candidate({ wings: 5 }, costs(18, 20, 30));
    const near = candidate({ wings: 4 }, costs(19, 20 * (1 + TOO_CLOSE_SHARE / 2), 31));
    const tough = candidate({ wings: 6 }, costs(20, 23, 26));
    const quick = candidate({ wings: 3 }, costs(16, 22, 40));
    const worse = candidate({ wings: 2 }, costs(19, 24, 33));
    const { ranked, cheapestAt } = rankCandidates([best, near, tough, quick, worse]);
    const ties = new Map(ranked.map((one) => [one.candidate.choices.wings, one.ties]));
    expect(ties.get(5)).toEqual([]);
    expect(ties.get(4)).toEqual(["too close"]);
    expect(ties.get(6)).toEqual(["fast wear"]);
    expect(ties.get(3)).toEqual(["slow wear"]);
    expect(ties.get(2)).toEqual([]);
    expect(cheapestAt?.fastWear).toBe(tough);
    expect(cheapestAt?.slowWear).toBe(quick);
  });

  it("ranks nothing where nothing will do", () => {
    expect(rankCandidates([{ ...candidate({}), excludedBy: [stop] }]).ranked).toEqual([]);
    expect(rankCandidates([])).toEqual({ ranked: [], excluded: [] });
  });
});

describe("ruleChecks", () => {
  const best = candidate({ wings: 4 });
  const checkOf = (rule: CandidateBit | undefined, kept: readonly ("wings" | "body")[] = []) => {
    const [wings] = ruleChecks({ best, rules: CHOICES, kept, withRule: () => rule }).filter(
      ({ choice }) => choice === "wings",
    );
    return wings;
  };

  it("agrees in what is alike and keeps what the traveler names", () => {
    const all = ruleChecks({ best, rules: CHOICES, kept: ["body"], withRule: () => undefined });
    expect(all.map(({ choice, verdict }) => [choice, verdict])).toEqual([
      ["cutter", "agrees"],
      ["wings", "not reached"],
      ["backRake", "agrees"],
      ["chamfer", "agrees"],
      ["body", "kept"],
    ]);
  });

  it("names the rate where the time makes the difference", () => {
    const rule = candidate({}, { ...costs(19, 23, 33), drillingCost: 15, bitCost: 2, meanRate: 0.007 });
    expect(checkOf(rule)).toMatchObject({
      verdict: "parts",
      reason: { figure: "meanRate", ofBest: 0.009, ofRule: 0.007 },
    });
    expect(checkOf(rule).dearer).toBeCloseTo(23 / 20 - 1, 12);
  });

  it("names price or hole drilled, whichever moved more, where the bit makes it", () => {
    const priced = candidate({}, { ...costs(19, 23, 33), bitCost: 5, bitPrice: 2500 });
    expect(checkOf(priced).reason).toEqual({ figure: "bitPrice", ofBest: 1000, ofRule: 2500 });
    const worn = candidate({}, { ...costs(19, 23, 33), bitCost: 5, pulledAt: 200 });
    expect(checkOf(worn).reason).toEqual({ figure: "pulledAt", ofBest: 500, ofRule: 200 });
  });

  it("says what speaks for the rule beside the cost", () => {
    const rule = candidate({}, { ...costs(19, 23, 33), drillingCost: 15, sideForceShare: 0.02, heatMargin: 310 });
    expect(checkOf(rule).forRule).toEqual({ figure: "sideForceShare", ofBest: 0.05, ofRule: 0.02 });
    const same = candidate({}, { ...costs(19, 23, 33), drillingCost: 15 });
    expect(checkOf(same).forRule).toBeUndefined();
  });

  it("says that it is too close to call, or that the rule's choice will not do", () => {
    expect(checkOf(candidate({}, costs(18, 20.1, 30))).verdict).toBe("too close");
    expect(checkOf({ ...candidate({}), excludedBy: [stop] })).toMatchObject({ verdict: "excluded" });
  });
});
