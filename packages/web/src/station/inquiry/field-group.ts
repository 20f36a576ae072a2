import type { Path } from "../../job/path.ts";

/** One field of a group and what it is called on the screen. */
export interface AskedField {
  /** Steps below the path of its group. */
  readonly step: string;
  readonly label: string;
  /** Whether it is a text of several lines. */
  readonly lines?: boolean;
  /** What is picked there rather than typed. */
  readonly picks?: "rigs" | "pumps" | "pipe" | "holes";
  /** What is offered while a text is typed. */
  readonly suggests?: "connections";
}

/** Fields that are asked for together. */
export interface FieldGroup {
  readonly heading: string;
  readonly path: Path;
  readonly fields: readonly AskedField[];
  /** Whether the group is a list with one set of these fields for each entry. */
  readonly list?: { readonly one: string; readonly add: string };
  /** Whether it stands open from the start: what the phone call brings. */
  readonly open?: boolean;
  /** A word of caution beside the group. */
  readonly caution?: string;
}

/** The path of a field of a group; of a list, in the entry at `at`. */
export function askedPath({ path, list }: FieldGroup, { step }: AskedField, at = 0): (string | number)[] {
  return [...path, ...(list ? [at] : []), ...(step === "" ? [] : [step])];
}
