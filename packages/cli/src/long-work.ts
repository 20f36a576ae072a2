import { setImmediate } from "node:timers/promises";
import type { Terminal } from "./terminal.ts";

/** The status of a command that was stopped by Ctrl-C and printed what it had: 128 and the number of the signal. */
export const STOPPED_EARLY = 130;

/** How a long piece of work is watched over. */
export interface LongWorkOptions<Progress> {
  readonly terminal: Pick<Terminal, "complain">;
  /** One line on how far it has come. */
  readonly progressLine: (progress: Progress) => string;
  /** Where Ctrl-C comes from; the process itself outside of tests. */
  readonly signals?: Signals;
  /** Milliseconds that go on evenly [ms]. */
  readonly now?: () => number;
}

/** The part of the process that tells of Ctrl-C. */
export interface Signals {
  on(signal: "SIGINT", listener: () => void): unknown;
  off(signal: "SIGINT", listener: () => void): unknown;
}

/** The first line of progress comes after a second, the next every two; the work pauses for signals fifty times a second [ms]. */
const QUIET = 1000;
const BETWEEN_LINES = 2000;
const BETWEEN_PAUSES = 20;

/**
 * Runs work that goes on in steps: lines of progress where it takes longer than a second, and a stop at Ctrl-C with what it
 * has. A second Ctrl-C ends the process at once, as ever.
 */
export async function longWork<Progress, Result>(
  work: (shouldStop: () => boolean) => Generator<Progress, Result, void>,
  { terminal, progressLine, signals = process, now = () => performance.now() }: LongWorkOptions<Progress>,
): Promise<{ readonly result: Result; readonly stopped: boolean }> {
  let stopped = false;
  const stop = () => {
    stopped = true;
    signals.off("SIGINT", stop);
    terminal.complain("Stopping; what is done so far follows. Ctrl-C once more ends at once.");
  };
  signals.on("SIGINT", stop);
  try {
    const steps = work(() => stopped);
    let line = now() + QUIET;
    let pause = now() + BETWEEN_PAUSES;
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) return { result: step.value, stopped };
      const at = now();
      if (at >= line) {
        terminal.complain(progressLine(step.value));
        line = at + BETWEEN_LINES;
      }
      if (at >= pause) {
        // Signals only arrive between two turns of the event loop.
        await setImmediate();
        pause = now() + BETWEEN_PAUSES;
      }
    }
  } finally {
    signals.off("SIGINT", stop);
  }
}
