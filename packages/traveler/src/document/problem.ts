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

/** The parts of a problem before its line is put together. */
export interface ProblemParts {
  readonly field: string;
  readonly got: string;
  readonly expected: string;
  /** What is wrong, naming the value; `got ...` where not given. */
  readonly wrong?: string;
}

/** A problem whose line is put together from its parts: `field: got "x", which is ...; give ...`. */
export function problem({ field, got, expected, wrong }: ProblemParts): Problem {
  return { field, got, expected, message: `${field}: ${wrong ?? `got ${got}`}; ${expected}` };
}

/** The same problem under another field's name. */
export function problemAt(field: string, of: Problem): Problem {
  return { ...of, field, message: `${field}${of.message.slice(of.field.length)}` };
}

/** A value as it stands in the document, short enough for one line. */
export function shown(value: unknown): string {
  if (value === undefined || value === null) return "nothing";
  const text = typeof value === "number" ? String(value) : (JSON.stringify(value) ?? String(value));
  return text.length > MOST_SHOWN ? `${text.slice(0, MOST_SHOWN - 3)}...` : text;
}

const MOST_SHOWN = 60;
