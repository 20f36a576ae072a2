import type { ServerContext } from "../server-context.ts";
import { documentOf } from "./traveler-texts.ts";

/** What a list tells of a job besides its name. */
export interface JobLine {
  readonly customer?: string;
  readonly number?: string;
  readonly date?: string;
}

/** Reads the lines of jobs; that of a version is read once, as no version ever changes. */
export function jobLines({ store: { papers } }: ServerContext): (name: string, version: number) => Promise<JobLine> {
  const known = new Map<string, { readonly version: number; readonly line: JobLine }>();
  return async (name, version) => {
    const before = known.get(name);
    if (before?.version === version) return before.line;
    const { body } = await papers.read({ kind: "traveler", name }, version);
    const line = lineOf(documentOf(body).job);
    known.set(name, { version, line });
    return line;
  };
}

/** The fields of a job that are texts, as the document has them; a half-filled one may hold anything. */
function lineOf(job: unknown): JobLine {
  const fields = (typeof job === "object" && job !== null ? job : {}) as Readonly<Record<string, unknown>>;
  const texts = (["customer", "number", "date"] as const).flatMap((name) => {
    const value = fields[name];
    return typeof value === "string" || typeof value === "number" ? [[name, String(value)]] : [];
  });
  return Object.fromEntries(texts);
}
