import type { Workup } from "@bitwright/traveler";
import type { Figures } from "./figures.ts";
import { textTable } from "./text-table.ts";

/** What the flow cleans in each bed beside what the bit does there, and how long to circulate. */
export function returnTable(beds: Workup["flow"]["beds"], figures: Figures): string[] {
  const time = (seconds: number | undefined) => (seconds === undefined ? "no end" : figures.of("duration", seconds));
  return textTable(
    ["ground", "bit at", "rate", "cleans up to", "bottoms up", "chips up", "before a connection"],
    beds.map(({ name, depth, rate, rateCeiling, bottomsUpTime, chipsUpTime, circulationTime }) => [
      name,
      figures.of("depth", depth),
      figures.of("rate", rate),
      figures.range("rate", rateCeiling.low, rateCeiling.high),
      time(bottomsUpTime),
      time(chipsUpTime),
      time(circulationTime),
    ]),
    [0],
  );
}
