/**
 * Runs work that is done in steps to its end.
 *
 * @returns what the work has come to
 * @source (d) bookkeeping, no relation
 */
export function runToEnd<Step, Result>(
  steps: Iterator<Step, Result, undefined>,
  /** Told each step as it is done. */
  told?: (step: Step) => void,
): Result {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    told?.(step.value);
  }
}
