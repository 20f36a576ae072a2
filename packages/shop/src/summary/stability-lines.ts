import type { Workup } from "@bitwright/traveler";
import { crossingTable, steadinessTable } from "../stability/stability-lines.ts";
import type { Figures } from "./figures.ts";
import { wrapped } from "./text-table.ts";

/** How steadily the bit drills each bed and what it meets at the boundaries. */
export function stabilityLines({ stability }: Workup, figures: Figures, width: number): string[] {
  const { beds } = stability;
  if (beds.length === 0) return ["No bed of this hole is drilled with this bit."];
  const across = crossingTable(beds, figures);
  return [
    ...steadinessTable(beds, figures),
    ...(across.length === 0 ? [] : ["", ...across]),
    "",
    ...wrapped(
      "The string is reckoned under a constant feed force, as one mass on one spring, without damping along the hole: it tells where a bit may swing, not how far.",
      width,
    ),
  ];
}
