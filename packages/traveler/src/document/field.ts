import * as z from "zod";
import type { ProblemParts } from "./problem.ts";

/** What a field's check hands on when it fails: the problem without the path. */
export type FieldFault = Omit<ProblemParts, "field">;

/** Called by a field's reading for each thing wrong; `at` is the place inside the field. */
export type Refuse = (fault: FieldFault, at?: readonly (string | number)[]) => void;

/**
 * One kind of field: reads what a person gave into what the program works with and, where it cannot, says what would
 * have been taken. The path of the field is added by `problemsOf`. `meta` goes into the published schema.
 */
export function field<Out, In>(
  meta: Readonly<Record<string, unknown>>,
  read: (input: unknown, refuse: Refuse) => Out | undefined,
): z.ZodType<Out, In> {
  const schema = z
    .unknown()
    .transform((input, context) => {
      const before = context.issues.length;
      const out = read(input, (fault, at = []) => {
        context.issues.push({
          code: "custom",
          input,
          path: [...at],
          message: fault.wrong ?? fault.got,
          params: { fault },
        });
      });
      return context.issues.length > before ? z.NEVER : out;
    })
    .meta(meta);
  // What goes in is checked by hand above; the type says what a sound document holds.
  return schema as unknown as z.ZodType<Out, In>;
}
