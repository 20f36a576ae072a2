import { createStore, del, entries, get, set, update } from "idb-keyval";
import type { JobDocument } from "./job-document.ts";

/** A version that was put aside with a name. */
export interface KeptVersion {
  readonly savedAt: string;
  readonly note: string;
  readonly document: JobDocument;
}

/** A job as this machine keeps it, whether the server has it or not. */
export interface KeptJob {
  readonly id: string;
  readonly document: JobDocument;
  readonly changedAt: string;
  /** Versions put aside on this machine, the oldest first. */
  readonly versions: readonly KeptVersion[];
  /** The job on the server, and the version that this one grew from. */
  readonly server?: { readonly id: string; readonly version: number };
  /** Whether the server lacks what stands here. */
  readonly unsent: boolean;
}

const jobs = createStore("bitwright", "jobs");

/** The jobs that this machine keeps, by id; everything stays when the page is closed. */
export const keptJobs = {
  all: async (): Promise<KeptJob[]> => {
    const kept = await entries<string, KeptJob>(jobs);
    return kept.map(([, job]) => job).sort((a, b) => b.changedAt.localeCompare(a.changedAt));
  },
  read: (id: string): Promise<KeptJob | undefined> => get<KeptJob>(id, jobs),
  write: (job: KeptJob): Promise<void> => set(job.id, job, jobs),
  change: (id: string, change: (job: KeptJob) => KeptJob): Promise<void> =>
    update<KeptJob | undefined>(id, (job) => (job ? change(job) : job), jobs),
  forget: (id: string): Promise<void> => del(id, jobs),
};
