import { type BitChoices, CHOICE_NAMES, type ChoiceName, sameChoice } from "./bit-choices.ts";
import type { CandidateBit, CandidateFigures, SoundCandidate } from "./candidate-bit.ts";
import { TOO_CLOSE_SHARE } from "./rank-candidates.ts";

/** A figure of a candidate that a reason can rest on. */
export type ReasonFigure = "meanRate" | "pulledAt" | "bitPrice" | "heatMargin" | "sideForceShare" | "peakForce";

/** One figure of two bits that differ in one choice. */
export interface MovedFigure {
  readonly figure: ReasonFigure;
  /** Of the best bit [SI unit of the figure]. */
  readonly ofBest: number;
  /** Of the same bit with the rule's choice [SI unit of the figure]. */
  readonly ofRule: number;
}

/** How a rule of thumb stands beside the best bit that was computed. */
export interface RuleCheck {
  readonly choice: ChoiceName;
  /**
   * `agrees`: the best bit has the rule's choice. `parts`: it has another, and costs less for it. `too close`: it has another,
   * and the two costs are one. `excluded`: with the rule's choice it is no bit for this job. `kept`: the traveler names it.
   * `not reached`: the study was stopped before it came to it.
   */
  readonly verdict: "agrees" | "parts" | "too close" | "excluded" | "kept" | "not reached";
  /** The best bit with nothing changed but this choice, as the rule has it; only where the two differ. */
  readonly byRule?: CandidateBit;
  /** Cost of that bit over the best, as a share [-]. */
  readonly dearer?: number;
  /** The figure that makes the difference in cost: rate, hole drilled or price, whichever costs most. */
  readonly reason?: MovedFigure;
  /** What speaks for the rule's choice beside the cost: the figure that it betters most, where there is one. */
  readonly forRule?: MovedFigure;
}

/** What the checks look at. */
export interface RuleChecksInput {
  readonly best: SoundCandidate;
  /** The choices of the rules. */
  readonly rules: BitChoices;
  /** Choices that the traveler names. */
  readonly kept: readonly ChoiceName[];
  /** The best bit with one choice as the rule has it; undefined where it was not looked at. */
  readonly withRule: (choice: ChoiceName) => CandidateBit | undefined;
}

/** Betters of less than this are not told [-]. */
const TOLD_SHARE = 0.03;

/**
 * Each rule of thumb beside the best bit: does it agree, and where it does not, what the rule's choice alone would change.
 *
 * @source (d) one choice changed at a time
 */
export function ruleChecks({ best, rules, kept, withRule }: RuleChecksInput): RuleCheck[] {
  return CHOICE_NAMES.map((choice): RuleCheck => {
    if (kept.includes(choice)) return { choice, verdict: "kept" };
    if (sameChoice(choice, best.choices, rules)) return { choice, verdict: "agrees" };
    const byRule = withRule(choice);
    if (!byRule) return { choice, verdict: "not reached" };
    if (!byRule.figures || byRule.excludedBy.length > 0) return { choice, verdict: "excluded", byRule };
    const dearer = byRule.figures.costPerLength.mid / best.figures.costPerLength.mid - 1;
    const forRule = betterOf(best, byRule);
    return {
      choice,
      verdict: dearer <= TOO_CLOSE_SHARE ? "too close" : "parts",
      byRule,
      dearer,
      reason: reasonOf(best.figures, byRule.figures),
      ...(forRule ? { forRule } : {}),
    };
  });
}

/** The figure behind the largest part of the difference in cost. */
function reasonOf(best: CandidateFigures, rule: CandidateFigures): MovedFigure {
  const byTime = rule.drillingCost - best.drillingCost;
  const byBit = rule.bitCost - best.bitCost;
  const moved = (figure: "meanRate" | "pulledAt" | "bitPrice"): MovedFigure => {
    return { figure, ofBest: best[figure], ofRule: rule[figure] };
  };
  if (byTime >= byBit) return moved("meanRate");
  // The bit costs more for each length by its price or by the hole it drills, whichever moved more against it.
  return rule.bitPrice / best.bitPrice >= best.pulledAt / rule.pulledAt ? moved("bitPrice") : moved("pulledAt");
}

/** Of the figures that the cost does not see, the one that the rule's choice betters most. */
function betterOf(best: SoundCandidate, rule: CandidateBit): MovedFigure | undefined {
  const [a, b] = [figuresOf(best), figuresOf(rule)];
  let most: MovedFigure | undefined;
  let largest = TOLD_SHARE;
  for (const figure of ["heatMargin", "sideForceShare", "peakForce"] as const) {
    const [ofBest, ofRule] = [a[figure], b[figure]];
    if (ofBest === undefined || ofRule === undefined || !(ofBest > 0)) continue;
    const better = figure === "heatMargin" ? ofRule / ofBest - 1 : 1 - ofRule / ofBest;
    if (better > largest) {
      largest = better;
      most = { figure, ofBest, ofRule };
    }
  }
  return most;
}

function figuresOf({ figures, blow }: CandidateBit): Partial<Record<ReasonFigure, number>> {
  return { ...figures, ...(blow ? { peakForce: blow.peakForce } : {}) } as Partial<Record<ReasonFigure, number>>;
}
