import { enteredBy, type Finding } from "@bitwright/engine";
import * as z from "zod";
import { slipOf } from "./nearest-names.ts";
import { type Problem, problem } from "./problem.ts";
import { travelerSchema } from "./traveler-schema.ts";

/** A field of a document that the traveler does not know. */
interface UnknownField {
  /** Path of the section it stands in; empty at the top. */
  readonly within: string;
  readonly name: string;
  /** The known field it looks like a slip of; none where it is like no other. */
  readonly meant: string | undefined;
}

/**
 * Remarks on fields that the traveler does not know and that look like a slip of one it does: `diamter`. They are kept
 * all the same, but the fact they were to give is taken as missing, and that must not go unseen.
 */
export function unknownFieldRemarks(document: unknown): Finding[] {
  return unknownIn(travelerSchema, document, "").flatMap(({ within, name, meant }) =>
    meant === undefined ? [] : [slip(pathOf(within, name), name, meant)],
  );
}

/** Problems, those of a missing field with the fields beside it that nothing is read from, under which the fact may stand. */
export function withUnknownFields(problems: readonly Problem[], document: unknown): Problem[] {
  const unknown = unknownIn(travelerSchema, document, "");
  return problems.map((one) => {
    if (one.got !== "nothing") return one;
    const beside = unknown.filter(
      ({ within, name }) => pathOf(within, one.field.split(".").at(-1) ?? name) === one.field,
    );
    if (beside.length === 0) return one;
    const names = beside.map(({ name }) => `"${name}"`).join(", ");
    return problem({
      ...one,
      wrong: `${one.wrong} (and nothing is read from ${names}, which is no field of this place)`,
    });
  });
}

function pathOf(within: string, name: string): string {
  return within === "" ? name : `${within}.${name}`;
}

function unknownIn(schema: unknown, value: unknown, path: string): UnknownField[] {
  const plain = unwrapped(schema);
  if (plain instanceof z.ZodArray && Array.isArray(value)) {
    return value.flatMap((item, at) => unknownIn(plain.element, item, `${path}[${at}]`));
  }
  if (typeof value !== "object" || value === null) return [];
  if (plain instanceof z.ZodRecord) {
    return Object.entries(value).flatMap(([name, item]) => unknownIn(plain.valueType, item, `${path}.${name}`));
  }
  if (!(plain instanceof z.ZodObject)) return [];
  const shape = plain.shape as Readonly<Record<string, unknown>>;
  const known = Object.keys(shape);
  const free = known.filter((name) => !(name in value));
  return Object.entries(value).flatMap(([name, item]) => {
    if (name in shape) return unknownIn(shape[name], item, pathOf(path, name));
    return [{ within: path, name, meant: slipOf(name, free) }];
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
