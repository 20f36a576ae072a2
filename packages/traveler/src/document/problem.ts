/** One thing wrong with what was given: which field, what stood there, what would have been taken. */
export interface Problem {
  /** Path a person can find, for example `inquiry.holes[0].diameter`; `traveler` for the document as a whole. */
  readonly field: string;
  /** What stood there, as typed; `nothing` where a needed field is absent. */
  readonly got: string;
  /** What is accepted there, with examples or the limit. */
  readonly expected: string;
  /** The whole in one line: names field, value and what is accepted. */
  readonly message: string;
}

/** A problem whose line is put together from its parts: `field: got "x"; expected`. */
export function problem(parts: { field: string; got: string; expected: string; wrong?: string }): Problem {
  const { field, got, expected, wrong } = parts;
  const message = `${field}: ${wrong ?? `got ${got}`}; ${expected}`;
  return { field, got, expected, message };
}
