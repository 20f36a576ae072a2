import type { JobDocument, JobHead } from "./job-document.ts";

/** One job as the shop's list shows it. */
export interface ListedJob extends JobHead {
  readonly id: string;
  readonly version: number;
  readonly savedAt: string;
}

/** A version of a job as the server keeps it. */
export interface SavedVersion {
  readonly id: string;
  readonly version: number;
  readonly savedAt: string;
  readonly savedBy?: string;
  readonly note?: string;
  readonly document: JobDocument;
}

/** A version of a job without its document. */
export type VersionHead = Omit<SavedVersion, "document" | "id">;

/** Two people saved the same job: what each of them has. */
export interface SaveClash {
  readonly yours: JobDocument;
  readonly theirs: SavedVersion;
}

/** What came of a call: the answer, a plain refusal, a clash of two savings, or nobody there. */
export type Answer<T> =
  | { readonly is: "done"; readonly value: T }
  | { readonly is: "refused"; readonly words: string }
  | { readonly is: "clash"; readonly clash: SaveClash }
  | { readonly is: "away" };

const LONGEST_WAIT = 10_000;

async function call<T>(method: string, path: string, body?: unknown): Promise<Answer<T>> {
  let response: Response;
  try {
    response = await fetch(path, {
      method,
      signal: AbortSignal.timeout(LONGEST_WAIT),
      ...(body === undefined ? {} : { headers: { "content-type": "application/json" }, body: JSON.stringify(body) }),
    });
  } catch {
    return { is: "away" };
  }
  const type = response.headers.get("content-type") ?? "";
  // A page where an answer should be comes from something between here and the server.
  if (!type.includes("json")) return response.status === 204 ? { is: "done", value: undefined as T } : { is: "away" };
  const answer: unknown = await response.json().catch(() => undefined);
  if (response.ok) return { is: "done", value: answer as T };
  const problem = (answer ?? {}) as { title?: string; detail?: string; yours?: JobDocument; theirs?: SavedVersion };
  if (response.status === 409 && problem.yours && problem.theirs) {
    return { is: "clash", clash: { yours: problem.yours, theirs: problem.theirs } };
  }
  return { is: "refused", words: problem.detail ?? problem.title ?? `the server answered ${response.status}` };
}

const one = (id: string) => `/api/travelers/${encodeURIComponent(id)}`;

/** The calls to the shop's server, each told apart by what came of it; none of them throws. */
export const shopServer = {
  list: () => call<{ travelers: ListedJob[] }>("GET", "/api/travelers"),
  read: (id: string) => call<SavedVersion>("GET", one(id)),
  begin: (document: JobDocument, note?: string) => call<SavedVersion>("POST", "/api/travelers", { document, note }),
  save: (id: string, document: JobDocument, baseVersion: number, note?: string) =>
    call<SavedVersion>("PUT", one(id), { document, baseVersion, note }),
  versions: (id: string) => call<{ versions: VersionHead[] }>("GET", `${one(id)}/versions`),
  version: (id: string, version: number) => call<SavedVersion>("GET", `${one(id)}/versions/${version}`),
};
