import type { Finding, Source } from "@bitwright/engine";
import { formatQuantity, type QuantityKind, siUnit } from "../../quantity/index.ts";
import type { Assumed } from "../assumed.ts";
import { type Problem, type ProblemParts, problem } from "../problem.ts";

/** A number taken because nobody gave it. */
interface AssumedNumber {
  readonly field: string;
  readonly kind: QuantityKind;
  /** The value taken [coherent SI unit of the kind]. */
  readonly si: number;
  readonly why: string;
  readonly source: Source;
}

/** What comes up while a traveler is held against itself and its gaps are filled. */
export interface ReadingNotes {
  /** Whatever keeps the job from being worked up. */
  readonly problems: readonly Problem[];
  /** Every fact taken because nobody gave it. */
  readonly assumed: readonly Assumed[];
  readonly findings: readonly Finding[];
  refuse(parts: ProblemParts): void;
  assume(fact: Assumed): void;
  /** Notes a number taken and hands it back. */
  assumeNumber(fact: AssumedNumber): number;
  remark(finding: Finding): void;
}

/** An empty set of notes. */
export function readingNotes(): ReadingNotes {
  const problems: Problem[] = [];
  const assumed: Assumed[] = [];
  const findings: Finding[] = [];
  return {
    problems,
    assumed,
    findings,
    refuse: (parts) => void problems.push(problem(parts)),
    assume: (fact) => void assumed.push(fact),
    assumeNumber: ({ field, kind, si, why, source }) => {
      assumed.push({ field, text: formatQuantity(kind, si, "field"), si, unit: siUnit(kind), why, source });
      return si;
    },
    remark: (finding) => void findings.push(finding),
  };
}
