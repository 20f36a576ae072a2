import type { Working } from "@bitwright/engine";
import type { Workup } from "@bitwright/traveler";

/** Every working of a workup by its name. */
export function allWorkings(workup: Workup | undefined): ReadonlyMap<string, Working> {
  if (!workup) return new Map();
  const { ground, advice, bit, cut, string, stability, flow, life } = workup;
  const lists = [ground, ...ground.beds, advice, bit, cut, string, stability, flow, life].map((part) => part?.working);
  return new Map(lists.flatMap((list) => (list ?? []).map((one) => [one.name, one] as const)));
}
