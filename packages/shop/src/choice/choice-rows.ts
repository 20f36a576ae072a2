import { type RankedCandidate, sameChoices } from "@bitwright/engine";
import type { ChoiceStudy } from "@bitwright/traveler";

/** The rules' own bit in the ranking, absent where it was not to be chosen, and what is shown with it at the end. */
export function withRuled(
  { byRule, ranking }: ChoiceStudy,
  shown: readonly RankedCandidate[],
): { readonly ruled?: RankedCandidate; readonly rows: readonly RankedCandidate[] } {
  const ruled = ranking.ranked.find(({ candidate }) => sameChoices(candidate.choices, byRule.choices));
  if (!ruled) return { rows: shown };
  return { ruled, rows: shown.includes(ruled) ? shown : [...shown, ruled] };
}
