import type { Source } from "../quantity/index.ts";

/** Why the advice says what it says: one sentence, and where there is one the figure it was decided on. */
export interface Reason {
  /** One sentence in the words of the trade. Figures stand in `value` and `limit`, so that each reader sees their own units. */
  readonly sentence: string;
  /** Name of the rule of thumb or of the relation, for example `strength limit of a PDC bit`. */
  readonly rule: string;
  /** The figure that was held against the rule, in SI [`unit`]. */
  readonly value?: number;
  /** The limit of the rule, in SI [`unit`]. */
  readonly limit?: number;
  /** SI unit of `value` and `limit`, `-` for a pure number. */
  readonly unit?: string;
  readonly source: Source;
}

/** Something else that was looked at and why it was left. */
export interface Alternative {
  readonly what: string;
  readonly why: string;
}

/** One choice with its reasons, at least one, and what else was considered. */
export interface Choice<T> {
  readonly value: T;
  readonly reasons: readonly Reason[];
  readonly alternatives: readonly Alternative[];
}
