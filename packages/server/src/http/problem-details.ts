import type { Problem } from "@bitwright/traveler";
import * as z from "zod";

/** One thing wrong with a field, as every reply tells it. */
export const fieldProblemSchema = z
  .object({
    path: z.string().meta({ description: "Field: `inquiry.holes[0].diameter`." }),
    message: z.string().meta({ description: "The whole in one line." }),
    value: z.string().optional().meta({ description: "What stood there." }),
    limit: z.string().optional().meta({ description: "What is accepted there." }),
  })
  .meta({ id: "FieldProblem", description: "One thing wrong with a field." });

/** A thing that went wrong, after RFC 9457. */
export const problemSchema = z
  .looseObject({
    type: z.string().meta({ description: "Kind of problem: `urn:bitwright:problem:not-found`." }),
    title: z.string(),
    status: z.int(),
    detail: z.string().meta({ description: "What went wrong this time, in a sentence." }),
    instance: z.string().optional().meta({ description: "The address that was asked." }),
    problems: z.array(fieldProblemSchema).optional(),
  })
  .meta({ id: "Problem", description: "A thing that went wrong (RFC 9457)." });

/** One thing wrong with a field. */
export type FieldProblem = z.infer<typeof fieldProblemSchema>;

/** Kinds of problem, with the status and the title that go with them. */
const PROBLEM_KINDS = {
  "bad-request": [400, "The request cannot be read"],
  "foreign-host": [403, "This server answers only on this machine"],
  "foreign-origin": [403, "A page of another server may change nothing here"],
  "not-found": [404, "Nothing is there"],
  "method-not-allowed": [405, "This address does not do that"],
  conflict: [409, "Somebody else has saved meanwhile"],
  "in-the-way": [409, "Something stands in the way"],
  "too-large": [413, "Too large"],
  "media-type": [415, "This kind of content is not taken"],
  "bad-value": [422, "A value is not taken"],
  "too-many": [429, "Too much at once"],
  fault: [500, "The program failed"],
  "out-of-reach": [503, "The data cannot be reached"],
} as const satisfies Record<string, readonly [number, string]>;

/** Name of a kind of problem. */
export type ProblemKind = keyof typeof PROBLEM_KINDS;

/** The content type of every problem. */
export const PROBLEM_TYPE = "application/problem+json; charset=utf-8";

/** Something that is told to the caller as problem details. */
export class HttpProblem extends Error {
  readonly kind: ProblemKind;
  readonly statusCode: number;
  readonly more: Readonly<Record<string, unknown>>;

  constructor(kind: ProblemKind, detail: string, more: Readonly<Record<string, unknown>> = {}) {
    super(detail);
    this.name = "HttpProblem";
    this.kind = kind;
    this.statusCode = PROBLEM_KINDS[kind][0];
    this.more = more;
  }
}

/** Field problems of the document, as they are told. */
export function fieldProblems(problems: readonly Problem[]): FieldProblem[] {
  return problems.map(({ field, message, got, expected }) => ({ path: field, message, value: got, limit: expected }));
}

/** That values are not taken, field by field. */
export function badValues(problems: readonly Problem[]): HttpProblem {
  const detail = problems.map(({ message }) => message).join("\n");
  return new HttpProblem("bad-value", detail, { problems: fieldProblems(problems) });
}

/** The body of a problem. */
export function problemBody({ kind, message, more }: HttpProblem, instance?: string) {
  const [status, title] = PROBLEM_KINDS[kind];
  const type = `urn:bitwright:problem:${kind}`;
  return { type, title, status, detail: message, ...(instance === undefined ? {} : { instance }), ...more };
}
