import { parentPort, workerData } from "node:worker_threads";
import { type ChunkResult, type LayoutQuestion, layoutSolver } from "@bitwright/engine";

/** What a worker is started with. */
export interface LayoutWorkerData {
  readonly question: LayoutQuestion;
  /** One flag, raised to 1 when the search is to end. */
  readonly stop: Int32Array;
}

/** What a worker is told: a chunk to run. */
export interface ChunkOrder {
  readonly chunk: number;
}

/** What a worker tells: how far its chunk is, or what it has found. */
export type WorkerWord =
  | { readonly tried: number; readonly result?: undefined }
  | { readonly tried: number; readonly result: ChunkResult };

if (parentPort) answerOrders(parentPort, workerData as LayoutWorkerData);

function answerOrders(port: NonNullable<typeof parentPort>, { question, stop }: LayoutWorkerData): void {
  const solver = layoutSolver(question);
  const shouldStop = () => Atomics.load(stop, 0) === 1;
  const tell = (word: WorkerWord) => port.postMessage(word);
  port.on("message", ({ chunk }: ChunkOrder) => {
    const result = solver.run(chunk, { shouldStop, onProgress: (tried) => tell({ tried }) });
    tell({ tried: result.tried, result });
  });
}
