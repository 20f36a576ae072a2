import type { Assumed, Problem } from "@bitwright/traveler";
import { useMemo } from "react";
import { type Path, pathText } from "../job/path.ts";
import { workedJob } from "../worker/worked-job.ts";

/** What is wrong at a field or inside it, as the reading of the whole document has it. */
export function useProblem(path: Path): Problem | undefined {
  const problems = workedJob((state) => state.problems);
  const place = pathText(path);
  return useMemo(
    () =>
      problems.find(({ field }) => field === place || field.startsWith(`${place}.`) || field.startsWith(`${place}[`)),
    [problems, place],
  );
}

/** What was taken for a field that nobody filled; absent where it was given. */
export function useAssumed(path: Path): Assumed | undefined {
  const assumed = workedJob((state) => state.workup?.assumed);
  const place = pathText(path);
  return useMemo(() => assumed?.find(({ field }) => field === place), [assumed, place]);
}

/** Whether a problem only says that something needed is not there yet. */
export function isMissing({ got }: Problem): boolean {
  return got === "nothing" || got === "[]";
}
