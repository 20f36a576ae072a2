import * as z from "zod";
import { field } from "./field.ts";
import { oneOf } from "./nearest-names.ts";
import { shown } from "./problem.ts";

/** A text that is not empty; a number is taken as its text. */
export function text(description: string, ...examples: string[]): z.ZodType<string, string | number> {
  return field({ description, examples, type: ["string", "number"] }, (input, refuse) => {
    if (typeof input === "number" && Number.isFinite(input)) return String(input);
    if (typeof input === "string" && input.trim() !== "") return input.trim();
    const got = typeof input === "string" ? "nothing" : shown(input);
    const hint = examples[0] ? `, for example "${examples[0]}"` : "";
    refuse({ got, expected: `give a text${hint}`, wrong: got === "nothing" ? "nothing is given" : `got ${got}` });
    return undefined;
  });
}

/** One of a few words; upper and lower case are alike. */
export function choice<const Option extends string>(
  description: string,
  options: readonly Option[],
): z.ZodType<Option, Option> {
  return field({ description, enum: [...options] }, (input, refuse) => {
    const typed = typeof input === "string" ? input.trim() : "";
    const found = options.find((option) => option.toLowerCase() === typed.toLowerCase());
    if (found !== undefined) return found;
    const got = shown(input);
    const wrong = got === "nothing" ? "nothing is given" : `got ${got}`;
    refuse({ got, expected: oneOf(typed, options), wrong });
    return undefined;
  });
}

/** A whole number within bounds. */
export function count(
  description: string,
  { least, most }: { least: number; most: number },
): z.ZodType<number, number> {
  const meta = {
    description: `${description} From ${least} to ${most}.`,
    type: "integer",
    minimum: least,
    maximum: most,
  };
  return field(meta, (input, refuse) => {
    const value = typeof input === "string" && /^\s*-?\d+\s*$/.test(input) ? Number(input) : input;
    if (typeof value === "number" && Number.isInteger(value) && value >= least && value <= most) return value;
    const got = shown(input);
    const wrong = got === "nothing" ? "nothing is given" : `got ${got}`;
    refuse({ got, expected: `give a whole number from ${least} to ${most}`, wrong });
    return undefined;
  });
}

/** Yes or no. */
export function flag(description: string): z.ZodType<boolean, boolean> {
  return field({ description, type: "boolean" }, (input, refuse) => {
    if (typeof input === "boolean") return input;
    refuse({ got: shown(input), expected: "give true or false" });
    return undefined;
  });
}

/** A group of fields. Fields that are not known here are kept. */
export function section<Shape extends z.ZodRawShape>(description: string, shape: Shape) {
  return z.looseObject(shape).meta({ description });
}
