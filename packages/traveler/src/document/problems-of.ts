import type * as z from "zod";
import type { FieldFault } from "./field.ts";
import { type Problem, problem, shown } from "./problem.ts";

/** Problems of a failed check, one line each, each under the path of its field. */
export function problemsOf(error: z.ZodError, document: unknown): Problem[] {
  return error.issues.map((issue) => {
    const field = pathText(issue.path);
    const params = issue.code === "custom" ? (issue.params as { fault?: FieldFault } | undefined) : undefined;
    if (params?.fault) return problem({ field, ...params.fault });
    const got = shown(valueAt(document, issue.path));
    const wrong = got === "nothing" ? "nothing is given" : `got ${got}`;
    return problem({ field, got, wrong, expected: expectedShape(issue) });
  });
}

function expectedShape(issue: z.core.$ZodIssue): string {
  if (issue.code === "invalid_type") {
    if (issue.expected === "array") return "give a list in square brackets [ ]";
    return "give a group of fields in braces { }";
  }
  if (issue.code === "too_small") return "give at least one";
  return issue.message;
}

/** A path as people find it: `inquiry.holes[0].diameter`. */
function pathText(path: readonly PropertyKey[]): string {
  if (path.length === 0) return "traveler";
  return path
    .map((step, at) => (typeof step === "number" ? `[${step}]` : at === 0 ? String(step) : `.${String(step)}`))
    .join("");
}

function valueAt(document: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === "object" && value !== null ? (value as Record<PropertyKey, unknown>)[step] : undefined,
    document,
  );
}
