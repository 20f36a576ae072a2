import { temporal } from "zundo";
import { create } from "zustand";
import type { JobDocument } from "./job-document.ts";
import { type Path, valueAt, withValue } from "./path.ts";

/** The job on the screen. */
interface OpenJob {
  /** Id under which the job is kept; absent while none is open. */
  readonly id?: string;
  readonly document: JobDocument;
  /** What the last edit did: `pull-down set to 12000 lbf`. */
  readonly step: string;
}

/** Steps that can be taken back. */
const MOST_STEPS = 200;

/** The open job, with every step that can be taken back or done again. */
export const openJob = create<OpenJob>()(
  temporal(() => ({ document: {}, step: "opened" }) as OpenJob, {
    limit: MOST_STEPS,
    partialize: ({ document, step }) => ({ document, step }),
    equality: (one, other) => one.document === other.document,
  }),
);

/** Puts a job on the screen; its steps begin anew. */
export function showJob(id: string, document: JobDocument): void {
  openJob.setState({ id, document, step: "opened" });
  openJob.temporal.getState().clear();
}

/** One edit, one step: another value at a path. Nothing happens where the value is the one that stands there. */
export function edit(path: Path, value: unknown, step: string): void {
  const { document } = openJob.getState();
  if (valueAt(document, path) === value) return;
  openJob.setState({ document: withValue(document, path, value) as JobDocument, step });
}

/** One edit that changes several places at once. */
export function editAll(changes: readonly (readonly [Path, unknown])[], step: string): void {
  const { document } = openJob.getState();
  const changed = changes.reduce<unknown>((now, [path, value]) => withValue(now, path, value), document);
  openJob.setState({ document: changed as JobDocument, step });
}

/** Takes another document for the open job as one step, so that the one before can be brought back. */
export function replaceDocument(document: JobDocument, step: string): void {
  openJob.setState({ document, step });
}

/** Names of the step that undo takes back and of the one that redo does again; absent where there is none. */
export function stepsAround(): { readonly undo?: string; readonly redo?: string } {
  const { pastStates, futureStates } = openJob.temporal.getState();
  const next = futureStates.at(-1)?.step;
  return {
    ...(pastStates.length > 0 ? { undo: openJob.getState().step } : {}),
    ...(next === undefined ? {} : { redo: next }),
  };
}

export function undo(): void {
  openJob.temporal.getState().undo();
}

export function redo(): void {
  openJob.temporal.getState().redo();
}
