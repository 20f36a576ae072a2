import { execFileSync } from "node:child_process";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { plainTable } from "./table.ts";

/** As many as the command tries where no number is named, and two longer searches, where starting a thread counts less. */
const SEARCHES = [20_000, 80_000, 160_000] as const;
/** A long search on two cores has to be so many times as fast as on one to count as near to twice. */
const GOAL = 1.7;
const REPEATS = 3;
const SEARCH = fileURLToPath(new URL("layout-search-time.ts", import.meta.url));

/**
 * One layout search on one thread of one core and on two threads of two, from the same worker as the command starts, by the
 * clock. A thread alone on a free machine uses some of the second core as well, for compiling and for clearing memory, so the
 * one is held to its core where the system has `taskset`.
 */
export function layoutThreadsTable(): string {
  if (availableParallelism() < 2) return "One core here: no layout search on two threads is timed.";
  const held = canHoldToCores();
  const timed = (candidates: number, cores: number): number => {
    const search = [process.execPath, "--import", "tsx", SEARCH, `${candidates}`, `${cores}`];
    const [program, ...rest] = held ? ["taskset", "-c", cores === 1 ? "0" : "0,1", ...search] : search;
    const times = Array.from({ length: REPEATS }, () => Number(execFileSync(program, rest, { encoding: "utf8" })));
    return Math.min(...times);
  };
  const rows: string[][] = [["layouts tried", "one core", "two cores", "times as fast"]];
  let ratio = 0;
  for (const candidates of SEARCHES) {
    const [one, two] = [timed(candidates, 1), timed(candidates, 2)];
    ratio = one / two;
    rows.push([`${candidates}`, `${one.toFixed(2)} s`, `${two.toFixed(2)} s`, `${ratio.toFixed(2)} x`]);
  }
  const unheld = held ? "" : "\nNo taskset here: the one thread had the help of other cores.";
  const verdict = ratio >= GOAL ? "pass" : "FAIL";
  return `${plainTable(rows)}${unheld}\na long layout search on two cores: ${ratio.toFixed(2)} x, goal >= ${GOAL} x: ${verdict}`;
}

function canHoldToCores(): boolean {
  try {
    execFileSync("taskset", ["-c", "0,1", "true"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
