import type { Finding } from "../quantity/index.ts";
import type { Reason } from "./reason.ts";
import type { Verdict } from "./verdict.ts";

/** What makes a bed hard on a bit; decides what to use instead. */
export type Trouble = "abrasive" | "hard" | "loose" | "lumps" | "soil" | "unknown";

/** What one look at a bed says; the fit of the bed is the worst of the looks. */
export interface FitRemark {
  readonly verdict: Verdict;
  readonly reasons: readonly Reason[];
  readonly cautions: readonly string[];
  readonly findings: readonly Finding[];
  readonly troubles: readonly Trouble[];
}
