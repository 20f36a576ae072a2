import type { Sheet } from "@bitwright/shop";
import type { Problem } from "@bitwright/traveler";
import type { StudyProgress } from "./study-in-steps.ts";
import type { AskedStudy, StudyKind } from "./study-kinds.ts";
import type { StudyUnderWay, Threads } from "./threads.ts";

/** How a study stands. */
type StudyState = "waiting" | "running" | "done" | "stopped" | "failed";

/** A study that was asked for. */
export interface StudyJob {
  readonly id: string;
  readonly kind: StudyKind;
  readonly state: StudyState;
  readonly progress: StudyProgress;
  /** What it has found, as JSON text in SI; absent until it is over, and where it was ended before it had anything. */
  readonly result?: string;
  readonly sheets: readonly Sheet[];
  /** Why it failed: what is wrong with what it was given, or a sentence. */
  readonly failed?: { readonly detail: string; readonly problems: readonly Problem[] };
}

/** The studies of this process; they are gone when it ends, as each can be run again from its document. */
export interface StudyJobs {
  readonly start: (text: string, asked: AskedStudy) => StudyJob;
  readonly find: (id: string) => StudyJob | undefined;
  /** Tells of every change until the study is over; gives what ends the telling. */
  readonly watch: (id: string, told: (job: StudyJob) => void) => () => void;
  /** Stops a study within a second and waits until what it has is written down; one that does not hear of it has nothing. */
  readonly cancel: (id: string) => Promise<StudyJob | undefined>;
  /** Studies that wait or run [-]. */
  readonly underWay: () => number;
  readonly close: () => void;
}

/** What the studies are given. */
export interface StudyJobsOptions {
  readonly threads: Pick<Threads, "study">;
  readonly newId: () => string;
  /** Told of a fault of the program. */
  readonly onFault: (error: unknown) => void;
}

/** Time in which a study must hear that it is to end, or its thread is ended [ms]: (d) our choice, under a second. */
const GRACE = 850;
/** Time that one which has heard may take to write down what it has [ms]: (d) our choice. */
const MOST_ENDING = 5000;
/** Studies kept when they are over [-]: (d) our choice, as a result takes up to some megabytes. */
const MOST_KEPT = 40;

interface Entry {
  job: StudyJob;
  readonly underWay: StudyUnderWay;
  cancelled: boolean;
  /** It has heard that it is to end. */
  ending: boolean;
  readonly watchers: Set<(job: StudyJob) => void>;
  readonly over: Promise<void>;
}

export const isOver = ({ state }: StudyJob) => state === "done" || state === "stopped" || state === "failed";

/** Runs studies on threads and remembers how they stand. */
export function studyJobs({ threads, newId, onFault }: StudyJobsOptions): StudyJobs {
  const entries = new Map<string, Entry>();
  const change = (entry: Entry, more: Partial<StudyJob>) => {
    if (isOver(entry.job)) return;
    entry.job = { ...entry.job, ...more };
    for (const tell of [...entry.watchers]) tell(entry.job);
  };
  const forgetOldest = () => {
    const over = [...entries.values()].filter(({ job }) => isOver(job));
    for (const { job } of over.slice(0, Math.max(0, over.length - MOST_KEPT))) entries.delete(job.id);
  };
  return {
    start(text, asked) {
      const id = newId();
      const progress = { done: 0, doing: "waiting for a thread" };
      const underWay = threads.study(text, asked, ({ ending = false, ...at }) => {
        entry.ending = ending;
        change(entry, { state: "running", progress: at });
      });
      const entry: Entry = {
        job: { id, kind: asked.kind, state: "waiting", progress, sheets: [] },
        underWay,
        cancelled: false,
        ending: false,
        watchers: new Set(),
        over: underWay.answer.then(
          (answer) => change(entry, answer.ok ? foundBy(entry, answer.value) : refused(answer.problems)),
          (error) => {
            if (entry.cancelled) return change(entry, { state: "stopped" });
            onFault(error);
            change(entry, { state: "failed", failed: { detail: "The program failed in this study.", problems: [] } });
          },
        ),
      };
      entries.set(id, entry);
      forgetOldest();
      return entry.job;
    },
    find: (id) => entries.get(id)?.job,
    watch(id, told) {
      const watchers = entries.get(id)?.watchers;
      watchers?.add(told);
      return () => void watchers?.delete(told);
    },
    async cancel(id) {
      const entry = entries.get(id);
      if (entry === undefined || isOver(entry.job)) return entry?.job;
      entry.cancelled = true;
      entry.underWay.stop();
      // One that still waits for a thread has nothing to end with.
      if (entry.job.state === "waiting") entry.underWay.kill();
      const unheard = setTimeout(() => entry.ending || entry.underWay.kill(), GRACE);
      const tooLong = setTimeout(entry.underWay.kill, MOST_ENDING);
      await entry.over;
      clearTimeout(unheard);
      clearTimeout(tooLong);
      return entry.job;
    },
    underWay: () => [...entries.values()].filter(({ job }) => !isOver(job)).length,
    close() {
      for (const entry of entries.values()) {
        entry.cancelled = true;
        entry.underWay.kill();
        change(entry, { state: "stopped" });
      }
    },
  };
}

function foundBy(
  { cancelled, job }: Entry,
  { json, sheets }: { json: string; sheets: readonly Sheet[] },
): Partial<StudyJob> {
  const { of, doing } = job.progress;
  const whole = of === undefined ? job.progress : { done: of, of, doing };
  return { state: cancelled ? "stopped" : "done", progress: cancelled ? job.progress : whole, result: json, sheets };
}

function refused(problems: readonly Problem[]): Partial<StudyJob> {
  const detail = problems.map(({ message }) => message).join("\n");
  return { state: "failed", failed: { detail, problems } };
}
