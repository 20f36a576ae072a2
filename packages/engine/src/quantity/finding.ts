import type { Source } from "./source.ts";

/** How much a finding weighs: a `note` informs, a `caution` asks for a look, a `stop` says do not go on like this. */
export type Severity = "note" | "caution" | "stop";

/** One remark of the engineering on the job, the same on screen, paper, terminal. */
export interface Finding {
  /** Stable name for tests and links, for example `flow-below-cooling-floor`. */
  readonly code: string;
  readonly severity: Severity;
  /** The part it speaks of: a bed, a cutter, a joint, a field of the traveler. */
  readonly where: string;
  /** One or two sentences in the words of the trade: what is wrong, what to do. */
  readonly message: string;
  /** The figure found, in SI [`unit`]. */
  readonly value?: number;
  /** The limit it is held against, in SI [`unit`]. */
  readonly limit?: number;
  /** SI unit of `value` and `limit`. */
  readonly unit?: string;
  readonly source: Source;
}

const WEIGHT: Readonly<Record<Severity, number>> = { stop: 0, caution: 1, note: 2 };

/** Findings with the gravest first; findings of one severity keep their order. */
export function gravestFirst<OneFinding extends Finding>(findings: readonly OneFinding[]): OneFinding[] {
  return [...findings].sort((a, b) => WEIGHT[a.severity] - WEIGHT[b.severity]);
}
