import { catalogCutter, chunksOfSearch, type LayoutQuestion, usualRakes } from "@bitwright/engine";
import { inch } from "../tests/support/field-units.ts";
import { plainTable } from "./table.ts";

/** As many as the command tries where no number is named, and a long search. */
const SEARCHES = [20_000, 80_000] as const;
const THREADS = [1, 2] as const;
/** A long search on two threads has to be so many times as fast as on one to count as near to twice. */
const GOAL = 1.7;
const REPEATS = 2;

const question: LayoutQuestion = {
  spec: {
    holeDiameter: 6.125 * inch,
    profile: { shape: "short parabolic" },
    wings: { wings: 5, cuttersPerWing: 3 },
    cutter: catalogCutter("1308"),
    rakes: usualRakes(),
    material: "steel",
  },
  seed: 1,
};

interface SearchTime {
  /** From the first order to the last result [s]. */
  readonly wall: number;
  /** Of all threads together [s]. */
  readonly cpu: number;
}

/**
 * One layout search on one and on two threads, from the same worker as the command starts. Wall time tells how much faster two
 * threads are on this machine as it is now; processor time tells what they would be with both cores to themselves, for a
 * core that others use is waited for, not worked on.
 */
export async function layoutThreadsTable(): Promise<string> {
  // Only the built program has a worker to start.
  const built = new URL("../packages/cli/dist/workers/chunks-in-threads.js", import.meta.url).href;
  const { chunksInThreads } = (await import(
    built
  )) as typeof import("../packages/cli/src/workers/chunks-in-threads.ts");
  const timed = async (candidates: number, threads: number): Promise<SearchTime> => {
    const [start, before] = [performance.now(), process.cpuUsage()];
    const chunks = chunksOfSearch(candidates);
    await chunksInThreads({ question: { ...question, candidates }, chunks, threads, onProgress: () => {} }).results;
    const { user, system } = process.cpuUsage(before);
    return { wall: (performance.now() - start) / 1e3, cpu: (user + system) / 1e6 };
  };
  const best = async (candidates: number, threads: number): Promise<SearchTime> => {
    const times: SearchTime[] = [];
    for (let n = 0; n < REPEATS; n++) times.push(await timed(candidates, threads));
    return { wall: Math.min(...times.map(({ wall }) => wall)), cpu: Math.min(...times.map(({ cpu }) => cpu)) };
  };
  const rows: string[][] = [["layouts tried", "threads", "wall time", "processor time", "times as fast", "cores free"]];
  let free = 0;
  for (const candidates of SEARCHES) {
    let one: SearchTime | undefined;
    for (const threads of THREADS) {
      const time = await best(candidates, threads);
      one ??= time;
      free = (threads * one.cpu) / time.cpu;
      const shown = [`${time.wall.toFixed(2)} s`, `${time.cpu.toFixed(2)} s`];
      rows.push([
        `${candidates}`,
        `${threads}`,
        ...shown,
        `${(one.wall / time.wall).toFixed(2)} x`,
        `${free.toFixed(2)} x`,
      ]);
    }
  }
  const verdict = free >= GOAL ? "pass" : "FAIL";
  return `${plainTable(rows)}\na long layout search on two threads, both cores free: ${free.toFixed(2)} x, goal >= ${GOAL} x: ${verdict}`;
}
