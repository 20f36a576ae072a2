import type { Source } from "./source.ts";

/** One input of a working. */
export interface WorkingInput {
  /** The symbol used in the relation. */
  readonly symbol: string;
  readonly meaning: string;
  /** The value in SI [`unit`]. */
  readonly value: number;
  /** SI unit of `value`, `-` for a pure number. */
  readonly unit: string;
  /** Where the value came from: `entered`, a default's name, a table, or the working it was computed in. */
  readonly from: string;
}

/** How one figure was reached. Opens from any figure shown. */
export interface Working {
  /** What the figure is, for example `weight of the string in fluid`. */
  readonly name: string;
  /** The relation in symbols, for example `W = BF (w_c L_c + w_p L_p)`. */
  readonly relation: string;
  readonly inputs: readonly WorkingInput[];
  /** The figure in SI [`unit`]. */
  readonly value: number;
  /** SI unit of `value`, `-` for a pure number. */
  readonly unit: string;
  readonly source: Source;
}

/**
 * One input of a working, written short: `given("Q", "flow", 0.0095, "m³/s", "entered")`.
 */
export function given(symbol: string, meaning: string, value: number, unit: string, from: string): WorkingInput {
  return { symbol, meaning, value, unit, from };
}

/** A working written short, its parts in the order in which they are read. */
export function working(
  name: string,
  relation: string,
  inputs: readonly WorkingInput[],
  value: number,
  unit: string,
  source: Source,
): Working {
  return { name, relation, inputs, value, unit, source };
}
