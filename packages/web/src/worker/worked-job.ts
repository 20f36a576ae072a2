import type { Problem, Workup } from "@bitwright/traveler";
import { type Remote, wrap } from "comlink";
import { create } from "zustand";
import type { JobDocument } from "../job/job-document.ts";
import { openJob } from "../job/open-job.ts";
import type { Bench } from "./work.worker.ts";

export type { GroundText, SheetGroup } from "./work.worker.ts";

/** What the worker last made of the open job. */
export interface WorkedJob {
  /** The last workup that could be made of this job; it stays while a newer document is worked on or is not sound. */
  readonly workup?: Workup;
  /** The document that `workup` was made of. */
  readonly of?: JobDocument;
  /** What is wrong with the document that was read last. */
  readonly problems: readonly Problem[];
  /** Whether a newer document is being worked on. */
  readonly busy: boolean;
  /** Words of a failure of the program itself. */
  readonly fault?: string;
  /** Time that the last workup took [s]. */
  readonly took?: number;
}

export const workedJob = create<WorkedJob>()(() => ({ problems: [], busy: false }));

let bench: Remote<Bench> | undefined;

/** The worker that runs the engine. It is started when it is first asked for. */
export function theBench(): Remote<Bench> {
  bench ??= wrap<Bench>(new Worker(new URL("./work.worker.ts", import.meta.url), { type: "module" }));
  return bench;
}

/** Works the open job up whenever its document changes. While one is worked on only the newest of the others waits. */
export function keepWorkedUp(): () => void {
  let running = false;
  let shown = openJob.getState().id;
  const next = async (): Promise<void> => {
    if (running) return;
    running = true;
    try {
      for (;;) {
        const { id, document } = openJob.getState();
        if (id === undefined || Object.keys(document).length === 0) break;
        await workOn(document);
        if (openJob.getState().document === document) break;
      }
    } finally {
      running = false;
    }
  };
  const stop = openJob.subscribe(({ id, document }, before) => {
    if (id !== shown) {
      shown = id;
      workedJob.setState({ problems: [], busy: false }, true);
    }
    if (document === before.document && id === before.id) return;
    workedJob.setState({ busy: true });
    void next();
  });
  void next();
  return stop;
}

async function workOn(document: JobDocument): Promise<void> {
  const { id } = openJob.getState();
  const { fault: _, ...before } = workedJob.getState();
  workedJob.setState({ ...before, busy: true }, true);
  try {
    const worked = await theBench().work(document);
    // Another job may have been opened in the meantime: what was made of this one is not shown under its name.
    if (openJob.getState().id !== id) return;
    const busy = openJob.getState().document !== document;
    if (worked.ok) workedJob.setState({ workup: worked.workup, of: document, problems: [], busy, took: worked.took });
    else workedJob.setState({ problems: worked.problems, busy });
  } catch (error) {
    if (openJob.getState().id !== id) return;
    workedJob.setState({ busy: false, fault: error instanceof Error ? error.message : String(error) });
  }
}
