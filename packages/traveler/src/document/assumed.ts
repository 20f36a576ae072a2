import type { Source } from "@bitwright/engine";

/** A fact that the traveler did not give and the value taken in its place. Printed with every result. */
export interface Assumed {
  /** The field that was left out, as a path a person can find: `inquiry.pump.flow`. */
  readonly field: string;
  /** The value taken, in words and field units: `150 gpm`, `bentonite mud`. */
  readonly text: string;
  /** The value taken, in SI [`unit`]; absent where it is not a number. */
  readonly si?: number;
  /** SI unit of `si`, `-` for a pure number. */
  readonly unit?: string;
  /** Why this value, and what giving the true one would change. */
  readonly why: string;
  readonly source: Source;
}
