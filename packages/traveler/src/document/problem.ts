/** One thing wrong with what was given: which field, what stood there, what would have been taken. */
export interface Problem {
  /** Path a person can find, for example `inquiry.holes[0].diameter`; `traveler` for the document as a whole. */
  readonly field: string;
  /** What stood there, as typed; `nothing` where a needed field is absent. */
  readonly got: string;
  /** What is wrong with it, naming the value: `got "90 rpm", which is a rotary speed`. */
  readonly wrong: string;
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
export function problem({ field, got, expected, wrong = `got ${got}` }: ProblemParts): Problem {
  // What people type may run over several lines; a problem never does.
  const message = `${field}: ${wrong}; ${expected}`.replace(/\s+/g, " ");
  return { field, got, wrong, expected, message };
}

const MOST_SHOWN = 60;

/** A value as it stands in the document, short enough for one line. */
export function shown(value: unknown): string {
  if (value === undefined || value === null) return "nothing";
  if (typeof value === "string") return typed(value);
  return cut(typeof value === "number" ? String(value) : jsonOf(value));
}

/** A text in quotes as it was typed, short enough for one line. */
export function typed(text: string): string {
  return `"${cut(text)}"`;
}

function cut(text: string): string {
  return text.length > MOST_SHOWN ? `${text.slice(0, MOST_SHOWN - 3)}...` : text;
}

/** What is no JSON (a ring of objects, a big integer) can only come from code; it must not stop the reading either. */
function jsonOf(value: unknown): string {
  try {
    return JSON.stringify(value) ?? String(value);
  } catch {
    return `something that is no JSON`;
  }
}
