import * as z from "zod";
import { type QuantityChoice, quantityFacts } from "./quantity-facts.ts";
import { travelerSchema } from "./traveler-schema.ts";

/** What one field of the traveler takes, for a form that asks for it. */
export interface FieldFacts {
  /** What the field means, with its limits, as the published schema says it. */
  readonly description: string;
  /** Ways in which a quantity may be given there; absent where the field is no quantity. */
  readonly takes?: readonly QuantityChoice[];
  /** The words that may stand there; absent where any text may. */
  readonly options?: readonly string[];
  /** Least and most of a whole number; absent where the field is none. */
  readonly count?: { readonly least: number; readonly most: number };
  /** Whether the field is a yes or a no. */
  readonly flag?: boolean;
}

/**
 * What the field at a path takes: `["inquiry", "rig", "pullDown"]`; the index of a list may be any number. Absent where the
 * schema has no such field.
 */
export function fieldFacts(path: readonly (string | number)[]): FieldFacts | undefined {
  let schema: z.ZodType | undefined = travelerSchema;
  for (const step of path) schema = schema && part(bare(schema), step);
  if (!schema) return undefined;
  const takes = quantityFacts.get(bare(schema))?.takes;
  const meta = { ...z.globalRegistry.get(bare(schema)), ...z.globalRegistry.get(schema) };
  const { minimum, maximum } = meta;
  return {
    description: meta.description ?? "",
    ...(takes ? { takes } : {}),
    ...(Array.isArray(meta.enum) ? { options: meta.enum as string[] } : {}),
    ...(typeof minimum === "number" && typeof maximum === "number" ? { count: { least: minimum, most: maximum } } : {}),
    ...(meta.type === "boolean" ? { flag: true } : {}),
  };
}

/** Paths of every field that a person can fill under a path; `0` stands for each entry of a list. */
export function fieldPaths(under: readonly (string | number)[]): (string | number)[][] {
  let schema: z.ZodType | undefined = travelerSchema;
  for (const step of under) schema = schema && part(bare(schema), step);
  return schema ? leaves(schema, under) : [];
}

function leaves(schema: z.ZodType, at: readonly (string | number)[]): (string | number)[][] {
  const inner = bare(schema);
  if (inner instanceof z.ZodObject) {
    return Object.keys(inner.shape).flatMap((key) => leaves(inner.shape[key], [...at, key]));
  }
  if (inner instanceof z.ZodArray) return leaves(inner.element as z.ZodType, [...at, 0]);
  return [[...at]];
}

function part(schema: z.ZodType, step: string | number): z.ZodType | undefined {
  if (schema instanceof z.ZodObject) return schema.shape[step];
  if (schema instanceof z.ZodArray) return schema.element as z.ZodType;
  return schema instanceof z.ZodRecord ? (schema.valueType as z.ZodType) : undefined;
}

/** The schema without what wraps it: that it may be left out, or may be written shorter. */
function bare(schema: z.ZodType): z.ZodType {
  if (schema instanceof z.ZodOptional) return bare(schema.unwrap() as z.ZodType);
  // A field of our own is a pipe too, and has no group of fields behind it.
  if (schema instanceof z.ZodPipe && schema.out instanceof z.ZodObject) return schema.out;
  return schema;
}
