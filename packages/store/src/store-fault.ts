import { type Problem, problem } from "@bitwright/traveler";

/** What went wrong, for a caller that acts on it. */
export type FaultKind =
  /** A value that was given is not taken. */
  | "bad-value"
  /** Nothing of that name is kept. */
  | "not-found"
  /** Another process holds the data folder. */
  | "in-use"
  /** The store or the backup was written by a newer program. */
  | "newer"
  /** Something stands where nothing may stand. */
  | "in-the-way"
  /** What was read is not what was written. */
  | "damaged"
  /** The folder, file or server cannot be used. */
  | "out-of-reach";

/** Something the store will not do: which field, what stood there, what would have been taken. Nothing was changed. */
export class StoreFault extends Error {
  readonly kind: FaultKind;
  readonly problem: Problem;

  constructor(kind: FaultKind, parts: Parameters<typeof problem>[0]) {
    const told = problem(parts);
    super(told.message);
    this.name = "StoreFault";
    this.kind = kind;
    this.problem = told;
  }
}
