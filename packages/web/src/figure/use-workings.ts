import type { Working } from "@bitwright/engine";
import type { Workup } from "@bitwright/traveler";
import { useMemo } from "react";
import { allWorkings } from "./all-workings.ts";

/** Share by which a figure may miss its working through the rounding of sums [-]. */
const HAIR = 1e-6;

/** Finds the working of a figure by its name; one that gives another value is of another figure and is not handed out. */
export function useWorkings(workup: Workup): (name: string, si: number) => Working | undefined {
  const byName = useMemo(() => allWorkings(workup), [workup]);
  return (name, si) => {
    const found = byName.get(name);
    return found && Math.abs(found.value - si) <= HAIR * Math.max(Math.abs(si), Math.abs(found.value))
      ? found
      : undefined;
  };
}
