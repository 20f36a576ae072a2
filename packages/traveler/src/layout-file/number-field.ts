import { type Problem, problem } from "../document/problem.ts";

/** What a plain SI number of a layout or rock file must be. */
export interface NumberRule {
  /** SI unit, as printed in a message. */
  readonly unit: string;
  /** Least value taken [`unit`]. */
  readonly least: number;
  /** Largest value taken [`unit`]. */
  readonly most: number;
  /** Value taken where the field is left out [`unit`]; the field is needed where this is absent. */
  readonly otherwise?: number;
}

/** A JSON object, as far as it has been looked at. */
export type JsonObject = Readonly<Record<string, unknown>>;

/** Whether a JSON value is an object with named fields. */
export function isJsonObject(value: unknown): value is JsonObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Reads one number of an object; what is wrong with it is added to `problems` and NaN stands in its place. */
export function numberField(
  from: JsonObject,
  name: string,
  rule: NumberRule,
  at: { readonly path: string; readonly problems: Problem[] },
): number {
  const value = from[name];
  const { unit, least, most, otherwise } = rule;
  if (value === undefined && otherwise !== undefined) return otherwise;
  const of = unit === "-" ? "" : ` in ${unit}`;
  const expected = `give a number${of} from ${least} to ${most}`;
  const field = at.path === "" ? name : `${at.path}.${name}`;
  if (typeof value === "number" && value >= least && value <= most) return value;
  const got = value === undefined ? "nothing" : JSON.stringify(value);
  at.problems.push(problem({ field, got, expected, ...(value === undefined ? { wrong: "nothing is given" } : {}) }));
  return Number.NaN;
}
