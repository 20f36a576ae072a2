import { once } from "node:events";
import { existsSync } from "node:fs";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { MessageChannel } from "node:worker_threads";
import type { Sheet } from "@bitwright/shop";
import type { UnitSystem } from "@bitwright/traveler";
import { Piscina } from "piscina";
import type { AskedStudy } from "./study-kinds.ts";
import type { Answer, FindingCounts, StudyAnswer, StudyOrder, StudyWord } from "./worker.ts";

/** A study under way on a thread. */
export interface StudyUnderWay {
  /** What came of it; fails where the thread was ended. */
  readonly answer: Promise<Answer<StudyAnswer>>;
  /** Asks the study to end with what it has. */
  readonly stop: () => void;
  /** Ends its thread at once, and what it had is gone. */
  readonly kill: () => void;
}

/** Everything that reckons, on threads of its own, so that the server answers meanwhile. */
export interface Threads {
  readonly findings: (text: string) => Promise<Answer<FindingCounts>>;
  readonly workup: (text: string) => Promise<Answer<string>>;
  readonly sheets: (text: string, units: UnitSystem) => Promise<Answer<Sheet[]>>;
  /** The driller's card as it prints; the bytes of a PDF. */
  readonly cardPdf: (text: string, units: UnitSystem) => Promise<Answer<Uint8Array>>;
  readonly study: (text: string, asked: AskedStudy, onWord: (word: StudyWord) => void) => StudyUnderWay;
  /** Loads the threads before anything is asked of them. */
  readonly warm: () => void;
  readonly close: () => Promise<void>;
}

/**
 * Room for what a search makes and drops at once, layout by layout [MB]: (d) our choice, as on the command line. With V8's
 * own 16 MB two threads spend a tenth of their time in waiting for each other's clearing up.
 */
const SHORT_LIVED_ROOM = 64;
/** A workup takes about a second; one that takes so long is given up [ms]: (d) our choice. */
const MOST_TIME = 60_000;
/** Whoever saves waits for the workup no longer than this [ms]: (d) our choice. */
const MOST_TIME_OF_SAVING = 5000;
/** Workups that may wait for the thread [-]: (d) our choice. */
const MOST_WAITING = 200;

/** The worker as it is built: where the program runs from its sources, the built one beside them runs. */
const BUILT_WORKER = fileURLToPath(
  new URL(import.meta.url.endsWith(".ts") ? "../../dist/work/worker.js" : "./worker.js", import.meta.url),
);

/**
 * Starts the threads: one for workups and sheets, which keeps the last workups at hand, and one for each other processor
 * for studies. Once loaded they stay warm. `onFault` is told of a thread that fails by itself.
 */
export function startThreads(program: string, onFault: (error: unknown) => void): Threads {
  if (!existsSync(BUILT_WORKER)) throw new Error("the worker is not built yet: run `npm run build` first");
  const quick = warmPool(1, MOST_WAITING, onFault);
  const studies = warmPool(Math.max(1, availableParallelism() - 1), Number.POSITIVE_INFINITY, onFault);
  const reckon = (name: string, order: object, most = MOST_TIME) =>
    quick.pool.run(order, { name, signal: AbortSignal.timeout(most) });
  return {
    findings: (text) => reckon("findings", { text }, MOST_TIME_OF_SAVING),
    workup: (text) => reckon("workup", { text }),
    sheets: (text, units) => reckon("sheets", { text, units, program }),
    cardPdf: (text, units) => reckon("cardPdf", { text, units, program }),
    study(text, asked, onWord) {
      const stop = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
      const { port1, port2 } = new MessageChannel();
      const ended = new AbortController();
      port1.on("message", onWord);
      const order: StudyOrder = { text, program, asked, stop, port: port2 };
      const answer = studies.pool.run(order, { name: "study", signal: ended.signal, transferList: [port2] });
      return {
        answer: answer.finally(() => port1.close()),
        stop: () => Atomics.store(stop, 0, 1),
        kill: () => ended.abort(),
      };
    },
    warm() {
      quick.warm();
      studies.warm();
    },
    async close() {
      await Promise.all([quick.close(), studies.close()]);
    },
  };
}

/** What the pool says of an answer that was on its way when its thread was ended. */
const LATE_ANSWER = /^Unexpected message from Worker/;

/**
 * Threads that are given work only when they have loaded their code, and ended only then: the machine itself breaks down
 * where a thread is ended while it loads. So none counts among the least, which the pool takes for loaded at once.
 */
function warmPool(threads: number, maxQueue: number, onFault: (error: unknown) => void) {
  const pool = new Piscina({
    filename: BUILT_WORKER,
    minThreads: 0,
    maxThreads: threads,
    idleTimeout: Number.POSITIVE_INFINITY,
    maxQueue,
    // Flags that this process was started with are not the workers' to read.
    execArgv: [],
    resourceLimits: { maxYoungGenerationSizeMb: SHORT_LIVED_ROOM },
  });
  const loaded = new Set<unknown>();
  pool.on("workerCreate", (thread) => loaded.add(thread));
  let closing = false;
  const warm = () => {
    if (!closing) pool.run({}, { name: "ready" }).catch((error) => closing || onFault(error));
  };
  pool.on("workerDestroy", (thread) => {
    loaded.delete(thread);
    // Afterwards, as the pool still counts the thread while it tells of its end.
    setImmediate(warm);
  });
  pool.on("error", (error: Error) => {
    if (!closing && !LATE_ANSWER.test(error.message)) onFault(error);
  });
  return {
    pool,
    warm,
    async close() {
      closing = true;
      while (pool.threads.length > loaded.size) await once(pool, "workerCreate");
      await pool.destroy();
    },
  };
}
