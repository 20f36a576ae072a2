import { type Problem, problem, shown, typed } from "../document/problem.ts";
import { amountIn, zeroNeedsNoUnit } from "./amount-text.ts";
import { kindFacts, type QuantityKind } from "./quantity-kind.ts";

/** A quantity read from what a person typed. */
export interface Quantity {
  readonly kind: QuantityKind;
  /** The value [coherent SI unit of the kind]. */
  readonly si: number;
  /** The unit as typed, `-` for a plain number. */
  readonly unit: string;
  /** The text as typed; of an object, its value and unit. */
  readonly text: string;
}

/** A quantity as a document holds it: text with its unit, or a value and a unit. */
export type QuantityInput = string | { readonly value: number | string; readonly unit: string };

/** Hard limits of a field, written as a person would write the quantity: `{ least: "0.5 in", most: "60 in" }`. */
export interface QuantityLimits {
  readonly least?: string;
  readonly most?: string;
  /** Whether a value below zero is taken where `least` is not given. */
  readonly signed?: boolean;
}

/** The value read, or the one thing wrong with it. */
export type Parsed<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

/**
 * Reads one quantity of a kind.
 *
 * A comma followed by exactly three figures, with one to three figures before it (`1,234`), may be a thousands or a
 * decimal mark. With a field unit (lbf, ft, gpm, psi) it is taken as thousands, because those who write field units
 * write a decimal point; with a metric unit it is refused as ambiguous. Every other comma has one reading only.
 * Zero needs no unit where the scale begins at zero. Never throws for what a person typed.
 */
export function parseQuantity(
  kind: QuantityKind,
  input: unknown,
  field: string,
  limits: QuantityLimits = {},
): Parsed<Quantity> {
  const facts = kindFacts(kind);
  const expected = expectation(kind, limits);
  const refuse = (got: string, wrong: string): Parsed<Quantity> => ({
    ok: false,
    problem: problem({ field, got, expected, wrong }),
  });
  if (input === undefined || input === null) return refuse("nothing", `nothing is given`);
  if (typeof input === "number") {
    if (!Number.isFinite(input)) return refuse(String(input), `got ${input}, which is no number to work with`);
    if (!facts.bare && !(input === 0 && zeroNeedsNoUnit(facts.dimension))) {
      return refuse(String(input), `got ${input} without a unit`);
    }
  }
  const text = textOf(input);
  if (text === undefined) {
    return refuse(shown(input), `got ${shown(input)}, which is no quantity`);
  }
  const got = typeof input === "number" ? text : typed(text);
  if (text === "") return refuse("nothing", "nothing is given");
  const read = amountIn(facts.dimension, text, facts.bare === true);
  if ("fault" in read) return refuse(got, `got ${got}${read.fault}`);
  const bound = brokenLimit(kind, read.si, limits);
  if (bound) {
    const comma = read.groupedByUnit ? " (its comma read as a thousands mark)" : "";
    return refuse(got, `got ${got}${comma}, ${bound}`);
  }
  return { ok: true, value: { kind, si: read.si, unit: read.unit, text } };
}

/** What a field takes, in words: the kind, its limits, and those of its examples that keep to them. */
export function expectation(kind: QuantityKind, limits: QuantityLimits = {}): string {
  const { noun, examples, dimension, bare } = kindFacts(kind);
  const { least, most } = limits;
  const range =
    least !== undefined && most !== undefined
      ? ` of ${least} to ${most}`
      : least !== undefined
        ? ` of ${least} or more`
        : most !== undefined
          ? ` up to ${most}`
          : "";
  const fitting = examples.filter((example) => {
    const read = amountIn(dimension, example, bare === true);
    return "si" in read && brokenLimit(kind, read.si, limits) === undefined;
  });
  const forms = fitting.map(typed).join(" or ");
  return `give ${noun}${range}${forms === "" ? "" : `, for example ${forms}`}`;
}

function brokenLimit(kind: QuantityKind, si: number, { least, most, signed }: QuantityLimits): string | undefined {
  const low = least === undefined ? undefined : limitSi(kind, least);
  const high = most === undefined ? undefined : limitSi(kind, most);
  const facts = kindFacts(kind);
  const mayBeNegative = signed ?? facts.signed ?? false;
  if (si < 0 && low === undefined && !mayBeNegative) return "which is below zero";
  // A limit itself is allowed; the slack only takes up the rounding of two unit conversions.
  const slack = 1e-9 * Math.max(Math.abs(low ?? 0), Math.abs(high ?? 0));
  if (low !== undefined && si < low - slack)
    return si < 0 && low >= 0 ? "which is below zero" : `which is under ${least}`;
  if (high !== undefined && si > high + slack) return `which is over ${most}`;
  return undefined;
}

function limitSi(kind: QuantityKind, text: string): number {
  const { dimension, bare } = kindFacts(kind);
  const read = amountIn(dimension, text, bare === true);
  if ("fault" in read)
    throw new RangeError(`the limit ${text} of a ${kind} cannot be read: got "${text}"${read.fault}`);
  return read.si;
}

function textOf(input: unknown): string | undefined {
  if (typeof input === "string") return input.trim();
  if (typeof input === "number") return String(input);
  if (typeof input !== "object" || input === null) return undefined;
  const { value, unit } = input as { value?: unknown; unit?: unknown };
  if (typeof value !== "number" && typeof value !== "string") return undefined;
  if (unit !== undefined && typeof unit !== "string") return undefined;
  return `${value} ${unit ?? ""}`.trim();
}
