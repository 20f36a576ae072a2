/** Whether a PDC bit is the tool for a bed. */
export type Verdict = "fit" | "fit-with-care" | "unfit";

/** The verdict in the words of the trade. */
export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  fit: "fit",
  "fit-with-care": "fit with care",
  unfit: "unfit",
};

const RANK: Readonly<Record<Verdict, number>> = { fit: 0, "fit-with-care": 1, unfit: 2 };

/** The worst of several verdicts; `fit` where there are none. */
export function worstVerdict(verdicts: readonly Verdict[]): Verdict {
  return verdicts.reduce<Verdict>((worst, next) => (RANK[next] > RANK[worst] ? next : worst), "fit");
}
