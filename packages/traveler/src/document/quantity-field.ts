import { type Band, band } from "@bitwright/engine";
import type * as z from "zod";
import {
  expectation,
  parseQuantity,
  QUANTITY_KINDS,
  type Quantity,
  type QuantityInput,
  type QuantityKind,
  type QuantityLimits,
} from "../quantity/index.ts";
import { type FieldFault, field, type Refuse } from "./field.ts";
import type { Problem } from "./problem.ts";
import { type QuantityChoice, quantityFacts } from "./quantity-facts.ts";
import type { ResolvedRake } from "./resolved-traveler.ts";

const faultOf = ({ got, wrong, expected }: Problem): FieldFault => ({ got, wrong, expected });

const QUANTITY_FORMS = [
  { type: "string" },
  {
    type: "object",
    properties: { value: { type: ["number", "string"] }, unit: { type: "string" } },
    required: ["value", "unit"],
  },
];

function limitWords({ least, most }: QuantityLimits): string {
  if (least !== undefined && most !== undefined) return ` From ${least} to ${most}.`;
  if (least !== undefined) return ` ${least} or more.`;
  return most !== undefined ? ` Up to ${most}.` : "";
}

/** A quantity of one kind with its unit. */
export function quantity(
  kind: QuantityKind,
  description: string,
  limits: QuantityLimits = {},
): z.ZodType<Quantity, QuantityInput> {
  const facts = QUANTITY_KINDS[kind];
  const forms = "bare" in facts ? [{ type: "number" }, ...QUANTITY_FORMS] : QUANTITY_FORMS;
  const meta = { description: `${description}${limitWords(limits)}`, examples: [...facts.examples], anyOf: forms };
  return told([{ kind, limits }], meta);
}

/** A quantity field whose ways of being given stand in the register of facts. */
function told(
  takes: readonly [QuantityChoice, ...QuantityChoice[]],
  meta: Readonly<Record<string, unknown>>,
): z.ZodType<Quantity, QuantityInput> {
  const made = field<Quantity, QuantityInput>(meta, (input, refuse) => readQuantity(takes, input, refuse));
  quantityFacts.add(made, { takes });
  return made;
}

/** A quantity that may be given in one of several kinds; the value read says which. */
export function quantityOfKinds(
  choices: readonly [QuantityChoice, ...QuantityChoice[]],
  description: string,
): z.ZodType<Quantity, QuantityInput> {
  const examples = choices.map(({ kind }) => QUANTITY_KINDS[kind].examples[0]);
  const bare = choices.some(({ kind }) => "bare" in QUANTITY_KINDS[kind]);
  const forms = bare ? [{ type: "number" }, ...QUANTITY_FORMS] : QUANTITY_FORMS;
  return told(choices, { description, examples, anyOf: forms });
}

function readQuantity(choices: readonly QuantityChoice[], input: unknown, refuse: Refuse): Quantity | undefined {
  let nearest: Problem | undefined;
  for (const { kind, limits } of choices) {
    const parsed = parseQuantity(kind, input, "field", limits);
    if (parsed.ok) return parsed.value;
    // A kind whose unit fits but whose limit is broken tells more than one whose unit does not fit.
    const limitBroken = /which is (over|under|below)/.test(parsed.problem.message);
    if (!nearest || limitBroken) nearest = parsed.problem;
  }
  if (!nearest) return undefined;
  const fault = faultOf(nearest);
  const expected = choices.map(({ kind, limits }) => expectation(kind, limits)).join("; or ");
  refuse({ ...fault, expected });
  return undefined;
}

/** A band as it was read: three values in SI. */
function readBand(kind: QuantityKind, limits: QuantityLimits, input: unknown, refuse: Refuse): Band | undefined {
  const whole = typeof input === "object" && input !== null && ("low" in input || "high" in input);
  if (!whole) {
    const value = readQuantity([{ kind, limits }], input, refuse);
    return value && band(value.si, value.si, value.si);
  }
  const { low, mid, high } = input as { low?: unknown; mid?: unknown; high?: unknown };
  const part = (name: string, given: unknown) =>
    readQuantity([{ kind, limits }], given, (fault) => refuse(fault, [name]));
  const lowSide = part("low", low);
  const highSide = part("high", high);
  const middle = mid === undefined ? undefined : part("mid", mid);
  if (!lowSide || !highSide || (mid !== undefined && !middle)) return undefined;
  const centre = middle?.si ?? (lowSide.si > 0 ? Math.sqrt(lowSide.si * highSide.si) : (lowSide.si + highSide.si) / 2);
  if (!(lowSide.si <= centre && centre <= highSide.si)) {
    const got = [lowSide.text, middle?.text, highSide.text].filter((text) => text !== undefined).join(", ");
    refuse({ got, expected: "give low, mid and high in rising order", wrong: `got ${got}, which do not rise` });
    return undefined;
  }
  return band(lowSide.si, centre, highSide.si);
}

/** A band as a document holds it. */
export type BandInput =
  | QuantityInput
  | { readonly low: QuantityInput; readonly mid?: QuantityInput; readonly high: QuantityInput };

/** A quantity known within bounds: one figure, or low, mid and high. Without `mid` the geometric mean is taken. */
export function bandOf(
  kind: QuantityKind,
  description: string,
  limits: QuantityLimits = {},
): z.ZodType<Band, BandInput> {
  const facts = QUANTITY_KINDS[kind];
  const one = "bare" in facts ? [{ type: "number" }, ...QUANTITY_FORMS] : QUANTITY_FORMS;
  const sides = { low: { anyOf: one }, mid: { anyOf: one }, high: { anyOf: one } };
  const forms = [...one, { type: "object", properties: sides, required: ["low", "high"] }];
  const meta = {
    description: `${description}${limitWords(limits)}`,
    examples: [...facts.examples, { low: facts.examples[0], high: facts.examples[0] }],
    anyOf: forms,
  };
  const made = field<Band, BandInput>(meta, (input, refuse) => readBand(kind, limits, input, refuse));
  quantityFacts.add(made, { takes: [{ kind, limits }] });
  return made;
}

/** A rake as a document holds it. */
export type RakeInput = QuantityInput | { readonly centre: QuantityInput; readonly gauge: QuantityInput };

const RAKE_LIMITS: QuantityLimits = { least: "-45 deg", most: "60 deg" };

/** A rake: one angle for every cutter, or one at the centre and one at the gauge with an even run between. */
export function rakeField(description: string): z.ZodType<ResolvedRake, RakeInput> {
  const sides = { centre: { anyOf: QUANTITY_FORMS }, gauge: { anyOf: QUANTITY_FORMS } };
  const forms = [...QUANTITY_FORMS, { type: "object", properties: sides, required: ["centre", "gauge"] }];
  const meta = {
    description: `${description}${limitWords(RAKE_LIMITS)}`,
    examples: ["15 deg", { centre: "15 deg", gauge: "20 deg" }],
    anyOf: forms,
  };
  return field(meta, (input, refuse) => {
    const angle = (given: unknown, at: readonly string[]) =>
      readQuantity([{ kind: "angle", limits: RAKE_LIMITS }], given, (fault) => refuse(fault, at));
    if (typeof input !== "object" || input === null || !("centre" in input || "gauge" in input)) {
      const one = angle(input, []);
      return one && { centre: one.si, gauge: one.si };
    }
    const ends = input as { centre?: unknown; gauge?: unknown };
    const centre = angle(ends.centre, ["centre"]);
    const gauge = angle(ends.gauge, ["gauge"]);
    return centre && gauge && { centre: centre.si, gauge: gauge.si };
  });
}
