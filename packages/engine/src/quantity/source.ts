/**
 * Where a number or a relation comes from. Every figure the program shows carries one of these.
 *
 * - `read`: read in a published or public source, named in `cite`
 * - `recalled`: a published source recalled from memory, not read while writing
 * - `practice`: common practice of the trade, no citable source
 * - `derived`: follows from stated inputs by algebra, geometry or numerical solution
 * - `entered`: given by the person whose job it is
 */
export type SourceKind = "read" | "recalled" | "practice" | "derived" | "entered";

/** A source as it is printed beside a figure. */
export interface Source {
  readonly kind: SourceKind;
  /** Author, year, title or standard number and place in it; or what it was derived from. */
  readonly cite: string;
}

/** A published source that was read. */
export function readIn(cite: string): Source {
  return { kind: "read", cite };
}

/** A published source recalled from memory. */
export function recalledFrom(cite: string): Source {
  return { kind: "recalled", cite };
}

/** A custom of the trade that has no citable source; `what` names the custom where a bare remark would not say it. */
export function commonPractice(what = "common practice, no source"): Source {
  return { kind: "practice", cite: what };
}

/** Follows from stated inputs; `cite` says from which. */
export function derivedFrom(cite: string): Source {
  return { kind: "derived", cite };
}

/** Given by the user; `cite` says where, as a field path or a document. */
export function enteredBy(cite: string): Source {
  return { kind: "entered", cite };
}

/** Plain words for a source kind, as printed on paper and on the terminal. */
export const SOURCE_KIND_WORDS: Readonly<Record<SourceKind, string>> = {
  read: "read in the source",
  recalled: "published, from memory",
  practice: "common practice",
  derived: "derived",
  entered: "as entered",
};
