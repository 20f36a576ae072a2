import { existsSync } from "node:fs";
import { Worker } from "node:worker_threads";
import type { ChunkResult, LayoutQuestion } from "@bitwright/engine";
import type { ChunkOrder, LayoutWorkerData, WorkerWord } from "./layout-worker.ts";

/** How a search is spread over threads. */
export interface ThreadedSearch {
  readonly question: LayoutQuestion;
  /** Chunks the search falls into [-]. */
  readonly chunks: number;
  /** Threads to run at once [-]. */
  readonly threads: number;
  /** Told now and then how many candidates all threads have tried. */
  readonly onProgress: (tried: number) => void;
}

/** A search under way. */
export interface SearchUnderWay {
  /** What the chunks have found, once all are done or stopped. */
  readonly results: Promise<readonly ChunkResult[]>;
  /** Ends every chunk with what it has and starts no other. */
  readonly stop: () => void;
}

/**
 * Room for what a search makes and drops at once, layout by layout [MB]: (d) our choice. With V8's own 16 MB two threads
 * spend a tenth of their time in waiting for each other's clearing up.
 */
const SHORT_LIVED_ROOM = 64;

/** The worker as it is built; there is none where the program runs from its sources. */
const BUILT_WORKER = new URL("./layout-worker.js", import.meta.url);

/** Whether threads can be started here: only the built program has a worker to start. */
export function canUseThreads(): boolean {
  return import.meta.url.endsWith(".js") && existsSync(BUILT_WORKER);
}

/**
 * Runs the chunks of a search on threads of their own, each thread taking the next chunk when it is done with one. What is
 * found does not depend on the threads.
 */
export function chunksInThreads({ question, chunks, threads, onProgress }: ThreadedSearch): SearchUnderWay {
  const stop = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
  const triedIn = new Array<number>(chunks).fill(0);
  let next = 0;
  const runThread = (): Promise<ChunkResult[]> =>
    new Promise((resolve, reject) => {
      const workerData: LayoutWorkerData = { question, stop };
      // Flags that this process was started with are not the workers' to read.
      const worker = new Worker(BUILT_WORKER, {
        workerData,
        execArgv: [],
        resourceLimits: { maxYoungGenerationSizeMb: SHORT_LIVED_ROOM },
      });
      const found: ChunkResult[] = [];
      let chunk = 0;
      const takeNext = () => {
        if (next >= chunks || Atomics.load(stop, 0) === 1) {
          resolve(found);
          void worker.terminate();
          return;
        }
        chunk = next++;
        worker.postMessage({ chunk } satisfies ChunkOrder);
      };
      worker.on("message", ({ tried, result }: WorkerWord) => {
        triedIn[chunk] = tried;
        onProgress(triedIn.reduce((sum, one) => sum + one, 0));
        if (!result) return;
        found.push(result);
        takeNext();
      });
      worker.on("error", reject);
      takeNext();
    });
  const running = Array.from({ length: Math.min(threads, chunks) }, runThread);
  return {
    results: Promise.all(running).then((lists) => lists.flat()),
    stop: () => Atomics.store(stop, 0, 1),
  };
}
