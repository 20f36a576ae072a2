import { enteredBy, type Finding } from "@bitwright/engine";
import * as z from "zod";
import { slipOf } from "./nearest-names.ts";
import { travelerSchema } from "./traveler-schema.ts";

/**
 * Remarks on fields that the traveler does not know and that look like a slip of one it does: `diamter`. They are kept
 * all the same, but the fact they were to give is taken as missing, and that must not go unseen.
 */
export function unknownFieldRemarks(document: unknown): Finding[] {
  return remarksIn(travelerSchema, document, "");
}

function remarksIn(schema: unknown, value: unknown, path: string): Finding[] {
  const plain = unwrapped(schema);
  if (plain instanceof z.ZodArray && Array.isArray(value)) {
    return value.flatMap((item, at) => remarksIn(plain.element, item, `${path}[${at}]`));
  }
  if (typeof value !== "object" || value === null) return [];
  if (plain instanceof z.ZodRecord) {
    return Object.entries(value).flatMap(([name, item]) => remarksIn(plain.valueType, item, `${path}.${name}`));
  }
  if (!(plain instanceof z.ZodObject)) return [];
  const shape = plain.shape as Readonly<Record<string, unknown>>;
  const known = Object.keys(shape);
  const free = known.filter((name) => !(name in value));
  return Object.entries(value).flatMap(([name, item]) => {
    const at = path === "" ? name : `${path}.${name}`;
    if (name in shape) return remarksIn(shape[name], item, at);
    const meant = slipOf(name, free);
    return meant === undefined ? [] : [slip(at, name, meant)];
  });
}

function unwrapped(schema: unknown): unknown {
  if (schema instanceof z.ZodOptional) return unwrapped(schema.unwrap());
  // A section that may also be given in short is a pipe that ends in the section.
  if (schema instanceof z.ZodPipe && schema.out instanceof z.ZodObject) return schema.out;
  return schema;
}

function slip(where: string, name: string, meant: string): Finding {
  return {
    code: "field-not-known",
    severity: "caution",
    where,
    message: `"${name}" is no field of this place and nothing is read from it. Was ${meant} meant?`,
    source: enteredBy(where),
  };
}
